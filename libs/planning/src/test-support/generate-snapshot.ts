import { Random } from '@deckround/routing';
import { DateTime } from 'luxon';
import type {
  PlanningItem,
  PlanningMachine,
  PlanningPart,
  PlanningSite,
  PlanningSnapshot,
  PlanningTechnician,
} from '../snapshot.js';

export interface GeneratorSettings {
  seed: number;
  sites: number;
  machinesPerSite: number;
  /** Open items in all. */
  items: number;
  technicians: number;
  days: number;
  firstDate?: string;
  zone?: string;
  /** Zone of every third site; left out = the same everywhere. */
  otherZone?: string;
  promises?: boolean;
  mustDos?: boolean;
  lunch?: boolean;
  /** Some days in two stretches, some that begin after lunch. */
  oddShifts?: boolean;
  /** Kilometres from the middle to the farthest site. */
  reachKm?: number;
}

const KINDS = [
  { code: 'sharpen', title: 'Sharpen blades', minutes: 18, skill: null, states: ['blades off'], part: null },
  { code: 'grease', title: 'Grease spindles', minutes: 6, skill: null, states: ['deck raised'], part: null },
  { code: 'belt', title: 'Replace deck belt', minutes: 20, skill: null, states: ['belt off'], part: 'belt' },
  {
    code: 'bearing',
    title: 'Replace bearings',
    minutes: 45,
    skill: null,
    states: ['blades off', 'belt off'],
    part: 'bearing',
  },
  { code: 'oil', title: 'Change engine oil', minutes: 25, skill: null, states: [], part: 'oil' },
  { code: 'hydraulic', title: 'Service hydraulics', minutes: 50, skill: 'hydraulic', states: [], part: 'filter' },
  { code: 'interlock', title: 'Test interlocks', minutes: 12, skill: 'electrical', states: [], part: null },
  { code: 'level', title: 'Level deck', minutes: 22, skill: null, states: ['deck raised'], part: null },
] as const;

/** A made-up shop with a week of open work, the same for the same settings. */
export function generateSnapshot(settings: GeneratorSettings): PlanningSnapshot {
  const random = new Random(settings.seed);
  const zone = settings.zone ?? 'America/Chicago';
  const firstDate = settings.firstDate ?? '2014-06-16';
  const dates = Array.from(
    { length: settings.days },
    (_, d) => DateTime.fromISO(firstDate, { zone: 'utc' }).plus({ days: d }).toISODate()!,
  );
  const isWeekend = (date: string) => DateTime.fromISO(date, { zone: 'utc' }).weekday > 5;
  const pick = <T>(from: readonly T[]): T => from[random.below(from.length)]!;
  const reach = (settings.reachKm ?? 35) / 111;
  const place = (spread: number) => ({
    latitude: 41.6 + ((random.below(2001) - 1000) / 1000) * spread,
    longitude: -93.6 + ((random.below(2001) - 1000) / 1000) * spread * 1.3,
  });

  const oddShift = (shift: PlanningTechnician['shifts'][number]): PlanningTechnician['shifts'][number] =>
    pick([
      shift,
      {
        ...shift,
        end: '18:00',
        rest: pick([
          { from: '11:00', to: '14:00' },
          { from: '12:00', to: '12:15' },
        ]),
      },
      { ...shift, start: '13:30', end: '18:00' },
    ]);
  const technicians = Array.from({ length: settings.technicians }, (_, k): PlanningTechnician => {
    const start = pick(['06:30', '07:00', '07:30']);
    return {
      id: `T${k + 1}`,
      name: `Technician ${k + 1}`,
      ...(k % 2 === 0 ? { latitude: 41.6, longitude: -93.6 } : place(reach / 3)),
      zone,
      skills: k % 2 === 0 ? ['hydraulic', 'electrical'] : random.chance(0.4) ? ['electrical'] : [],
      wageCentsPerHour: 3200 + 100 * random.below(9),
      overtimeCentsPerHour: 5100 + 100 * random.below(6),
      maxOvertimeMinutes: pick([0, 60, 90]),
      lunch: settings.lunch === false ? null : { minutes: 30, earliest: '11:00', latest: '13:00' },
      shifts: dates
        .filter((date) => !isWeekend(date) || (settings.days <= 3 && random.chance(0.7)))
        .filter(() => random.chance(0.93))
        .map((date) => ({ date, start, end: random.chance(0.15) ? '12:00' : '16:00' }))
        .map((shift) => (settings.oddShifts ? oddShift(shift) : shift)),
    };
  });

  const sites = Array.from({ length: settings.sites }, (_, s): PlanningSite => {
    const hours = pick([
      [['06:30', '14:30']],
      [['07:00', '16:00']],
      [
        ['07:00', '10:30'],
        ['13:00', '17:00'],
      ],
      [['00:00', '24:00']],
    ]);
    const blackout = random.chance(0.3) ? pick(dates) : '';
    return {
      id: `S${s + 1}`,
      name: `Site ${s + 1}`,
      ...place(reach),
      zone: settings.otherZone && s % 3 === 0 ? settings.otherZone : zone,
      setupMinutes: 5 + 5 * random.below(5),
      visitFeeCents: 500 * random.below(4),
      maxMachinesDown: 1 + random.below(3),
      downRule: random.chance(0.75) ? 'one-by-one' : 'whole-visit',
      windows: dates
        .filter((date) => date !== blackout && random.chance(0.92))
        .flatMap((date) => hours.map(([open, close]) => ({ date, open: open!, close: close! }))),
      preferredTechnicianId: random.chance(0.4) ? pick(technicians).id : null,
      preferenceCents: 500 + 100 * random.below(10),
    };
  });

  const machines = sites.flatMap((site, s) =>
    Array.from(
      { length: settings.machinesPerSite },
      (_, m): PlanningMachine => ({
        id: `M${s + 1}-${m + 1}`,
        siteId: site.id,
        label: `Mower ${m + 1}`,
        machineClass: 'zero-turn',
        preparations: [
          { state: 'deck raised', minutes: 5, parent: null },
          { state: 'blades off', minutes: 10, parent: 'deck raised' },
          { state: 'belt off', minutes: 8, parent: 'deck raised' },
        ],
      }),
    ),
  );

  const used = new Set<string>();
  const items: PlanningItem[] = [];
  while (items.length < settings.items && used.size < machines.length * KINDS.length) {
    const machine = pick(machines);
    const kind = pick(KINDS);
    const key = `${machine.id}-${kind.code}`;
    if (used.has(key)) continue;
    used.add(key);
    items.push(anItem(key, machine.id, kind, random, dates, settings.mustDos !== false));
  }

  const parts: PlanningPart[] = ['belt', 'bearing', 'oil', 'filter'].map((id) => ({
    id,
    description: `Part ${id}`,
    designation: null,
    unit: id === 'oil' ? 'l' : 'pcs',
    onHand: random.below(12),
    arrivals: dates.length > 2 ? [{ date: dates[2]!, quantity: 5 }] : [],
    leadDays: 3,
  }));

  return {
    version: 1,
    shopName: 'Example shop',
    currency: 'USD',
    zone,
    firstDate,
    days: settings.days,
    asOf: firstDate,
    travel: {
      kind: 'geodesic',
      detourShort: 1.35,
      detourMedium: 1.28,
      detourLong: 1.2,
      townKmh: 38,
      openKmh: 75,
      centsPerKm: 42,
    },
    laterTripShare: 0.75,
    ...(settings.seed % 2 === 0 && { laterLabourShare: 1 }),
    technicians,
    sites,
    machines,
    items,
    parts,
    promises: settings.promises ? somePromises(random, technicians, sites, machines, items) : [],
    previous: [],
  };
}

/** Timing cost: a valley around the due day, dearer on the late side. */
function anItem(
  id: string,
  machineId: string,
  kind: (typeof KINDS)[number],
  random: Random,
  dates: string[],
  mustDos: boolean,
): PlanningItem {
  const due = random.below(dates.length * 3) - dates.length;
  const early = 20 + random.below(100);
  const late = 100 + random.below(600);
  const cost = (day: number) => (day < due ? early * (due - day) : late * (day - due));
  const dueDate = DateTime.fromISO(dates[0]!, { zone: 'utc' }).plus({ days: due }).toISODate()!;
  return {
    id,
    machineId,
    code: kind.code,
    title: kind.title,
    minutes: kind.minutes,
    skill: kind.skill,
    parts: kind.part === null ? [] : [{ partId: kind.part, quantity: kind.part === 'oil' ? 1.9 : 1 + random.below(2) }],
    consumables: kind.code === 'grease' ? [{ name: 'Grease', quantity: 0.1, unit: 'kg' }] : [],
    preparations: [...kind.states],
    releaseDate: kind.part !== null && random.chance(0.3) ? dates[random.below(dates.length)]! : null,
    mustDo: mustDos && random.chance(0.04),
    timingCostCents: dates.map((_, day) => cost(day)),
    deferralCents: Math.max(0, cost(dates.length + 1) + random.below(1500)),
    dueP10: null,
    dueP50: dueDate,
    dueP90: null,
    because: `Due about ${dueDate} from its hours`,
  };
}

/** Announced visits that can be kept: one per technician at most, in the middle of the day, with one short item. */
function somePromises(
  random: Random,
  technicians: PlanningTechnician[],
  sites: PlanningSite[],
  machines: PlanningMachine[],
  items: PlanningItem[],
): PlanningSnapshot['promises'] {
  const taken = new Set<string>();
  return technicians.flatMap((technician, k) => {
    const shift = technician.shifts.find((candidate) => candidate.end === '16:00');
    const site = sites.find(
      (candidate) =>
        !taken.has(candidate.id) &&
        candidate.windows.some((w) => w.date === shift?.date && w.open <= '07:00' && w.close >= '14:30'),
    );
    if (!shift || !site) return [];
    const item = items.find(
      (candidate) =>
        machines.find((machine) => machine.id === candidate.machineId)!.siteId === site.id &&
        candidate.skill === null &&
        (candidate.releaseDate === null || candidate.releaseDate <= shift.date),
    );
    if (!item) return [];
    taken.add(site.id);
    return [
      {
        visitId: `announced-${k + 1}`,
        kind: random.chance(0.5) ? ('frozen' as const) : ('confirmed' as const),
        siteId: site.id,
        technicianId: technician.id,
        date: shift.date,
        from: '09:00',
        to: '10:30',
        itemIds: [item.id],
        moveCents: 6000,
      },
    ];
  });
}
