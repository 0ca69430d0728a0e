import { TEMPERS } from './machines.mjs';
import { CLIMATES } from './weather.mjs';

/** Forecast origins, by kind, as month and day north of the equator and year of the register (0 = first). */
const ORIGINS = [
  { kind: 'first year', year: 0, on: '07-10' },
  { kind: 'first year', year: 0, on: '09-05' },
  { kind: 'spring', year: 1, on: '03-25', readUntil: '11-10' },
  { kind: 'season', year: 1, on: '06-14' },
  { kind: 'season', year: 1, on: '07-20' },
  { kind: 'late', year: 1, on: '09-10' },
  { kind: 'spring', year: 2, on: '03-25', readUntil: '11-10' },
  { kind: 'season', year: 2, on: '06-14' },
  { kind: 'late', year: 2, on: '09-10' },
];
const HABITS = ['mixed', 'visits', 'mixed', 'weekly', 'mixed', 'erratic', 'mixed', 'daily'];
const SIZES = [
  { machines: 360, sites: 48 },
  { machines: 48, sites: 8 },
  { machines: 120, sites: 20 },
];
const FIRST_YEAR = 2020;

/**
 * The family of simulated registers: every climate in several sizes, tempers, ways of reading and weathers.
 *
 * @param rounds weathers per climate
 * @param seed of the whole family: another seed, other registers
 */
export function family({ rounds, seed }) {
  const tempers = Object.keys(TEMPERS);
  return Object.keys(CLIMATES).flatMap((climate, c) =>
    Array.from({ length: rounds }, (_, round) => {
      const south = CLIMATES[climate].latitude < 0;
      const habit = HABITS[(c + 3 * round) % HABITS.length];
      const size = SIZES[(c + round) % SIZES.length];
      const temper = tempers[(c + 2 * round + Math.floor(round / 3)) % tempers.length];
      return {
        options: {
          ...{ seed: seed + 1000 * c + round, climate, temper, habit, ...size },
          ...{ from: south ? '2019-07-01' : '2020-01-01', until: southern('2022-09-10', south) },
        },
        origins: ORIGINS.map(({ kind, year, on, readUntil }) => ({
          kind,
          asOf: southern(`${FIRST_YEAR + year}-${on}`, south),
          ...(readUntil && { readUntil: southern(`${FIRST_YEAR + year - 1}-${readUntil}`, south) }),
        })),
      };
    }),
  );
}

/** The date half a year earlier south of the equator. */
function southern(date, south) {
  if (!south) return date;
  const at = new Date(`${date}T00:00:00Z`);
  at.setUTCDate(at.getUTCDate() - 184);
  return at.toISOString().slice(0, 10);
}
