import { UsageSnapshot } from '@deckround/usage';
import { z } from 'zod';

const localDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

/** When a kind of work falls due again; whichever limit is reached first counts. */
export const IntervalRule = z.object({
  /** Machine hours between two completions. */
  hours: z.number().positive().nullable(),
  /** Calendar days between two completions. */
  days: z.int().positive().nullable(),
  /** Break-in: machine hours since new at which the first completion falls due. */
  firstHours: z.number().positive().nullable(),
  seasonEvent: z.enum(['before-first-cut', 'before-storage']).nullable(),
  /** Multiplies `hours` and `days` on machines with hard duty (0 < factor ≤ 1), and by its inverse square root on light duty. */
  severeFactor: z.number().positive().max(1).default(1),
  /** How far past the due mark is still acceptable. */
  toleranceHours: z.number().min(0).default(0),
  toleranceDays: z.int().min(0).default(0),
  /** floating: counted from the last completion; fixed: multiples of the interval since new. */
  anchor: z.enum(['floating', 'fixed']).default('floating'),
});
export type IntervalRule = z.infer<typeof IntervalRule>;

/** What doing an item early or late costs; integer cents. */
export const ItemEconomics = z.object({
  /** Labour, parts and consumables of doing it once. */
  doCents: z.int().min(0),
  /** Repair and downtime when it is left until something fails. */
  failureCents: z.int().min(0),
  /** Weibull shape of the hazard that grows with hours (or days) since the last completion; 1 = no ageing. */
  hazardShape: z.number().min(1).max(6),
  /** Contract penalty for each day past tolerance. */
  latePenaltyCentsPerDay: z.int().min(0).default(0),
});
export type ItemEconomics = z.infer<typeof ItemEconomics>;

/** One kind of work on one machine (and slot), class defaults and machine overrides already resolved. */
export const ServiceItem = z.object({
  id: z.string(),
  machineId: z.string(),
  /** Stable word of the service item, e.g. `sharpen-blades`. */
  code: z.string(),
  slot: z.string().nullable().default(null),
  title: z.string(),
  rule: IntervalRule,
  severity: z.enum(['light', 'normal', 'severe']).default('normal'),
  /** Completing any of these on the same machine (and slot, where both name one) also counts as completing this. */
  resetBy: z.array(z.string()).default([]),
  /**
   * Without any completion on record: the share of the interval (0..1) that is taken as used up at the forecast origin,
   * a stated assumption; null or absent = counted from new.
   */
  assumedShare: z.number().min(0).max(1).nullish(),
  economics: ItemEconomics,
  /** Where the hazard's shape comes from, in words; absent = the catalogue or the shop's own setting. */
  hazardBasis: z.string().nullish(),
});
export type ServiceItem = z.infer<typeof ServiceItem>;

export const Completion = z.object({
  machineId: z.string(),
  code: z.string(),
  slot: z.string().nullable(),
  doneOn: localDate,
  /** What the meter showed then, hours; null = take the usage model's estimate. */
  meterHours: z.number().nullable(),
  /** `failed`: done because something broke. */
  outcome: z.enum(['done', 'failed']),
});
export type Completion = z.infer<typeof Completion>;

/** Work that stands in a visit to come, and its day. */
export const PlannedWork = z.object({
  machineId: z.string(),
  code: z.string(),
  slot: z.string().nullable(),
  on: localDate,
});
export type PlannedWork = z.infer<typeof PlannedWork>;

/** Something seen or measured that brings an item forward. */
export const FindingForUpkeep = z.object({
  machineId: z.string(),
  code: z.string(),
  slot: z.string().nullable(),
  foundOn: localDate,
  /** Multiplies what is left of the running interval, 0..1; or limits from the day found. */
  intervalFactor: z.number().min(0).max(1).nullable(),
  dueWithinHours: z.number().min(0).nullable(),
  dueWithinDays: z.int().min(0).nullable(),
});
export type FindingForUpkeep = z.infer<typeof FindingForUpkeep>;

/** A temporary repair that must be made good before its own limit. */
export const StopgapForUpkeep = z.object({
  id: z.string(),
  machineId: z.string(),
  code: z.string(),
  title: z.string(),
  madeOn: localDate,
  /** Its limit was set anew: its hours count from here; absent = from `madeOn`. */
  renewedOn: localDate.nullish(),
  limitHours: z.number().positive().nullable(),
  limitOn: localDate.nullable(),
  failureCents: z.int().min(0),
});
export type StopgapForUpkeep = z.infer<typeof StopgapForUpkeep>;

export const UpkeepSnapshot = z.object({
  usage: UsageSnapshot,
  items: z.array(ServiceItem),
  completions: z.array(Completion),
  /** Counts as done on its day, so that the forecast tells of the time after; absent = nothing stands yet. */
  planned: z.array(PlannedWork).optional(),
  findings: z.array(FindingForUpkeep),
  stopgaps: z.array(StopgapForUpkeep),
  /** Days the planner will ask about, starting at this local date (the first day of its horizon). */
  costFrom: localDate,
  costDays: z.int().min(1).max(60),
});
export type UpkeepSnapshot = z.infer<typeof UpkeepSnapshot>;

/** One reason behind a due date, in an order a person can follow. */
export const DueReason = z.object({
  rule: z.string(),
  lastCompletion: z.object({ on: localDate, lifetimeHours: z.number(), code: z.string() }).nullable(),
  /** `lastCompletion` is still to come: a visit in which the work stands. */
  isPlanned: z.boolean().optional(),
  /** Lifetime hours at which the hour limit is reached; null without an hour limit. */
  dueAtHours: z.number().nullable(),
  dueOnByCalendar: localDate.nullable(),
  lifetimeHoursNow: z.number(),
  lastReading: z.object({ at: z.string(), hours: z.number() }).nullable(),
  hoursPerWeekNow: z.number(),
  /** Which limit decides: hours, days, first hours, season, finding, stopgap. */
  decidedBy: z.enum(['hours', 'days', 'first-hours', 'season', 'finding', 'stopgap']),
  /** Where the failure hazard behind the timing cost comes from, in words. */
  hazard: z.string().nullable(),
  /** One sentence that a supervisor understands. */
  sentence: z.string(),
});
export type DueReason = z.infer<typeof DueReason>;

export const DueForecast = z.object({
  /** Service item id, or stopgap id. */
  itemId: z.string(),
  machineId: z.string(),
  code: z.string(),
  slot: z.string().nullable(),
  kind: z.enum(['service', 'stopgap']),
  title: z.string(),
  /** null = not within two years. */
  p10: localDate.nullable(),
  p50: localDate.nullable(),
  p90: localDate.nullable(),
  /** One per day from `costFrom`: chance that due mark plus tolerance has passed. */
  probabilityOverdue: z.array(z.number()),
  /** One per day from `costFrom`: integer cents of doing it that day against its best moment. */
  timingCostCents: z.array(z.int()),
  /** Integer cents of leaving it past the last of those days, at its best later moment within the next as many days. */
  deferralCents: z.int(),
  why: DueReason,
});
export type DueForecast = z.infer<typeof DueForecast>;
