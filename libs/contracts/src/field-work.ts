import { z } from 'zod';
import {
  Cents,
  Code,
  Hours,
  Id,
  Instant,
  InstantIn,
  LocalDate,
  PageQuery,
  Quantity,
  Skill,
  SomeHours,
  text,
  Version,
} from './primitives.js';

const ReadingSource = z.enum(['technician', 'supervisor', 'telematics', 'manager', 'label']);

export const ReadingCreate = z
  .strictObject({ machineId: Id, readAt: InstantIn, hours: Hours, source: ReadingSource.optional() })
  .meta({ id: 'ReadingCreate' });
export const ReadingsCreate = z.strictObject({ readings: z.array(ReadingCreate).min(1).max(5000) }).meta({
  id: 'ReadingsCreate',
  description: 'One or many readings; a reading that is there already is not added again',
});
export const Reading = z
  .object({
    id: Id,
    version: Version,
    machineId: Id,
    readAt: Instant,
    hours: Hours,
    source: ReadingSource,
    status: z.enum(['accepted', 'set-aside']),
    reasonCode: z.string().nullable(),
    reason: z.string().nullable(),
    suggestedHours: Hours.nullable(),
    decidedAt: Instant.nullable(),
  })
  .meta({ id: 'Reading' });
export const ReadingsTaken = z.object({ added: z.int(), repeated: z.int(), readings: z.array(Reading) }).meta({
  id: 'ReadingsTaken',
  description: 'What became of each reading: doubtful ones are set aside with their reason, never dropped',
});
export const ReadingQuery = PageQuery.extend({
  machineId: Id.optional(),
  status: z.enum(['accepted', 'set-aside']).optional(),
});
export const ReadingDecision = z
  .strictObject({
    decision: z.enum(['accept', 'set-aside', 'correct']),
    hours: Hours.optional(),
    reason: text(500).optional(),
  })
  .refine((body) => body.decision !== 'correct' || body.hours !== undefined, {
    path: ['hours'],
    message: 'a correction needs the right hours',
  })
  .refine((body) => body.decision !== 'set-aside' || (body.reason ?? '') !== '', {
    path: ['reason'],
    message: 'say why',
  })
  .meta({ id: 'ReadingDecision' });
export const ReadingDecisionMade = z
  .object({
    id: Id,
    readingId: Id,
    decision: z.enum(['accept', 'set-aside', 'correct']),
    hoursBefore: Hours,
    hoursAfter: Hours.nullable().meta({ description: 'Hours believed since; null when it was set aside' }),
    statusBefore: z.enum(['accepted', 'set-aside']),
    codeBefore: z.string().nullable(),
    reasonBefore: z.string().nullable().meta({ description: 'Why it had been set aside' }),
    reason: z.string().nullable(),
    decidedBy: Id,
    decidedByName: z.string(),
    decidedAt: Instant,
  })
  .meta({ id: 'ReadingDecisionMade', description: 'One decision of a person about a reading; never changed' });

export const MeterChangeCreate = z
  .strictObject({
    machineId: Id,
    changedOn: LocalDate,
    oldHours: Hours.meta({ description: 'What the old meter showed last' }),
    newHours: Hours.default('0').meta({ description: 'What the new meter showed first' }),
  })
  .meta({ id: 'MeterChangeCreate' });
export const MeterChange = z
  .object({
    id: Id,
    machineId: Id,
    changedOn: LocalDate,
    oldHours: Hours,
    newHours: Hours,
    origin: z.enum(['told', 'found']).meta({ description: 'told by a person, or found in the readings and proposed' }),
    sentence: z.string(),
  })
  .meta({
    id: 'MeterChange',
    description: 'A new hour meter; lifetime hours run across it. A found one is a proposal until somebody tells it',
  });
export const MeterChangeQuery = PageQuery.extend({
  machineId: Id.optional(),
  origin: z.enum(['told', 'found']).optional(),
});

export const CompletionCreate = z
  .strictObject({
    machineId: Id,
    itemCode: Code,
    slot: text(64).nullable().default(null),
    doneOn: LocalDate,
    meterHours: Hours.nullable().default(null),
    outcome: z.enum(['done', 'failed']).default('done'),
    partId: Id.nullable().default(null),
    visitId: Id.nullable().default(null),
    note: text(2000).default(''),
  })
  .meta({ id: 'CompletionCreate' });
export const Completion = z
  .object({
    id: Id,
    machineId: Id,
    itemCode: z.string(),
    slot: z.string().nullable(),
    doneOn: LocalDate,
    meterHours: Hours.nullable(),
    outcome: z.enum(['done', 'failed']),
    partId: Id.nullable(),
    visitId: Id.nullable(),
    note: z.string(),
  })
  .meta({ id: 'Completion', description: 'A service item that was done; starts its next interval' });
export const MachineQuery = PageQuery.extend({ machineId: Id.optional() });

export const FindingCreate = z
  .strictObject({
    machineId: Id,
    itemCode: Code,
    slot: text(64).nullable().default(null),
    foundOn: LocalDate,
    observation: text(2000, 1),
    measures: z.record(text(60, 1), z.union([z.number(), text(200)])).default({}),
    intervalFactor: z.number().min(0).max(1).nullable().default(null),
    dueWithinHours: Hours.nullable().default(null),
    dueWithinDays: z.int().min(0).max(730).nullable().default(null),
    visitId: Id.nullable().default(null),
    followUp: text(500, 1)
      .nullable()
      .default(null)
      .meta({ description: 'What is owed because of it; opens a follow-up' }),
  })
  .meta({ id: 'FindingCreate' });
export const Finding = z
  .object({
    id: Id,
    machineId: Id,
    itemCode: z.string(),
    slot: z.string().nullable(),
    foundOn: LocalDate,
    observation: z.string(),
    measures: z.record(z.string(), z.union([z.number(), z.string()])),
    intervalFactor: z.number().nullable(),
    dueWithinHours: Hours.nullable(),
    dueWithinDays: z.int().nullable(),
    visitId: Id.nullable(),
  })
  .meta({ id: 'Finding', description: 'What was seen or measured' });

export const StopgapCreate = z
  .strictObject({
    machineId: Id,
    code: Code.default('make-good'),
    description: text(500, 1),
    madeOn: LocalDate,
    limitHours: SomeHours.nullable().default(null),
    limitOn: LocalDate.nullable().default(null),
    partId: Id.nullable().default(null),
    partQuantity: Quantity.default('1'),
    partExpectedOn: LocalDate.nullable().default(null),
    minutes: z.int().min(1).max(960),
    skill: Skill.nullable().default(null),
    preparations: z.array(Code).max(10).default([]),
    failureCents: Cents.min(0).default(50_000),
    visitId: Id.nullable().default(null),
  })
  .refine((body) => body.limitHours !== null || body.limitOn !== null, {
    path: ['limitHours'],
    message: 'a temporary repair needs a limit: hours, a date, or both',
  })
  .meta({ id: 'StopgapCreate' });
export const StopgapChanges = z
  .strictObject({ partExpectedOn: LocalDate.nullable().optional() })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'StopgapChanges' });
export const StopgapRenewal = z
  .strictObject({
    limitHours: SomeHours.nullable().default(null).meta({ description: 'Good for so many hours from today on' }),
    limitOn: LocalDate.nullable().default(null),
    reason: text(500, 1),
  })
  .refine((body) => body.limitHours !== null || body.limitOn !== null, {
    path: ['limitHours'],
    message: 'a temporary repair needs a limit: hours, a date, or both',
  })
  .meta({ id: 'StopgapRenewal', description: 'A new limit in place of the one it has' });
export const StopgapClose = z
  .strictObject({
    because: z.enum(['done-otherwise', 'not-needed']),
    reason: text(500, 1),
    closedOn: LocalDate.optional().meta({ description: 'Left out = today' }),
  })
  .meta({ id: 'StopgapClose', description: 'The return that it owes is owed no more' });
export const Stopgap = z
  .object({
    id: Id,
    version: Version,
    machineId: Id,
    code: z.string(),
    description: z.string(),
    madeOn: LocalDate,
    limitHours: Hours.nullable(),
    limitOn: LocalDate.nullable(),
    partId: Id.nullable(),
    partQuantity: Quantity,
    partExpectedOn: LocalDate.nullable(),
    minutes: z.int(),
    skill: z.string().nullable(),
    preparations: z.array(z.string()),
    failureCents: Cents,
    renewedOn: LocalDate.nullable().meta({ description: 'Its hours count from this day; null = from `madeOn`' }),
    closedOn: LocalDate.nullable(),
  })
  .meta({
    id: 'Stopgap',
    description:
      'A temporary repair under its own limit; the work it owes comes back as a visit item that must be done',
  });

export const FollowUp = z
  .object({
    id: Id,
    version: Version,
    machineId: Id,
    stopgapId: Id.nullable(),
    findingId: Id.nullable(),
    owed: z.string(),
    dueOn: LocalDate.nullable(),
    visitId: Id.nullable(),
    closedOn: LocalDate.nullable(),
  })
  .meta({ id: 'FollowUp', description: 'The return that a stopgap or a finding owes' });

export const RoadCallCreate = z
  .strictObject({
    machineId: Id,
    calledAt: InstantIn.optional().meta({
      description: 'Left out = now, by the service’s clock; no more than five minutes ahead of it, as clocks differ',
    }),
    symptom: text(1000, 1),
    whenItHappens: text(1000).default(''),
    tried: text(1000).default(''),
    usable: z.boolean().default(false),
    symptomCode: Code.optional().meta({ description: 'One of GET /v1/symptoms' }),
    answers: z.record(Code, text(500)).default({}).meta({ description: 'Answers to the symptom’s questions, by code' }),
    minutes: z.int().min(1).max(960).optional().meta({ description: 'On site; left out = what the symptom takes' }),
    skill: Skill.nullable().optional(),
    downCentsPerDay: Cents.min(0)
      .optional()
      .meta({ description: 'What a day of waiting costs the customer; left out = the starting value' }),
  })
  .meta({ id: 'RoadCallCreate' });
export const RoadCallChanges = z
  .strictObject({
    state: z.enum(['open', 'planned', 'closed']).optional(),
    visitId: Id.nullable().optional(),
    minutes: z.int().min(1).max(960).optional(),
    skill: Skill.nullable().optional(),
    downCentsPerDay: Cents.min(0).optional(),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'RoadCallChanges' });
export const RoadCall = z
  .object({
    id: Id,
    version: Version,
    symptomCode: z.string().nullable(),
    answers: z.record(z.string(), z.string()),
    minutes: z.int(),
    skill: z.string().nullable(),
    downCentsPerDay: Cents,
    machineId: Id,
    calledAt: Instant,
    symptom: z.string(),
    whenItHappens: z.string(),
    tried: z.string(),
    usable: z.boolean(),
    state: z.enum(['open', 'planned', 'closed']),
    visitId: Id.nullable(),
  })
  .meta({ id: 'RoadCall' });
