import { z } from 'zod';
import { Hours, Id, Instant, InstantIn, PageQuery } from './primitives.js';

/** What stands behind `/l/` on a label: Crockford base32, read in either case. */
export const LabelId = z
  .string()
  .regex(/^[0-9A-HJKMNP-TV-Za-hjkmnp-tv-z]{26}$/, 'the 26 letters and digits of a label')
  .meta({ description: 'Identifier of a label: 26 characters of Crockford base32' });

export const MachineLabelCreate = z
  .strictObject({ machineId: Id.optional(), siteId: Id.optional() })
  .refine((body) => (body.machineId === undefined) !== (body.siteId === undefined), {
    message: 'name either a machine or a site',
  })
  .meta({ id: 'MachineLabelCreate', description: 'One machine, or every machine of a site' });
export const MachineLabel = z
  .object({
    id: LabelId,
    machineId: Id,
    machineCode: z.string(),
    siteId: Id,
    madeAt: Instant,
    revokedAt: Instant.nullable(),
  })
  .meta({ id: 'MachineLabel', description: 'Whoever scans it may enter hours of its machine until it is revoked' });
export const MachineLabels = z
  .object({ made: z.int(), items: z.array(MachineLabel) })
  .meta({ id: 'MachineLabels', description: 'The labels that count now; `made` of them are new' });
export const MachineLabelQuery = PageQuery.extend({
  siteId: Id.optional(),
  machineId: Id.optional(),
  revoked: z.enum(['true', 'false']).optional(),
});

export const LABEL_FORMATS = ['letter-30', 'letter-10', 'a4-24'] as const;
const Offset = z.coerce.number().min(-20).max(20).default(0);
export const LabelSheetQuery = z.object({
  format: z.enum(LABEL_FORMATS).default('letter-30'),
  machineId: Id.optional().meta({ description: 'Only the label of this machine' }),
  start: z.coerce.number().int().min(1).max(30).default(1).meta({ description: 'First free place of a used sheet' }),
  offsetX: Offset.meta({ description: 'Millimetres that the printer has to be moved to the right' }),
  offsetY: Offset.meta({ description: 'Millimetres that the printer has to be moved down' }),
});

export const LabelledMachine = z
  .object({
    machineCode: z.string(),
    machineName: z.string(),
    lastReading: z.object({ readAt: Instant, hours: Hours }).nullable(),
  })
  .meta({ id: 'LabelledMachine', description: 'All that a label tells' });
export const LabelReadingCreate = z
  .strictObject({ readAt: InstantIn, hours: Hours })
  .meta({ id: 'LabelReadingCreate', description: 'What the hour meter shows' });
export const LabelReadingTaken = z
  .object({ readAt: Instant, hours: Hours, status: z.enum(['accepted', 'set-aside']) })
  .meta({ id: 'LabelReadingTaken', description: 'Kept; a doubtful one is looked at by the shop first' });
