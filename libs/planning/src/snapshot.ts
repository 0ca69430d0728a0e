import { z } from 'zod';

const localDate = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const clock = z.string().regex(/^([01]\d|2[0-4]):[0-5]\d$/);
const id = z.string().min(1);

export const TravelSettings = z.object({
  kind: z.literal('geodesic'),
  /** Road length over geodesic length, for trips of up to 10 km, up to 50 km, and beyond. */
  detourShort: z.number().min(1),
  detourMedium: z.number().min(1),
  detourLong: z.number().min(1),
  /** km/h for the part of a trip within 10 km, and beyond it. */
  townKmh: z.number().positive(),
  openKmh: z.number().positive(),
  centsPerKm: z.number().min(0),
});
export type TravelSettings = z.infer<typeof TravelSettings>;

/** Drives as a road network tells them; row = from, column = to; null = no way known, so it is estimated. */
export const KnownDrives = z.object({
  /** Ids of sites and technicians (their base). */
  places: z.array(id),
  seconds: z.array(z.number().min(0).nullable()),
  metres: z.array(z.number().min(0).nullable()),
});
export type KnownDrives = z.infer<typeof KnownDrives>;

export const PlanningTechnician = z.object({
  id,
  name: z.string(),
  latitude: z.number(),
  longitude: z.number(),
  zone: z.string(),
  skills: z.array(z.string()),
  wageCentsPerHour: z.int().min(0),
  overtimeCentsPerHour: z.int().min(0),
  maxOvertimeMinutes: z.int().min(0),
  /** Its start lies between earliest and latest; null = none. */
  lunch: z.object({ minutes: z.int().min(1), earliest: clock, latest: clock }).nullable(),
  /** Days worked within the horizon, each once; wall clock of the technician's zone. */
  shifts: z.array(
    z.object({
      date: localDate,
      start: clock,
      end: clock,
      /** Of a day in two stretches: the time between them, in which nobody works or drives. It is lunch as well. */
      rest: z.object({ from: clock, to: clock }).optional(),
      /** The day is under way: `start` is when the technician is free, and where. Absent = begins at the base. */
      underWay: z.object({ siteId: id.nullable(), lunchTaken: z.boolean() }).optional(),
    }),
  ),
});
export type PlanningTechnician = z.infer<typeof PlanningTechnician>;

export const PlanningSite = z.object({
  id,
  name: z.string(),
  latitude: z.number(),
  longitude: z.number(),
  zone: z.string(),
  setupMinutes: z.int().min(0),
  visitFeeCents: z.int().min(0),
  maxMachinesDown: z.int().min(1),
  /** one-by-one: one technician holds one machine; whole-visit: all machines of a visit stand idle throughout. */
  downRule: z.enum(['one-by-one', 'whole-visit']),
  /** Access after blackout dates are taken out; wall clock of the site's zone. Work starts and ends inside one of them. */
  windows: z.array(z.object({ date: localDate, open: clock, close: clock })),
  preferredTechnicianId: id.nullable(),
  /** Charged when another technician comes. */
  preferenceCents: z.int().min(0),
});
export type PlanningSite = z.infer<typeof PlanningSite>;

export const PlanningMachine = z.object({
  id,
  siteId: id,
  label: z.string(),
  machineClass: z.string(),
  /** Shared preparation: a forest; a state needs its parent too. Each counts once per machine and visit. */
  preparations: z.array(z.object({ state: z.string(), minutes: z.int().min(0), parent: z.string().nullable() })),
});
export type PlanningMachine = z.infer<typeof PlanningMachine>;

export const PlanningItem = z.object({
  id,
  machineId: id,
  code: z.string(),
  title: z.string(),
  minutes: z.int().min(0),
  skill: z.string().nullable(),
  parts: z.array(z.object({ partId: id, quantity: z.number().positive() })),
  consumables: z.array(z.object({ name: z.string(), quantity: z.number().positive(), unit: z.string() })),
  preparations: z.array(z.string()),
  /** First day it can be done (a part arrives); null = any. */
  releaseDate: localDate.nullable(),
  /** Last day it can be done (an event follows); absent or null = any. */
  latestDate: localDate.nullable().optional(),
  /** Where its last day cannot be kept, a must-do is done as soon after it as it can be. Absent = it is left out then. */
  betterLate: z.boolean().optional(),
  mustDo: z.boolean(),
  /** Integer cents, one per day of the horizon. */
  timingCostCents: z.array(z.int()),
  /** Integer cents of leaving it past the horizon. */
  deferralCents: z.int(),
  /** Due range, for explanation only. */
  dueP10: localDate.nullable(),
  dueP50: localDate.nullable(),
  dueP90: localDate.nullable(),
  /** A visit to come of that day, before the horizon, counts as having done it: this is the time after. */
  follows: localDate.optional(),
  /** One sentence from the due forecast. */
  because: z.string(),
});
export type PlanningItem = z.infer<typeof PlanningItem>;

export const PlanningPart = z.object({
  id,
  description: z.string(),
  designation: z.string().nullable(),
  unit: z.string(),
  onHand: z.number().min(0),
  arrivals: z.array(z.object({ date: localDate, quantity: z.number().positive() })),
  leadDays: z.int().min(0),
});
export type PlanningPart = z.infer<typeof PlanningPart>;

/** A visit that was announced to the customer. Frozen ones stay exactly; confirmed ones move only at a price. */
export const PlanningPromise = z.object({
  visitId: id,
  kind: z.enum(['frozen', 'confirmed']),
  siteId: id,
  technicianId: id,
  date: localDate,
  /** Slot for the start of work, wall clock of the site. */
  from: clock,
  to: clock,
  itemIds: z.array(id),
  moveCents: z.int().min(0),
});
export type PlanningPromise = z.infer<typeof PlanningPromise>;

/** Where somebody must not be sent: by technician, by date, or both; null = whoever, whenever. */
export const PlanningBar = z.object({
  siteId: id,
  technicianId: id.nullable(),
  date: localDate.nullable(),
});
export type PlanningBar = z.infer<typeof PlanningBar>;

/** Everything the planner needs, in one document that can be mailed, replayed and tested. */
export const PlanningSnapshot = z.object({
  version: z.literal(1),
  shopName: z.string(),
  currency: z.string().length(3),
  /** The shop's zone; minute 0 of the plan is its midnight at `firstDate`. */
  zone: z.string(),
  firstDate: localDate,
  days: z.int().min(1).max(28),
  asOf: localDate,
  /** Work has begun on the day `asOf`: its visits stand as they are, among the promises. Absent = no. */
  isUnderWay: z.boolean().optional(),
  travel: TravelSettings,
  drives: KnownDrives.optional(),
  /** Share of a typical later trip that deferring an item still has to pay for, 0..1 (planner note, end of horizon). */
  laterTripShare: z.number().min(0).max(1),
  /**
   * Share of an item's own labour that leaving it out only puts off, 0..1; absent = 0, as if work left out were saved.
   * At 1, doing an item now rather than later is a matter of timing, trip and shared preparation alone.
   */
  laterLabourShare: z.number().min(0).max(1).optional(),
  technicians: z.array(PlanningTechnician),
  sites: z.array(PlanningSite),
  machines: z.array(PlanningMachine),
  items: z.array(PlanningItem),
  parts: z.array(PlanningPart),
  promises: z.array(PlanningPromise),
  barred: z.array(PlanningBar).optional(),
  /** A former plan to start from; may name things that no longer exist. */
  previous: z.array(z.object({ siteId: id, technicianId: id, date: localDate, itemIds: z.array(id) })),
});
export type PlanningSnapshot = z.infer<typeof PlanningSnapshot>;
