import { z } from 'zod';
import { Hours, Id, Instant, PageQuery, text, Version } from './primitives.js';

export const SnapshotTaken = z
  .object({
    units: z.int().meta({ description: 'Machines told of' }),
    readings: z.int().meta({ description: 'Readings that are new' }),
    repeated: z.int().meta({ description: 'Readings that were known' }),
    unmatched: z.int().meta({ description: 'Machines that are none of the shop’s, as far as is known' }),
    faults: z.int().meta({ description: 'Machines whose hours cannot be used' }),
  })
  .meta({ id: 'SnapshotTaken' });

const sourceFields = {
  name: text(100, 1),
  url: z
    .url({ protocol: /^https?$/ })
    .max(2000)
    .meta({ description: 'First page of the fleet snapshot: https, on a public address; redirects are not followed' }),
  authorization: text(2000)
    .regex(/^[\x20-\x7e]+$/, 'printable ASCII')
    .nullable()
    .meta({ description: 'Value of the Authorization header, never shown again' }),
  everySeconds: z
    .int()
    .min(60)
    .max(86_400)
    .meta({ description: 'Seconds between two looks: not less than the sender allows' }),
};
export const TelematicsSourceCreate = z
  .strictObject({
    ...sourceFields,
    authorization: sourceFields.authorization.default(null),
    everySeconds: sourceFields.everySeconds.default(3600),
  })
  .meta({ id: 'TelematicsSourceCreate' });
export const TelematicsSourceChanges = z
  .strictObject({ ...sourceFields, state: z.enum(['active', 'disabled']) })
  .partial()
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'TelematicsSourceChanges' });
export const TelematicsSource = z
  .object({
    id: Id,
    version: Version,
    name: z.string(),
    url: z.string(),
    hasAuthorization: z.boolean(),
    everySeconds: z.int(),
    state: z.enum(['active', 'disabled']),
    lastPollAt: Instant.nullable(),
    lastError: z.string().nullable().meta({ description: 'Of the last look; null = it went well' }),
    failures: z.int().meta({ description: 'Looks in a row that failed' }),
    createdAt: Instant,
  })
  .meta({ id: 'TelematicsSource', description: 'Where ISO 15143-3 snapshots are fetched' });

export const TelematicsUnitQuery = PageQuery.extend({
  matched: z.enum(['true', 'false']).optional().meta({
    description: 'false = whose machine is not known, and which nobody has put aside',
  }),
});
export const TelematicsUnit = z
  .object({
    id: Id,
    version: Version,
    maker: z.string().nullable(),
    model: z.string().nullable(),
    serial: z.string().nullable(),
    pin: z.string().nullable(),
    equipmentId: z.string().nullable(),
    machineId: Id.nullable(),
    machineCode: z.string().nullable(),
    matchedBy: z.enum(['serial', 'label', 'hand']).nullable().meta({
      description: 'hand without a machine = it is none of the shop’s',
    }),
    firstHeardAt: Instant,
    lastHeardAt: Instant,
    lastHours: Hours.nullable(),
    lastHoursAt: Instant.nullable(),
    lastFault: z.string().nullable(),
  })
  .meta({ id: 'TelematicsUnit', description: 'A machine that a telematics sender told of' });
export const TelematicsMatch = z
  .strictObject({ machineId: Id.nullable() })
  .meta({ id: 'TelematicsMatch', description: 'Which of the shop’s machines it is; null = none, put aside' });
