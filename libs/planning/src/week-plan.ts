import { z } from 'zod';
import { Clause } from './clause.js';

const localDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
/** RFC 3339 with the offset of the place it belongs to, e.g. `2014-06-16T08:05:00-05:00`. */
const instant = z.string();

/** Integer cents; `total` is their sum. */
export const CostParts = z.object({
  total: z.int(),
  travel: z.int(),
  labour: z.int(),
  overtime: z.int(),
  visitFees: z.int(),
  preference: z.int(),
  timing: z.int(),
  deferral: z.int(),
  /** Labour of the work left out: it is put off, not saved. */
  laterLabour: z.int(),
  disruption: z.int(),
});
export type CostParts = z.infer<typeof CostParts>;

export const PlannedItem = z.object({
  itemId: z.string(),
  machineId: z.string(),
  /** anchor: its gain pays for the visit; rider: worth it because the visit happens anyway. */
  role: z.enum(['must-do', 'anchor', 'rider']),
  minutes: z.int(),
  /** Minutes of shared preparation that this item would need alone and here rides along. */
  sharedMinutes: z.int(),
  timingCents: z.int(),
  /** What not doing it in this visit would cost, everything else unchanged. */
  waitingCents: z.int(),
  reason: z.string(),
});
export type PlannedItem = z.infer<typeof PlannedItem>;

export const PlannedVisit = z.object({
  /** Stable within the plan: `v1`, `v2` … in order of start. */
  id: z.string(),
  promisedVisitId: z.string().nullable(),
  siteId: z.string(),
  technicianId: z.string(),
  date: localDate,
  order: z.int(),
  driveMinutes: z.int(),
  arriveAt: instant,
  startAt: instant,
  endAt: instant,
  setupMinutes: z.int(),
  preparationMinutes: z.int(),
  items: z.array(PlannedItem),
  /** Cost of the plan with this visit minus without it, its items deferred. Negative = it saves money. */
  marginalCents: z.int(),
  reason: z.string(),
});
export type PlannedVisit = z.infer<typeof PlannedVisit>;

export const LoadLine = z.object({
  partId: z.string().nullable(),
  name: z.string(),
  quantity: z.number(),
  unit: z.string(),
  /** How many of them will not be there in the morning. */
  missing: z.number(),
});
export type LoadLine = z.infer<typeof LoadLine>;

export const DayRoute = z.object({
  technicianId: z.string(),
  date: localDate,
  leaveAt: instant,
  returnAt: instant,
  lunch: z.object({ from: instant, to: instant }).nullable(),
  driveMinutes: z.int(),
  driveMetres: z.int(),
  workMinutes: z.int(),
  waitMinutes: z.int(),
  overtimeMinutes: z.int(),
  /** In order of driving. */
  visitIds: z.array(z.string()),
  load: z.array(LoadLine),
});
export type DayRoute = z.infer<typeof DayRoute>;

export const LeftOut = z.object({
  itemId: z.string(),
  cents: z.int(),
  mustDo: z.boolean(),
  /** Nearest obstacle: no skilled technician, no part in time, no access, no time in any shift, or simply cheaper to wait. */
  code: z.enum(['skill', 'part', 'access', 'time', 'cheaper-later']),
  reason: z.string(),
  /** The obstacle in the reason; absent in plans made before it was kept. */
  obstacle: Clause.optional(),
  /** Only for what must be done: the mildest rules to give up so that it fits. */
  remedies: z.array(z.string()).optional(),
  /** The same remedies, each as the rules that have to give way together. */
  remedyRules: z.array(z.array(Clause)).optional(),
});
export type LeftOut = z.infer<typeof LeftOut>;

export const WeekPlan = z.object({
  version: z.literal(1),
  /** SHA-256 of the canonical snapshot, given by the caller. */
  snapshotHash: z.string(),
  seed: z.int(),
  iterations: z.int(),
  /** Present when the run was cut short (cancelled): the iterations that the search was laid out for. */
  plannedIterations: z.int().optional(),
  /** Searches that ran side by side, and whether routes were combined by set partitioning; absent = one, and not. */
  threads: z.int().optional(),
  combined: z.boolean().optional(),
  /** How often the plan was shared out between both searches; absent = never. */
  divided: z.int().optional(),
  cost: CostParts,
  routes: z.array(DayRoute),
  visits: z.array(PlannedVisit),
  leftOut: z.array(LeftOut),
});
export type WeekPlan = z.infer<typeof WeekPlan>;
