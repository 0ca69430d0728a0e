import type { PlanningItem, PlanningSite, PlanningSnapshot, PlanningTechnician } from '../snapshot.js';
import { datesFrom } from '../wall-clock.js';

/** A technician who works 07:00 to 16:00 on every day given. */
export function aTechnician(dates: string[], changes: Partial<PlanningTechnician> = {}): PlanningTechnician {
  return {
    id: 'T1',
    name: 'Technician 1',
    latitude: 41.6,
    longitude: -93.6,
    zone: 'America/Chicago',
    skills: [],
    wageCentsPerHour: 3600,
    overtimeCentsPerHour: 5400,
    maxOvertimeMinutes: 60,
    lunch: { minutes: 30, earliest: '11:00', latest: '13:00' },
    shifts: dates.map((date) => ({ date, start: '07:00', end: '16:00' })),
    ...changes,
  };
}

/** A site near the base, open 07:00 to 17:00 on every day given. */
export function aSite(dates: string[], changes: Partial<PlanningSite> = {}): PlanningSite {
  return {
    id: 'S1',
    name: 'North Park',
    latitude: 41.65,
    longitude: -93.6,
    zone: 'America/Chicago',
    setupMinutes: 10,
    visitFeeCents: 0,
    maxMachinesDown: 1,
    downRule: 'one-by-one',
    windows: dates.map((date) => ({ date, open: '07:00', close: '17:00' })),
    preferredTechnicianId: null,
    preferenceCents: 0,
    ...changes,
  };
}

/** Half an hour of work on machine M1 that is well worth a trip on any day. */
export function anItem(days: number, changes: Partial<PlanningItem> = {}): PlanningItem {
  return {
    id: 'I1',
    machineId: 'M1',
    code: 'sharpen',
    title: 'Sharpen blades',
    minutes: 30,
    skill: null,
    parts: [],
    consumables: [],
    preparations: [],
    releaseDate: null,
    mustDo: false,
    timingCostCents: new Array<number>(days).fill(0),
    deferralCents: 50_000,
    dueP10: null,
    dueP50: null,
    dueP90: null,
    because: 'Due about now',
    ...changes,
  };
}

/** One technician, one site with one machine, one item. */
export function aWeek(changes: Partial<PlanningSnapshot> = {}): PlanningSnapshot {
  const firstDate = changes.firstDate ?? '2014-06-16';
  const days = changes.days ?? 5;
  const dates = datesFrom(firstDate, days);
  return {
    version: 1,
    shopName: 'Example shop',
    currency: 'USD',
    zone: 'America/Chicago',
    firstDate,
    days,
    asOf: firstDate,
    travel: {
      kind: 'geodesic',
      detourShort: 1.3,
      detourMedium: 1.3,
      detourLong: 1.2,
      townKmh: 40,
      openKmh: 80,
      centsPerKm: 40,
    },
    laterTripShare: 0.5,
    technicians: [aTechnician(dates)],
    sites: [aSite(dates)],
    machines: [
      {
        id: 'M1',
        siteId: 'S1',
        label: 'Mower 1',
        machineClass: 'zero-turn',
        preparations: [
          { state: 'deck raised', minutes: 5, parent: null },
          { state: 'blades off', minutes: 10, parent: 'deck raised' },
        ],
      },
    ],
    items: [anItem(days)],
    parts: [],
    promises: [],
    previous: [],
    ...changes,
  };
}
