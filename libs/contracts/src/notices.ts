import { z } from 'zod';
import { Id, Instant, PageQuery, text, Version } from './primitives.js';

export const NoticeType = z
  .enum(['visit.promised', 'visit.moved', 'visit.cancelled', 'visit.done', 'stopgap.limit-near'])
  .meta({ id: 'NoticeType', description: 'What a contact of a site can be told of by e-mail' });

const fields = {
  name: text(200, 1),
  email: z.email().max(254),
  language: z.enum(['en', 'es']),
  notices: z.array(NoticeType).max(5).meta({ description: 'What this person wants to be told of' }),
};
export const SiteContactCreate = z
  .strictObject({ siteId: Id, ...fields, language: fields.language.default('en') })
  .meta({ id: 'SiteContactCreate' });
export const SiteContactChanges = z
  .strictObject(fields)
  .partial()
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'SiteContactChanges' });
export const SiteContact = z
  .object({
    id: Id,
    version: Version,
    siteId: Id,
    name: z.string(),
    email: z.string(),
    language: z.enum(['en', 'es']),
    notices: z.array(NoticeType),
  })
  .meta({ id: 'SiteContact', description: 'Somebody at a site, and what they are told by e-mail' });

export const NoticeState = z.enum(['waiting', 'sent', 'refused', 'given-up', 'superseded']);
export const NoticeQuery = PageQuery.extend({ siteId: Id.optional(), state: NoticeState.optional() });
export const Notice = z
  .object({
    id: Id,
    siteId: Id,
    contactId: Id,
    contactName: z.string(),
    email: z.string(),
    type: NoticeType,
    subjectId: Id.meta({ description: 'The visit or the stopgap' }),
    occurredAt: Instant,
    state: NoticeState.meta({
      description:
        'refused = the mail server will not take it; given-up = not sent within two days; superseded = newer news of the same thing was sent instead',
    }),
    attempts: z.int(),
    nextAttemptAt: Instant.nullable(),
    lastError: z.string().nullable(),
    sentAt: Instant.nullable(),
  })
  .meta({ id: 'Notice' });
export const NoticeList = z
  .object({
    items: z.array(Notice),
    next: z.string().nullable(),
    isMailSetUp: z.boolean().meta({ description: 'false: nothing is sent until the service has a mail server' }),
  })
  .meta({ id: 'NoticeList', description: 'One page; `next` is null on the last' });
