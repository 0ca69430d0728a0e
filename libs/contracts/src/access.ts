import { z } from 'zod';
import { Id, Instant, text, Version } from './primitives.js';
import { Shop } from './shop.js';

const Password = z
  .string()
  .min(8)
  .max(128)
  .meta({ description: 'At least 8 characters, 15 or more advised; no composition rules' });
export const Role = z.enum(['manager', 'technician', 'supervisor']);

export const SignIn = z
  .strictObject({ email: z.email().max(254), password: z.string().min(1).max(128) })
  .meta({ id: 'SignIn' });
export const SignedIn = z
  .object({
    token: z.string(),
    expiresAt: Instant,
    person: z.object({ id: Id, name: z.string(), role: Role, shopName: z.string() }),
    shop: Shop.pick({ id: true, timeZone: true, currency: true, units: true, clockShiftDays: true }),
  })
  .meta({ id: 'SignedIn', description: 'Send the token as `Authorization: Bearer …`; it is shown only once' });

export const PersonCreate = z
  .strictObject({
    name: text(200, 1),
    email: z.email().max(254),
    role: Role,
    password: Password,
    siteIds: z.array(Id).max(1000).default([]),
    technicianId: Id.nullable().default(null),
  })
  .meta({
    id: 'PersonCreate',
    description:
      'siteIds: the sites a grounds supervisor looks after; technicianId: whose days the person drives. The e-mail address of somebody who was removed brings that person back, as told here',
  });
export const PersonChanges = z
  .strictObject({
    name: text(200, 1).optional(),
    siteIds: z.array(Id).max(1000).optional(),
    technicianId: Id.nullable().optional(),
    password: Password.optional(),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'PersonChanges', description: 'A new password ends the sign-ins that the person has' });
export const Person = z
  .object({
    id: Id,
    version: Version,
    name: z.string(),
    email: z.string(),
    role: Role,
    active: z.boolean(),
    siteIds: z.array(Id),
    technicianId: Id.nullable(),
  })
  .meta({ id: 'Person' });
export const Myself = z
  .object({
    kind: z.enum(['person', 'integration']),
    name: z.string(),
    role: Role.nullable(),
    scopes: z.array(z.string()),
    siteIds: z.array(Id).nullable().meta({ description: 'null = every site of the shop' }),
  })
  .meta({ id: 'Myself' });

export const KeyScope = z.enum(['read', 'readings', 'register', 'accounting', 'telematics']);
const RequestsPerMinute = z
  .int()
  .min(1)
  .max(60_000)
  .meta({ description: 'Requests a minute that the key may send; null = as the service is set' });
export const IntegrationKeyCreate = z
  .strictObject({
    name: text(100, 1),
    scopes: z.array(KeyScope).min(1).max(5),
    expiresAt: z.iso.datetime({ offset: true }).nullable().default(null),
    requestsPerMinute: RequestsPerMinute.nullable().default(null),
  })
  .meta({ id: 'IntegrationKeyCreate' });
const keyFields = {
  id: Id,
  name: z.string(),
  prefix: z.string(),
  scopes: z.array(KeyScope),
  requestsPerMinute: RequestsPerMinute.nullable(),
  createdAt: Instant,
  expiresAt: Instant.nullable(),
  lastUsedAt: Instant.nullable(),
  revokedAt: Instant.nullable(),
};
export const IntegrationKey = z.object(keyFields).meta({ id: 'IntegrationKey' });
export const IntegrationKeyCreated = z
  .object({ ...keyFields, key: z.string() })
  .meta({ id: 'IntegrationKeyCreated', description: 'The key is shown only once' });
