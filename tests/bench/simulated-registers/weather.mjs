/**
 * Climates for invented weather: °C and mm, month by month only in outline. Own choice, loosely after the kinds of climate
 * that the words name; no station is imitated.
 *   mean, swing: yearly mean and half the difference of summer and winter; wet: chance of rain on a winter and a summer
 *   day; mm: rain on a wet day; drought: standard deviation of the log of how wet a season is; whims: of how early
 *   a spring comes, days; cool: share of grass that likes it cool; watered: share of sites that are irrigated.
 */
export const CLIMATES = {
  continental: {
    latitude: 41.6,
    mean: 10,
    swing: 14,
    wet: [0.25, 0.33],
    mm: 9,
    drought: 0.35,
    whims: 9,
    cool: 1,
    watered: 0.15,
  },
  maritime: {
    latitude: 52.3,
    mean: 10,
    swing: 6.5,
    wet: [0.5, 0.4],
    mm: 5,
    drought: 0.3,
    whims: 8,
    cool: 1,
    watered: 0.05,
  },
  'dry summer': {
    latitude: 46.2,
    mean: 11,
    swing: 7.5,
    wet: [0.6, 0.15],
    mm: 6,
    drought: 0.4,
    whims: 10,
    cool: 1,
    watered: 0.45,
  },
  volatile: {
    latitude: 38.5,
    mean: 13,
    swing: 13,
    wet: [0.16, 0.24],
    mm: 9,
    drought: 0.8,
    whims: 14,
    cool: 0.6,
    watered: 0.2,
  },
  'humid south': {
    latitude: 33.1,
    mean: 17.5,
    swing: 9.5,
    wet: [0.3, 0.38],
    mm: 11,
    drought: 0.4,
    whims: 9,
    cool: 0.2,
    watered: 0.2,
  },
  'southern temperate': {
    latitude: -37.4,
    mean: 14.5,
    swing: 6,
    wet: [0.42, 0.25],
    mm: 6,
    drought: 0.45,
    whims: 9,
    cool: 0.8,
    watered: 0.3,
  },
  'southern volatile': {
    latitude: -33.6,
    mean: 17,
    swing: 7,
    wet: [0.3, 0.2],
    mm: 8,
    drought: 0.75,
    whims: 12,
    cool: 0.4,
    watered: 0.4,
  },
  'northern short': {
    latitude: 60.2,
    mean: 5.5,
    swing: 12,
    wet: [0.35, 0.38],
    mm: 5,
    drought: 0.35,
    whims: 11,
    cool: 1,
    watered: 0.05,
  },
};

/** Days over which a dry or wet spell of the season fades, and a warm or cold one. */
const SPELL_DAYS = 70;
const WARM_SPELL_DAYS = 25;
const SHARED_RAIN = 0.8;

/**
 * Warmth of a region and rain of its sites, day by day: a yearly wave that comes early or late, warm and cold spells, rain by a
 * two-state chain whose wetness wanders over months; most rain falls on all sites, the rest on some.
 *
 * @returns warmth: °C per day; rain: per site, mm per day
 */
export function inventWeather(climate, fromDay, days, sites, draws) {
  const south = climate.latitude < 0;
  const warmth = new Float64Array(days);
  const rain = Array.from({ length: sites }, () => new Float64Array(days));
  const late = new Map();
  const step = (state, length, deviation) => {
    const keep = Math.exp(-1 / length);
    return state * keep + deviation * Math.sqrt(1 - keep * keep) * draws.normal();
  };
  let daily = 0;
  let spell = 1.5 * draws.normal();
  let wetness = climate.drought * draws.normal();
  let wasWet = false;
  for (let d = 0; d < days; d++) {
    const year = Math.floor((fromDay + d + (south ? 182 : 0)) / 365.2425);
    if (!late.has(year)) late.set(year, climate.whims * draws.normal());
    const at = (day) => Math.cos((2 * Math.PI * (day - (south ? 17 : 199))) / 365.2425);
    const summer = (1 + at(fromDay + d)) / 2;
    daily = step(daily, 3, 2.6);
    spell = step(spell, WARM_SPELL_DAYS, 1.8);
    wetness = step(wetness, SPELL_DAYS, climate.drought);
    warmth[d] = climate.mean + climate.swing * at(fromDay + d - late.get(year)) + daily + spell;
    const usual = climate.wet[0] + (climate.wet[1] - climate.wet[0]) * summer;
    const share = Math.min(0.9, usual * Math.exp(wetness - climate.drought ** 2 / 2));
    // the chance after a wet day is the higher one, the mean is kept
    wasWet = draws.chance(wasWet ? share + 0.3 * (1 - share) : share - 0.3 * share);
    const amount = wasWet ? climate.mm * draws.gamma(0.75) : 0;
    for (const site of rain) {
      const passed = amount > 0 && draws.chance(SHARED_RAIN) ? amount * draws.logNormal(0.4) : 0;
      const shower = draws.chance(0.06 * summer) ? 5 * draws.gamma(0.8) : 0;
      site[d] = passed + shower;
    }
  }
  return { warmth, rain };
}
