import { z } from 'zod';
import { Id, Instant, PageQuery, text, Version } from './primitives.js';

export const EventType = z.enum([
  'visit.promised',
  'visit.moved',
  'visit.cancelled',
  'visit.done',
  'stopgap.recorded',
  'stopgap.limit-near',
  'reading.set-aside',
  'document.issued',
  'document.credited',
]);

const Address = z.url({ protocol: /^https?$/ }).max(2000);
const fields = {
  url: Address.meta({ description: 'https, on a public address; redirects are not followed' }),
  description: text(200),
  types: z.array(EventType).max(20).meta({ description: 'Empty = every type' }),
};
export const WebhookEndpointCreate = z
  .strictObject({ ...fields, description: fields.description.default(''), types: fields.types.default([]) })
  .meta({ id: 'WebhookEndpointCreate' });
export const WebhookEndpointChanges = z
  .strictObject({ ...fields, state: z.enum(['active', 'disabled']) })
  .partial()
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'WebhookEndpointChanges' });
const view = {
  id: Id,
  version: Version,
  url: z.string(),
  description: z.string(),
  types: z.array(EventType),
  state: z.enum(['active', 'disabled']),
  disabledReason: z.string().nullable(),
  failingSince: Instant.nullable(),
  createdAt: Instant,
};
export const WebhookEndpoint = z
  .object(view)
  .meta({ id: 'WebhookEndpoint', description: 'Where another system is told what happens (Standard Webhooks 1.0.0)' });
export const WebhookEndpointCreated = z
  .object({ ...view, secret: z.string() })
  .meta({ id: 'WebhookEndpointCreated', description: 'The secret, whsec_…, is shown only once' });
export const WebhookRotate = z
  .strictObject({ overlapHours: z.int().min(0).max(168).default(24) })
  .meta({ id: 'WebhookRotate', description: 'For so long both secrets sign' });
export const WebhookDeliveryQuery = PageQuery.extend({ state: z.enum(['waiting', 'delivered']).optional() });
export const WebhookDelivery = z
  .object({
    id: Id,
    eventId: Id,
    type: z.string(),
    occurredAt: Instant,
    state: z.enum(['waiting', 'delivered']),
    attempts: z.int(),
    nextAttemptAt: Instant.nullable(),
    lastStatus: z.int().nullable(),
    lastError: z.string().nullable(),
    deliveredAt: Instant.nullable(),
  })
  .meta({ id: 'WebhookDelivery' });
export const WebhookRetried = z.object({ asked: z.int() }).meta({ id: 'WebhookRetried' });
