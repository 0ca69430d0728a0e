import { Random } from '@deckround/routing';
import type { Clause } from '../clause.js';
import type { PlanningItem, PlanningSite, PlanningSnapshot, PlanningTechnician } from '../snapshot.js';
import { datesFrom } from '../wall-clock.js';
import { anItem, aSite, aTechnician, aWeek } from './a-week.js';

const FIRST = '2014-06-16';

/** The one rule that keeps a must-do out of its week. */
export const BLOCKS = [
  'skill',
  'part-by',
  'closed',
  'access',
  'shift',
  'lunch',
  'deadline',
  'bar',
  'machines-down',
  'works',
  'promise',
  'must-do',
] as const;
export type Block = (typeof BLOCKS)[number];

/**
 * A tiny week that is full of optional work, in which the must-do `must` at site `S0` is kept out by one rule alone.
 * The same for the same seed.
 */
export function aBlockedWeek(block: Block, seed: number): PlanningSnapshot {
  const random = new Random(seed);
  const days = block === 'promise' || block === 'must-do' ? 1 : 2 + random.below(3);
  const dates = datesFrom(FIRST, days);
  const crew = block === 'promise' || block === 'must-do' ? 1 : 1 + random.below(2);
  const place = () => ({ latitude: 41.6 + random.below(100) / 1000, longitude: -93.6 + random.below(100) / 1000 });
  const technicians = Array.from({ length: crew }, (_, k) =>
    aTechnician(dates, { id: `T${k + 1}`, name: `Tech ${k}` }),
  );
  const others = Array.from({ length: 2 + random.below(3) }, (_, s) =>
    aSite(dates, { id: `S${s + 1}`, name: `Site ${s + 1}`, ...place() }),
  );
  const optional = others.flatMap(({ id }) =>
    Array.from({ length: 2 * days }, (_, k) =>
      anItem(days, {
        id: `${id}-${k}`,
        machineId: `M-${id}`,
        minutes: 40 + random.below(120),
        deferralCents: 30_000 + random.below(90_000),
      }),
    ),
  );
  const must = anItem(days, { id: 'must', machineId: 'M-S0', mustDo: true, minutes: 60 + random.below(100) });
  const week = aWeek({
    days,
    technicians,
    sites: [aSite(dates, { id: 'S0', name: 'North Park', ...place() }), ...others],
    items: [must, ...optional],
  });
  return withMachines(blocked(week, block, random));
}

function blocked(week: PlanningSnapshot, block: Block, random: Random): PlanningSnapshot {
  const dates = datesFrom(week.firstDate, week.days);
  const everyone = (changes: Partial<PlanningTechnician>) => week.technicians.map((each) => ({ ...each, ...changes }));
  const must = (changes: Partial<PlanningItem>): PlanningSnapshot => ({
    ...week,
    items: [{ ...week.items[0]!, ...changes }, ...week.items.slice(1)],
  });
  const park = (changes: Partial<PlanningSite>, from = week): PlanningSnapshot => ({
    ...from,
    sites: [{ ...from.sites[0]!, ...changes }, ...from.sites.slice(1)],
  });
  const opening = (open: string, close: string) => ({ windows: dates.map((date) => ({ date, open, close })) });
  switch (block) {
    case 'skill':
      return must({ skill: 'hydraulic' });
    case 'part-by':
      return must({ releaseDate: '2014-07-02' });
    case 'closed':
      return park({ windows: [] });
    case 'access':
      // A visit takes ten minutes more than its work.
      return park(opening('09:00', '10:30'), must({ minutes: 90 + random.below(100) }));
    case 'shift':
      return { ...must({ minutes: 540 }), technicians: everyone({ maxOvertimeMinutes: 0, lunch: null }) };
    case 'lunch':
      return {
        ...park(opening('10:30', '15:40'), must({ minutes: 300 })),
        technicians: everyone({
          shifts: dates.map((date) => ({ date, start: '10:00', end: '16:00' })),
        }),
      };
    case 'deadline':
      return park({ windows: week.sites[0]!.windows.slice(1) }, must({ latestDate: dates[0]! }));
    case 'bar':
      return { ...week, barred: [{ siteId: 'S0', technicianId: null, date: null }] };
    case 'machines-down': {
      // Somebody else is there all the time that it is open, held fast.
      const helper = aTechnician(dates, { id: 'T9', name: 'Helper', latitude: 41.7 });
      const held = dates.map((date, d) => ({
        ...{ visitId: `P${d}`, kind: 'frozen' as const, siteId: 'S0', technicianId: 'T9', date },
        ...{ from: '08:00', to: '08:00', itemIds: [`held-${d}`], moveCents: 5000 },
      }));
      const items = dates.map((_, d) => anItem(week.days, { id: `held-${d}`, machineId: 'M-S0', minutes: 120 }));
      return {
        ...week,
        technicians: [...week.technicians, helper],
        items: [...week.items, ...items],
        promises: held,
      };
    }
    case 'works': {
      const day = dates[random.below(dates.length)]!;
      return {
        ...park({ windows: week.sites[0]!.windows.filter(({ date }) => date === day) }),
        technicians: week.technicians.map((each) => ({
          ...each,
          shifts: each.shifts.filter(({ date }) => date !== day && random.chance(0.7)),
        })),
      };
    }
    case 'promise':
    case 'must-do': {
      const rival = anItem(week.days, { id: 'rival', machineId: 'M-S1', minutes: 260, mustDo: true });
      const promise = { visitId: 'P', kind: 'frozen' as const, siteId: 'S1', technicianId: 'T1', date: FIRST };
      return {
        ...week,
        technicians: everyone({ maxOvertimeMinutes: 0 }),
        // Of two must-dos the search keeps whichever saves more.
        items: [
          { ...week.items[0]!, minutes: 260, deferralCents: 0 },
          ...week.items.slice(1),
          { ...rival, deferralCents: 90_000 },
        ],
        ...(block === 'promise' && {
          promises: [{ ...promise, from: '08:00', to: '09:30', itemIds: ['rival'], moveCents: 5000 }],
        }),
      };
    }
  }
}

function withMachines(week: PlanningSnapshot): PlanningSnapshot {
  const machines = week.sites.map(({ id }) => ({ ...week.machines[0]!, id: `M-${id}`, siteId: id }));
  return { ...week, machines };
}

/** The week with a rule given up just as the remedy says. */
export function given(week: PlanningSnapshot, rule: Clause): PlanningSnapshot {
  const dates = datesFrom(week.firstDate, week.days);
  const { values } = rule;
  const clock = (time: string, minutes: number) => {
    const total = Math.min(1440, Math.max(0, Number(time.slice(0, 2)) * 60 + Number(time.slice(3)) + minutes));
    return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`;
  };
  const technicians = (change: (each: PlanningTechnician) => Partial<PlanningTechnician>): PlanningSnapshot => ({
    ...week,
    technicians: week.technicians.map((each) => ({ ...each, ...change(each) })),
  });
  const site = (change: (each: PlanningSite) => Partial<PlanningSite>): PlanningSnapshot => ({
    ...week,
    sites: week.sites.map((each) => (each.name === values['site'] ? { ...each, ...change(each) } : each)),
  });
  const must = (changes: Partial<PlanningItem>): PlanningSnapshot => ({
    ...week,
    items: week.items.map((each) => (each.id === 'must' ? { ...each, ...changes } : each)),
  });
  const siteId = week.sites.find((each) => each.name === values['site'])?.id;
  switch (rule.key) {
    case 'skill':
      return technicians(({ skills }) => ({ skills: [...skills, String(values['skill'])] }));
    case 'part-by':
      return must({ releaseDate: String(values['byDate']) });
    case 'closed':
      return site(() => ({ windows: dates.map((date) => ({ date, open: '00:00', close: '24:00' })) }));
    case 'access': {
      const minutes = Number(values['openMinutes']);
      return site(({ windows }) => ({
        windows: windows.map((each) => ({
          ...each,
          open: clock(each.open, -minutes),
          close: clock(each.close, minutes),
        })),
      }));
    }
    case 'shift':
      return technicians((each) => ({ maxOvertimeMinutes: each.maxOvertimeMinutes + Number(values['shiftMinutes']) }));
    case 'lunch':
      return technicians(() => ({ lunch: null }));
    case 'deadline':
      return must({ latestDate: null });
    case 'bar':
      return { ...week, barred: [] };
    case 'machines-down':
      return site(() => ({ maxMachinesDown: 10 }));
    case 'works': {
      const usual = week.technicians.flatMap((each) => each.shifts)[0] ?? { start: '08:00', end: '16:00' };
      const shift = { ...usual, date: String(values['workDate']) };
      return technicians(({ name, shifts }) => (name === values['technician'] ? { shifts: [...shifts, shift] } : {}));
    }
    case 'promise':
      return {
        ...week,
        promises: week.promises.filter((each) => each.siteId !== siteId || each.date !== values['visitDate']),
        // Where it moves is not this week's affair.
        items: week.items.map((each) =>
          week.promises.some((promise) => promise.itemIds.includes(each.id)) ? { ...each, mustDo: false } : each,
        ),
      };
    case 'must-do':
      return {
        ...week,
        items: week.items.map((each) =>
          each.machineId === `M-${siteId}` && each.id !== 'must' ? { ...each, mustDo: false } : each,
        ),
      };
    default:
      throw new Error(`no such rule: ${rule.key}`);
  }
}
