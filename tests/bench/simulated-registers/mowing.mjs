import { growthPotential, weekdayOf } from '@deckround/usage';

const SOIL_MM = 60;
/** Rain from which on nobody mows that day, mm. */
const TOO_WET = 3;

/** How a site cuts its grass: when it is long enough, or on a round; on which weekdays. */
export function inventHabits(climate, temper, draws) {
  const restDay = draws.whole(0, 4);
  return {
    cool: Math.min(1, Math.max(0, climate.cool + 0.15 * draws.normal())),
    watered: draws.chance(climate.watered),
    soil: SOIL_MM * draws.logNormal(0.3),
    /** Growth after which it is cut, in days of best growth. */
    cutAt: draws.between(1.5, 3.6),
    /** Days of the round; null = by the grass. */
    round: draws.chance(temper.rounds) ? draws.oneOf([7, 7, 7, 10, 14]) : null,
    works: Array.from({ length: 7 }, (_, weekday) =>
      weekday === 6 ? false : weekday === 5 ? draws.chance(0.15) : weekday !== restDay || draws.chance(0.5),
    ),
    closed: draws.between(0.02, 0.15),
  };
}

/**
 * When a site mows: soil water from rain, drying by warmth; growth = growth potential × water; cut when grown enough, the weekday
 * and the rain allowing.
 *
 * @returns per day the growth cut, in units of the growth at which the site cuts; 0 = nobody mows
 */
export function mowingDays(habits, warmth, rain, fromDay, draws) {
  const cut = new Float64Array(warmth.length);
  let water = 0.6 * habits.soil;
  let grown = 0;
  let since = 0;
  for (let d = 0; d < warmth.length; d++) {
    const dries = 0.3 + Math.max(0, 0.2 * warmth[d]);
    water = Math.min(habits.soil, Math.max(0, water + rain[d] - dries * Math.min(1, (2 * water) / habits.soil)));
    if (habits.watered) water = Math.max(water, 0.4 * habits.soil);
    const growth =
      habits.cool * growthPotential(warmth[d], 'cool') + (1 - habits.cool) * growthPotential(warmth[d], 'warm');
    grown += growth * Math.min(1, water / (0.45 * habits.soil));
    since++;
    const due = habits.round === null ? grown >= habits.cutAt : since >= habits.round && grown >= 0.25 * habits.cutAt;
    if (!due || !habits.works[weekdayOf(fromDay + d)] || rain[d] > TOO_WET || draws.chance(habits.closed)) continue;
    cut[d] = Math.min(2.5, grown / habits.cutAt);
    grown = 0;
    since = 0;
  }
  return cut;
}
