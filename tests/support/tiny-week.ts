import type { PlanningItem, PlanningSite, PlanningSnapshot, PlanningTechnician } from '@deckround/planning';
import { Random } from '@deckround/routing';
import { generateSnapshot } from '../../libs/planning/src/test-support/generate-snapshot.js';

/** Access that makes technicians choose whom to serve when. */
const HOURS: [string, string][][] = [
  [['07:00', '09:00']],
  [['08:00', '10:30']],
  [['09:30', '12:00']],
  [
    ['07:00', '08:30'],
    ['10:30', '13:00'],
  ],
  [['06:30', '14:30']],
];

/**
 * Ten items at four or five sites for two to four technician-days: small enough for a proven optimum, and so tight that
 * lunch, overtime, skills, access and must-dos decide. Wages are whole cents a minute, so that no rounding blurs a cost.
 */
export function tinyWeek(number: number): PlanningSnapshot {
  const random = new Random(7000 + number);
  const pick = <T>(from: readonly T[]): T => from[random.below(from.length)]!;
  const technicians = 1 + (number % 2);
  const shop = generateSnapshot({
    seed: 400 + number,
    sites: 4 + (number % 3 === 0 ? 1 : 0),
    machinesPerSite: number % 4 === 0 ? 2 : 1,
    items: 10,
    technicians,
    days: technicians === 1 ? 2 + (number % 4 === 0 ? 1 : 0) : 1 + (number % 4 === 1 ? 1 : 0),
    mustDos: false,
    reachKm: 20,
  });
  const dates = [...new Set(shop.sites.flatMap((site) => site.windows.map((window) => window.date)))].sort();
  return {
    ...shop,
    laterLabourShare: 1,
    technicians: shop.technicians.map(
      (technician, k): PlanningTechnician => ({
        ...technician,
        skills: k === 0 ? ['hydraulic'] : ['electrical'],
        wageCentsPerHour: 3000 + 60 * random.below(11),
        overtimeCentsPerHour: 4800 + 60 * random.below(11),
        maxOvertimeMinutes: pick([45, 60, 90]),
        lunch: { minutes: 30, earliest: '09:30', latest: '10:30' },
        shifts: dates.map((date) => ({ date, start: '07:00', end: pick(['10:30', '11:30', '12:30']) })),
      }),
    ),
    sites: shop.sites.map((site): PlanningSite => {
      const hours = pick(HOURS);
      const windows = dates.flatMap((date) => hours.map(([open, close]) => ({ date, open, close })));
      return { ...site, windows };
    }),
    items: shop.items.map(
      (item, k): PlanningItem => ({
        ...item,
        deferralCents: item.deferralCents + 100 * random.below(20),
        // one of five, whether it pays or not
        mustDo: item.skill === null && item.releaseDate === null && k % 5 === 0,
      }),
    ),
  };
}
