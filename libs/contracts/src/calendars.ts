import { z } from 'zod';
import { Id, Instant, text } from './primitives.js';

export const CalendarAddressCreate = z
  .strictObject({
    name: text(100).default(''),
    technicianId: Id.nullable().default(null),
    siteId: Id.nullable().default(null),
  })
  .refine((body) => (body.technicianId === null) !== (body.siteId === null), 'name a technician or a site, not both')
  .meta({ id: 'CalendarAddressCreate', description: 'Whose visits the calendar shows: a technician’s or a site’s' });

const view = {
  id: Id,
  name: z.string(),
  technicianId: Id.nullable(),
  siteId: Id.nullable(),
  createdAt: Instant,
  lastReadAt: Instant.nullable(),
  revokedAt: Instant.nullable(),
};
export const CalendarAddress = z
  .object(view)
  .meta({ id: 'CalendarAddress', description: 'A secret address under which a calendar can be subscribed to' });
export const CalendarAddressCreated = z.object({ ...view, path: z.string() }).meta({
  id: 'CalendarAddressCreated',
  description: 'The path, to be put after the address of this service, is shown only once. Whoever knows it reads.',
});
