import { z } from 'zod';
import { DayRoute, PaperQuery, Visit, VisitItem } from './planning.js';
import {
  Code,
  Hours,
  Id,
  Instant,
  InstantIn,
  LocalDate,
  PageQuery,
  Quantity,
  SomeHours,
  SomeQuantity,
  text,
  Version,
} from './primitives.js';
import { Torque } from './register.js';

const FieldItem = VisitItem.omit({ waitingCents: true, reason: true }).extend({
  steps: z.array(z.string()),
  torques: z.array(Torque),
  cautions: z.array(z.string()),
  parts: z.array(z.object({ partId: Id.nullable(), name: z.string(), quantity: z.number(), unit: z.string() })),
  stopgapId: Id.nullable().meta({ description: 'The stopgap that it makes good' }),
  roadCallId: Id.nullable().meta({ description: 'The call that it answers' }),
});
const FieldMachine = z.object({
  id: Id,
  code: Code,
  machineClass: Code,
  maker: z.string().nullable(),
  model: z.string().nullable(),
  serial: z.string().nullable(),
  spindles: z.int(),
  condition: z.enum(['working', 'down', 'at-shop']),
  notes: z.string(),
  lastReading: z.object({ readAt: Instant, hours: Hours }).nullable(),
  hoursPerWeek: z.number().nullable(),
  cautions: z.array(z.string()).meta({ description: 'To be seen before the first step, each once' }),
  stopgaps: z.array(
    z.object({
      description: z.string(),
      limitHours: Hours.nullable(),
      countedFrom: LocalDate.meta({ description: 'Its hours count from here: it was made that day, or renewed' }),
      limitOn: LocalDate.nullable(),
    }),
  ),
  itemCodes: z.array(z.object({ code: Code, title: z.string(), scope: z.enum(['machine', 'spindle']) })),
  items: z.array(FieldItem),
});
export const FieldDayQuery = z.object({
  date: LocalDate.optional().meta({ description: 'Left out = today, or the planned day that is nearest' }),
  technicianId: Id.optional().meta({ description: 'Left out = the technician that the caller is' }),
});
export const FieldDayPaperQuery = FieldDayQuery.extend(PaperQuery.shape);
export const FieldDay = z
  .object({
    date: LocalDate,
    dates: z.array(LocalDate).meta({ description: 'Every planned day of this technician from a week ago on' }),
    technician: z.object({ id: Id, name: z.string() }),
    shop: z.object({ name: z.string(), timeZone: z.string(), currency: z.string(), units: z.enum(['us', 'metric']) }),
    route: DayRoute.omit({ visits: true }).nullable(),
    manualFirst: z.string(),
    parts: z.array(z.object({ id: Id, code: Code, description: z.string(), unit: z.string() })),
    visits: z.array(
      Visit.omit({ items: true, moveCents: true, marginalCents: true, reason: true }).extend({
        site: z.object({
          name: z.string(),
          latitude: z.number(),
          longitude: z.number(),
          timeZone: z.string(),
          gateNotes: z.string(),
          cautions: z.string(),
        }),
        machines: z.array(FieldMachine),
      }),
    ),
  })
  .meta({ id: 'FieldDay', description: 'A technician’s day whole, to be read ahead and used without a network' });

const because = z.enum(['not-used', 'other-part', 'wrong-quantity']);
export const PartTakenBack = z
  .strictObject({ because, reason: text(500).default('') })
  .meta({ id: 'PartTakenBack', description: 'Why a used part that was recorded counts no more' });

const kind = <K extends string>(name: K) => z.literal(name);
/** What can be recorded in the field; each is a fact of its own and never changed. */
export const FieldFact = z.discriminatedUnion('kind', [
  z.strictObject({ kind: kind('cautions-seen'), cautions: z.array(text(1000, 1)).max(60) }),
  z.strictObject({ kind: kind('reading'), hours: Hours }),
  z.strictObject({
    kind: kind('item-done'),
    itemId: Id.meta({
      description:
        'Of the visit as it was read; found again by what it is for, or by code and slot, when it was replaced',
    }),
    code: Code,
    slot: text(64).nullable().default(null),
    // No defaults: a record sent again has to be the same as before.
    stopgapId: Id.nullish().meta({ description: 'The stopgap that it made good' }),
    roadCallId: Id.nullish().meta({ description: 'The call that it answered' }),
    meterHours: Hours.nullable().default(null),
    note: text(2000).default(''),
  }),
  z.strictObject({
    kind: kind('finding'),
    itemCode: Code,
    slot: text(64).nullable().default(null),
    observation: text(2000, 1),
    measures: z.record(text(60, 1), z.union([z.number(), text(200)])).default({}),
    followUp: text(500, 1).nullable().default(null),
  }),
  z.strictObject({
    kind: kind('part-used'),
    partId: Id.nullable().default(null),
    name: text(500, 1),
    quantity: SomeQuantity,
  }),
  z.strictObject({
    kind: kind('part-taken-back'),
    useId: Id.meta({ description: 'The record of the used part' }),
    name: text(500, 1).meta({ description: 'As it was recorded, for whoever decides about a late record' }),
    quantity: SomeQuantity,
    because,
  }),
  z
    .strictObject({ kind: kind('work-time'), startedAt: InstantIn, endedAt: InstantIn })
    .refine((fact) => Date.parse(fact.startedAt) <= Date.parse(fact.endedAt), {
      path: ['endedAt'],
      message: 'it ends before it begins',
    }),
  z.strictObject({
    kind: kind('found-work'),
    title: text(200, 1),
    itemCode: Code.nullable().default(null),
    slot: text(64).nullable().default(null).meta({ description: 'Which of several places; null = all' }),
    minutes: z.int().min(1).max(960),
    done: z
      .boolean()
      .meta({ description: 'false = owed: a service item falls due soon, anything else waits as a call' }),
  }),
  z
    .strictObject({
      kind: kind('stopgap'),
      description: text(500, 1),
      limitHours: SomeHours.nullable().default(null),
      limitOn: LocalDate.nullable().default(null),
      partId: Id.nullable().default(null),
      partExpectedOn: LocalDate.nullable().default(null),
      minutes: z.int().min(1).max(960),
    })
    .refine((fact) => fact.limitHours !== null || fact.limitOn !== null, {
      path: ['limitHours'],
      message: 'a temporary repair needs a limit: hours, a date, or both',
    }),
  z.strictObject({ kind: kind('visit-finish'), signedBy: text(200, 1) }),
]);
export const FieldRecordCreate = z
  .strictObject({
    id: Id.meta({ description: 'Made by the device: sent again, it is recorded once' }),
    deviceAt: InstantIn.meta({ description: 'When it happened, by the device’s clock' }),
    sentAt: InstantIn.meta({ description: 'The device’s clock when it was sent: shows how far that clock is off' }),
    visitId: Id.nullable().default(null),
    machineId: Id.nullable().default(null),
    fact: FieldFact,
  })
  .refine((body) => body.machineId !== null || ['work-time', 'visit-finish'].includes(body.fact.kind), {
    path: ['machineId'],
    message: 'say which machine it is about',
  })
  .refine((body) => body.visitId !== null || body.fact.kind !== 'visit-finish', {
    path: ['visitId'],
    message: 'say which visit is finished',
  })
  .meta({ id: 'FieldRecordCreate' });
export const FieldRecord = z
  .object({
    id: Id,
    version: Version,
    kind: z.string(),
    visitId: Id.nullable(),
    machineId: Id.nullable(),
    recordedBy: Id,
    recordedByName: z.string(),
    deviceAt: Instant,
    receivedAt: Instant,
    skewSeconds: z
      .int()
      .meta({ description: 'More than 300 either way: the device’s clock was wrong and is corrected' }),
    fact: z.record(z.string(), z.unknown()),
    state: z.enum(['applied', 'review', 'accepted', 'dismissed']),
    reviewReason: z.string().nullable().meta({ description: 'Why it waits for somebody to look at it' }),
    decidedAt: Instant.nullable(),
  })
  .meta({ id: 'FieldRecord', description: 'A fact recorded in the field; a late one waits for the shop’s decision' });
export const FieldRecordQuery = PageQuery.extend({
  visitId: Id.optional(),
  machineId: Id.optional(),
  state: z.enum(['applied', 'review', 'accepted', 'dismissed']).optional(),
});
export const FieldRecordDecision = z
  .strictObject({ decision: z.enum(['accept', 'dismiss']) })
  .meta({ id: 'FieldRecordDecision' });

export const PartUse = z
  .object({
    id: Id,
    visitId: Id.nullable(),
    machineId: Id,
    partId: Id.nullable(),
    name: z.string(),
    quantity: Quantity,
    usedAt: Instant,
  })
  .meta({ id: 'PartUse', description: 'A part that went into a machine' });
export const WorkTime = z
  .object({ id: Id, visitId: Id.nullable(), technicianId: Id.nullable(), startedAt: Instant, endedAt: Instant })
  .meta({ id: 'WorkTime', description: 'Time at work, from start to stop' });
export const VisitFactsQuery = PageQuery.extend({ visitId: Id.optional() });
export const PartUseQuery = VisitFactsQuery.extend({ machineId: Id.optional() });

export const PhotoQuery = PageQuery.extend({
  machineId: Id.optional(),
  visitId: Id.optional(),
  roadCallId: Id.optional(),
});
export const PhotoUpload = z.object({
  machineId: Id,
  takenAt: InstantIn,
  visitId: Id.optional(),
  roadCallId: Id.optional(),
});
export const Photo = z
  .object({
    id: Id,
    visitId: Id.nullable(),
    machineId: Id,
    roadCallId: Id.nullable(),
    takenAt: Instant,
    receivedAt: Instant,
    contentType: z.string(),
    sizeBytes: z.int(),
    sha256: z.string(),
  })
  .meta({ id: 'Photo', description: 'A photo of a machine; its bytes are at /v1/photos/{id}/image' });
