import { z } from 'zod';
import { ChargeFacts } from './charges.js';
import { Cents, Clause, Code, Id, Instant, InstantIn, LocalDate, PageQuery, text, Version } from './primitives.js';

/** What the shop reckons with is not the customer's to see. */
const ShopOnlyCents = Cents.nullable().meta({ description: 'null for grounds supervisors' });
const ShopOnlyText = z.string().nullable().meta({ description: 'null for grounds supervisors' });
const RunStatus = z.enum(['asked', 'running', 'done', 'failed', 'cancelled']);

const DueFilter = z.object({
  siteId: Id.optional(),
  machineId: Id.optional(),
  code: Code.optional(),
  kind: z.enum(['service', 'stopgap']).optional(),
  /** Only items whose middle due date lies on or before this day. */
  until: LocalDate.optional(),
  /** Only items that are past their tolerance with at least this probability on the first day of the horizon. */
  overdueAtLeast: z.coerce.number().min(0).max(1).optional(),
});
export const DueOrder = z.enum(['date', 'cost', 'site']);
export type DueOrder = z.infer<typeof DueOrder>;
export const DueQuery = DueFilter.extend({
  ...PageQuery.shape,
  /** Soonest first; dearest to leave first; or site by site, that of the dearest work first. */
  order: DueOrder.default('date'),
});
export const DueSummaryQuery = DueFilter;
export const DueSummary = z
  .object({
    items: z.int(),
    machines: z.int(),
    overdue: z.int().meta({ description: 'Past their tolerance today with a chance of one half or more' }),
    deferralCents: ShopOnlyCents,
    sites: z.array(z.object({ siteId: Id, items: z.int(), deferralCents: ShopOnlyCents })),
  })
  .meta({ id: 'DueSummary', description: 'How much falls due, in all and at each site, and what leaving it costs' });
export const DueItem = z
  .object({
    id: Id,
    machineId: Id,
    machineCode: Code,
    machineClass: Code,
    siteId: Id,
    siteName: z.string(),
    kind: z.enum(['service', 'stopgap']),
    code: z.string(),
    slot: z.string().nullable(),
    title: z.string(),
    p10: LocalDate.nullable(),
    p50: LocalDate.nullable(),
    p90: LocalDate.nullable(),
    costFrom: LocalDate,
    probabilityOverdue: z.array(z.number()),
    timingCostCents: z.array(z.int()).nullable(),
    deferralCents: ShopOnlyCents,
    sentence: z.string(),
    why: z
      .record(z.string(), z.unknown())
      .nullable()
      .meta({ description: 'What the date was reckoned from, for those who work in the shop; null for all others' }),
  })
  .meta({ id: 'DueItem', description: 'When a service item falls due, how sure that is, what waiting costs, and why' });

export const UsageForecast = z
  .object({
    machineId: Id,
    asOf: LocalDate,
    lifetimeHoursNow: z.number(),
    hoursPerWeek: z.number(),
    p10: z.array(z.number()),
    p25: z.array(z.number()),
    p50: z.array(z.number()),
    p75: z.array(z.number()),
    p90: z.array(z.number()),
  })
  .meta({ id: 'UsageForecast', description: 'Lifetime hours on each day after `asOf`, as quantiles' });

export const ForecastRunCreate = z
  .strictObject({
    asOf: LocalDate.optional(),
    costFrom: LocalDate.optional(),
    costDays: z.int().min(1).max(28).default(14),
  })
  .meta({ id: 'ForecastRunCreate' });
export const ForecastRun = z
  .object({
    id: Id,
    status: RunStatus,
    asOf: LocalDate,
    costFrom: LocalDate,
    costDays: z.int(),
    askedAt: Instant,
    startedAt: Instant.nullable(),
    finishedAt: Instant.nullable(),
    machines: z.int().nullable(),
    items: z.int().nullable(),
    error: z.string().nullable(),
  })
  .meta({ id: 'ForecastRun' });

export const PlanRunCreate = z
  .strictObject({
    weekOf: LocalDate.meta({ description: 'First day of the plan; usually a Monday' }),
    days: z.int().min(1).max(28).default(7),
    weeks: z.int().min(1).max(4).default(1).meta({
      description:
        'So many weeks, each planned for itself, one after the other: what one does counts as done in those after it, and what was only proposed in them gives way. The answer is the run of the first; `nextRunId` leads on. More than one wants 7 days',
    }),
    seconds: z.int().min(1).max(3600).optional().meta({ description: 'How long to search, for each run' }),
    iterations: z
      .int()
      .min(1000)
      .max(1_000_000_000)
      .optional()
      .meta({ description: 'Instead of seconds: the same plan again for the same seed' }),
    seed: z.int().min(1).max(2_000_000_000).default(1),
    threads: z
      .int()
      .min(1)
      .max(2)
      .optional()
      .meta({ description: 'Searches side by side; left out = as the service is set, one when iterations are given' }),
    combine: z
      .boolean()
      .optional()
      .meta({ description: 'Combine routes by set partitioning near the end; left out = from 20 seconds on' }),
  })
  .refine(({ days, weeks }) => weeks === 1 || days === 7, {
    path: ['days'],
    message: 'several weeks are planned of 7 days each: leave days out, or ask for one run',
  })
  .meta({ id: 'PlanRunCreate' });
export const PlanRun = z
  .object({
    id: Id,
    version: Version,
    status: RunStatus,
    weekOf: LocalDate,
    days: z.int(),
    seed: z.int(),
    seconds: z.int(),
    threads: z.int(),
    combine: z.boolean(),
    iterations: z.int().nullable(),
    cancelAsked: z.boolean(),
    attempts: z.int(),
    askedAt: Instant,
    startedAt: Instant.nullable(),
    finishedAt: Instant.nullable(),
    totalCents: Cents.nullable(),
    snapshotHash: z.string().nullable(),
    warning: z.string().nullable().meta({ description: 'What to know about how the plan was made' }),
    progress: z
      .object({
        iterations: z.int(),
        totalCents: Cents,
        visits: z.int(),
        items: z.int(),
        leftOut: z.int(),
        mustDoMissing: z.int(),
      })
      .nullable(),
    error: z.string().nullable(),
    nextRunId: Id.nullable().meta({ description: 'The run of the week after, asked for together with this one' }),
  })
  .meta({ id: 'PlanRun' });

export const VisitQuery = PageQuery.extend({
  from: LocalDate.optional(),
  to: LocalDate.optional(),
  siteId: Id.optional(),
  technicianId: Id.optional(),
  state: z.enum(['proposed', 'confirmed', 'done', 'cancelled']).optional(),
});
export const VisitItem = z
  .object({
    id: Id,
    machineId: Id,
    code: z.string(),
    slot: z.string().nullable(),
    title: z.string(),
    role: z.enum(['must-do', 'anchor', 'rider', 'found']),
    minutes: z.int(),
    sharedMinutes: z.int(),
    waitingCents: ShopOnlyCents,
    reason: ShopOnlyText,
    state: z.enum(['planned', 'done', 'skipped']),
    isElsewhere: z.boolean().meta({
      description:
        'Its machine stands at another site by now: this visit does not reach it, until the week is planned again',
    }),
  })
  .meta({ id: 'VisitItem' });
const VisitAnswerState = z.enum(['noted', 'open', 'met', 'declined', 'withdrawn', 'made', 'given-up']);
export const VisitAnswer = z
  .object({
    id: Id,
    version: Version,
    siteId: Id,
    visitId: Id.nullable().meta({ description: 'null = planning again has dropped the visit' }),
    kind: z.enum(['suits', 'move']),
    aboutStart: Instant.meta({ description: 'Start of the visit when this was said' }),
    aboutDate: LocalDate,
    reason: z.string(),
    days: z.array(LocalDate).meta({ description: 'Days that would suit' }),
    saidAt: Instant,
    state: VisitAnswerState.meta({
      description: 'made = the visit was made and the wish never answered; given-up = so was the visit',
    }),
    reply: z.string().meta({ description: 'What the shop says to it' }),
    repliedAt: Instant.nullable(),
  })
  .meta({ id: 'VisitAnswer', description: 'What a site says of a planned visit' });
export const VisitAnswerCreate = z
  .strictObject({
    kind: z.enum(['suits', 'move']),
    reason: text(500).default(''),
    days: z.array(LocalDate).max(14).default([]),
  })
  .refine((body) => body.kind === 'suits' || body.reason.trim() !== '', { path: ['reason'], message: 'say why' })
  .refine((body) => body.kind === 'move' || body.days.length === 0, {
    path: ['days'],
    message: 'days belong to a wish to move it',
  })
  .meta({ id: 'VisitAnswerCreate', description: 'It suits, or it should come on another day' });
export const VisitAnswerReply = z
  .strictObject({ decision: z.enum(['met', 'declined']), reply: text(500).default('') })
  .refine((body) => body.decision === 'met' || body.reply.trim() !== '', { path: ['reply'], message: 'say why not' })
  .meta({ id: 'VisitAnswerReply' });
export const VisitAnswerQuery = PageQuery.extend({
  siteId: Id.optional(),
  visitId: Id.optional(),
  state: VisitAnswerState.optional(),
});

export const Visit = z
  .object({
    id: Id,
    version: Version,
    siteId: Id,
    technicianId: Id,
    date: LocalDate,
    state: z.enum(['proposed', 'confirmed', 'done', 'cancelled']),
    driveMinutes: z.int(),
    arriveAt: Instant,
    startAt: Instant,
    endAt: Instant,
    setupMinutes: z.int(),
    preparationMinutes: z.int(),
    promisedFrom: Instant.nullable(),
    promisedTo: Instant.nullable(),
    pinned: z.boolean().meta({ description: 'Held fast by the shop: planning again leaves it as it is' }),
    moveCents: ShopOnlyCents,
    marginalCents: ShopOnlyCents,
    reason: ShopOnlyText,
    finishedAt: Instant.nullable(),
    answer: VisitAnswer.nullable().meta({ description: 'What the site said of it last' }),
    items: z.array(VisitItem),
  })
  .meta({ id: 'Visit', description: 'One arrival of one technician at one site' });
export const VisitChanges = z
  .strictObject({
    state: z.enum(['confirmed', 'cancelled']).optional(),
    promisedFrom: InstantIn.optional(),
    promisedTo: InstantIn.optional(),
    moveCents: Cents.min(0).optional(),
    pinned: z.boolean().optional(),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .refine((body) => (body.promisedFrom === undefined) === (body.promisedTo === undefined), {
    path: ['promisedTo'],
    message: 'a promise has a beginning and an end',
  })
  .meta({
    id: 'VisitChanges',
    description:
      'Confirm a visit (its promise defaults to the planned start, half an hour each way), cancel it, or hold it fast',
  });
export const VisitFinish = z
  .strictObject({
    finishedAt: InstantIn,
    signedBy: text(200).default(''),
    done: z.array(Id).max(500).meta({ description: 'Visit items that were done; the others are skipped and stay due' }),
    readings: z
      .array(z.strictObject({ machineId: Id, hours: z.string().regex(/^\d{1,6}(\.\d{1,2})?$/) }))
      .max(200)
      .default([]),
    charges: ChargeFacts.default({}),
  })
  .meta({ id: 'VisitFinish' });

export const WeekQuery = z.object({ weekOf: LocalDate, days: z.coerce.number().int().min(1).max(28).default(7) });
const PaperLanguage = z.enum(['en', 'es']).default('en').meta({ description: 'Language of the headings' });
export const PaperQuery = z.object({ language: PaperLanguage });
export const WeekPaperQuery = WeekQuery.extend({ language: PaperLanguage });
export const DayRoute = z
  .object({
    technicianId: Id,
    technicianName: z.string(),
    date: LocalDate,
    leaveAt: Instant,
    returnAt: Instant,
    lunchFrom: Instant.nullable(),
    lunchTo: Instant.nullable(),
    driveMinutes: z.int(),
    driveMetres: z.int(),
    workMinutes: z.int(),
    waitMinutes: z.int(),
    overtimeMinutes: z.int(),
    load: z.array(
      z.object({
        partId: z.string().nullable(),
        name: z.string(),
        quantity: z.number(),
        unit: z.string(),
        missing: z.number(),
      }),
    ),
    visits: z.array(Visit),
  })
  .meta({ id: 'DayRoute' });
export const LeftOutItem = z
  .object({
    itemId: z.string(),
    machineId: z.string().nullable(),
    title: z.string(),
    cents: Cents,
    mustDo: z.boolean(),
    code: z.string(),
    reason: z.string(),
    obstacle: Clause.optional().meta({ description: 'The obstacle in the reason' }),
    remedies: z
      .array(z.string())
      .optional()
      .meta({ description: 'For what must be done: the mildest rules to give up so that it fits' }),
    remedyRules: z.array(z.array(Clause)).optional().meta({ description: 'The remedies, each by its rules' }),
  })
  .meta({ id: 'LeftOutItem', description: 'Work left for later, and what waiting costs' });
export const LeftOutQuery = PageQuery.extend({ weekOf: LocalDate });
export const VisitHindrance = z.enum(['technician-away', 'technician-off', 'site-closed', 'barred']);
export const Week = z
  .object({
    weekOf: LocalDate,
    days: z.int(),
    planRunId: Id.nullable(),
    planned: z.object({ weekOf: LocalDate, days: z.int() }).nullable().meta({
      description: 'The days that were planned as one with these: cost and what is left out are of all of them',
    }),
    routes: z.array(DayRoute),
    cannotBeMade: z
      .array(z.object({ visitId: Id, why: VisitHindrance }))
      .meta({ description: 'Visits to come that nobody can make where they stand, as people and access are now' }),
    leftOut: z
      .array(LeftOutItem)
      .meta({ description: 'The first of what is left out: what must be done, then the dearest' }),
    leftOutCount: z.int().meta({ description: 'How much is left out in all' }),
    leftOutCents: z.int().meta({ description: 'What leaving all of it costs' }),
    leftOutNext: z
      .string()
      .nullable()
      .meta({ description: 'Cursor of the rest, for `GET /v1/week/left-out`; null when there is none' }),
    cost: z.record(z.string(), z.int()).nullable().meta({
      description:
        'Of the plan with the changes since, cents; of visits that nobody can make, what leaving their work costs',
    }),
    warning: z.string().nullable().meta({ description: 'What to know about how the plan was made' }),
  })
  .meta({
    id: 'Week',
    description: 'Who drives where, when, doing what, with which parts; what was left out and what waiting costs',
  });
export const PlanDifferenceQuery = z.object({ from: Id.meta({ description: 'The plan run to compare with' }) });
export const PlanDifference = z
  .object({
    cents: z.record(z.string(), z.int()),
    visits: z.array(
      z.object({
        siteId: Id,
        what: z.enum(['same', 'retimed', 'moved-day', 'moved-technician', 'added', 'dropped']),
        before: z.string().nullable(),
        after: z.string().nullable(),
        minutesLater: z.int().nullable(),
        itemsAdded: z.array(z.string()),
        itemsDropped: z.array(z.string()),
      }),
    ),
    nowPlanned: z.array(z.string()),
    nowLeftOut: z.array(z.string()),
  })
  .meta({ id: 'PlanDifference', description: 'How one plan of a week differs from another' });
export const ExtraTime = z
  .object({
    minutes: z.int(),
    days: z.array(
      z.object({
        technicianId: Id,
        date: LocalDate,
        cents: z.int(),
        itemId: z.string().nullable(),
        title: z.string().nullable(),
      }),
    ),
  })
  .meta({ id: 'ExtraTime', description: 'What more time on each technician’s day would save' });

export const WeekConfirm = z
  .strictObject({
    weekOf: LocalDate,
    days: z.int().min(1).max(28).default(7),
    slotMinutes: z.int().min(0).max(240).default(30),
    moveCents: Cents.min(0).default(2500),
  })
  .meta({
    id: 'WeekConfirm',
    description: 'Promise every proposed visit of the week: its planned start, give or take slotMinutes',
  });
export const WeekConfirmed = z.object({ confirmed: z.int() }).meta({ id: 'WeekConfirmed' });
