import { dayNumber } from '../calendar.js';
import { type CleanedReadings, cleanReadings, type LifetimeReading } from '../cleaning/clean-readings.js';
import type { MachineForUsage, UsageSnapshot } from '../snapshot.js';
import { Activity, type Memory } from './activity.js';
import { climateGroups } from './climate-groups.js';
import { type Dispersion, fitDispersion } from './dispersion.js';
import { type Increments, incrementsOf, workMoment } from './increments.js';
import { learnWeather } from './learn-weather.js';
import { baseLevels, longRunLevels, seasonDaysOf } from './levels.js';
import type { LookBack } from './look-back.js';
import { MachineTrack, type Pace } from './machine-track.js';
import { SeasonClock } from './season-clock.js';
import { learnSeason } from './season-shape.js';
import { staysOf } from './stays.js';
import { WeatherSeries } from './weather-series.js';
import { type WorkWeek, workWeeks } from './work-week.js';

/** What has been learned of one machine. */
export interface MachineUsage {
  readonly machine: MachineForUsage;
  readonly clock: SeasonClock;
  readonly pace: Pace;
  /** Its weekdays, where it is read daily. */
  readonly week: WorkWeek | null;
  readonly line: readonly LifetimeReading[];
  /** Where the forecast starts: lifetime hours known at a moment on the working-time scale. */
  readonly knownAt: number;
  readonly knownHours: number;
}

export interface UsageModel {
  readonly asOf: string;
  readonly originDay: number;
  readonly horizonDays: number;
  readonly machines: ReadonlyMap<string, MachineUsage>;
  readonly cleaned: CleanedReadings;
  readonly dispersion: Dispersion;
  readonly memory: Memory;
  readonly lookBacks: number;
}

/** Memories tried against the snapshot's own history. */
const MEMORIES: readonly Memory[] = [12, 25, 60, 150, 400].flatMap((days) =>
  [50, 150, 500, 1500].map((siteHours) => ({ days, siteHours })),
);
const DEFAULT_MEMORY: Memory = { days: 60, siteHours: 50 };
/** Days ahead whose season decides which past spans count most. */
const DAYS_AHEAD = 42;
const HORIZONS = [7, 14, 30, 60];
/** Machines looked back on, and looks back per machine and horizon. */
const LOOKED_AT = 500;
const LOOKS_PER_MACHINE = 6;
const LEARN_SEASON_FROM = 1500;
/** Days past the horizon for which clocks run, so that due dates two years ahead can be told. */
const CLOCK_AHEAD_DAYS = 800;

/**
 * Usage model: hours run in a span = pace × season days of the span, pace = long-run level × recent activity, spread
 * by a gamma law whose dispersion comes from looking back along the snapshot's own readings.
 * Cost grows linearly with readings.
 */
export function fitUsage(snapshot: UsageSnapshot): UsageModel {
  const originDay = dayNumber(snapshot.asOf);
  const { machines, asOf } = snapshot;
  const cleaned = cleanReadings(snapshot.readings, snapshot.meterChanges, { asOf, machines });
  const lines = machines.map((machine) => cleaned.believed.get(machine.id) ?? []);
  const { stays, present } = staysOf(machines, lines);
  const places = stays.map((stay) => stay.machine);
  const increments = incrementsOf(stays.map((stay) => stay.line));
  const { groupOf, latitudes } = climateGroups(places);

  const firstDay = increments.from.reduce((low, day) => Math.min(low, Math.floor(day)), originDay);
  const start = Math.max(firstDay, originDay - 4000);
  const clocks = latitudes.map((latitude, group) => {
    const members = spread(indicesWhere(groupOf, group), LEARN_SEASON_FROM);
    const { shape, doubt } = learnSeason(increments, members, latitude);
    const end = originDay + snapshot.horizonDays + CLOCK_AHEAD_DAYS;
    const usual = new SeasonClock(shape, start, end, doubt);
    const weather = learnWeather(weatherOf(snapshot, places, groupOf, group), increments, members, usual);
    return weather === null ? usual : new SeasonClock(shape, start, end, doubt, weather);
  });
  const clockOf = (m: number) => clocks[groupOf[m]!]!;
  const seasonDays = seasonDaysOf(increments, clockOf);
  const base = baseLevels(
    increments,
    seasonDays,
    places.map((place, s) => `${groupOf[s]}|${place.machineClass}`),
    places.map((place) => `${place.siteId}||${place.machineClass}`),
  );
  const level = longRunLevels(increments, seasonDays, base);

  const siteIds = [...new Set(places.map((place) => place.siteId))];
  const siteIndex = new Map(siteIds.map((id, index) => [id, index]));
  const siteOf = Int32Array.from(places, (place) => siteIndex.get(place.siteId)!);
  const groupOfSite = new Int32Array(siteIds.length);
  places.forEach((_, s) => {
    groupOfSite[siteOf[s]!] = groupOf[s]!;
  });
  const activityWith = (memory: Memory) =>
    new Activity(
      increments,
      seasonDays,
      level,
      siteOf,
      groupOfSite,
      latitudes.length,
      clocks,
      memory,
      start,
      originDay + 1,
    );

  const looked = spread(indicesWhere(groupOf, null), LOOKED_AT);
  let memory = DEFAULT_MEMORY;
  let lookBacks: LookBack[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of MEMORIES) {
    const activity = activityWith(candidate);
    const found = looked.flatMap((m) =>
      lookBack(
        increments,
        seasonDays,
        m,
        new MachineTrack(siteOf[m]!, level[m]!, activity, candidate),
        clockOf(m),
        groupOf[m]!,
        originDay,
      ),
    );
    const loss = found.reduce((sum, each) => sum + each.weight * Math.abs(each.hours - each.expected), 0);
    if (loss < least) {
      least = loss;
      memory = candidate;
      lookBacks = found;
    }
  }
  const activity = activityWith(memory);
  const weeks = workWeeks(increments, groupOf);
  const fitted = machines.map((machine, m): [string, MachineUsage] => {
    const stay = present[m]!;
    const track = new MachineTrack(siteOf[stay]!, level[stay]!, activity, memory);
    for (let i = increments.first[stay]!; i < increments.first[stay + 1]!; i++) track.add(increments, seasonDays, i);
    const line = lines[m]!;
    const last = line.at(-1);
    const knownAt = last
      ? workMoment(last.moment)
      : machine.inServiceOn
        ? Math.min(originDay + 1, dayNumber(machine.inServiceOn))
        : originDay + 1;
    const pace = track.paceAt(originDay + 1);
    return [
      machine.id,
      { machine, clock: clockOf(stay), pace, week: weeks[stay]!, line, knownAt, knownHours: last?.lifetimeHours ?? 0 },
    ];
  });
  return {
    asOf: snapshot.asOf,
    originDay,
    horizonDays: snapshot.horizonDays,
    machines: new Map(fitted),
    cleaned,
    dispersion: fitDispersion(lookBacks, Math.max(1, (originDay - start) / 365.2425)),
    memory,
    lookBacks: lookBacks.length,
  };
}

/** The weather of a climate: its sites' own, and what is told of the whole region. */
function weatherOf(
  { weather = [] }: UsageSnapshot,
  places: readonly MachineForUsage[],
  groupOf: Int32Array,
  group: number,
): WeatherSeries | null {
  if (weather.length === 0) return null;
  const sites = new Set(places.filter((_, s) => groupOf[s] === group).map((place) => place.siteId));
  return WeatherSeries.of(weather.filter(({ siteId }) => siteId === null || sites.has(siteId)));
}

/** What the model would have said at some past readings of machine m, next to what came. */
function lookBack(
  increments: Increments,
  seasonDays: Float64Array,
  m: number,
  track: MachineTrack,
  clock: SeasonClock,
  climate: number,
  originDay: number,
): LookBack[] {
  const coming = (clock.at(originDay + 1 + DAYS_AHEAD) - clock.at(originDay + 1)) / DAYS_AHEAD;
  const first = increments.first[m]!;
  const end = increments.first[m + 1]!;
  const found: LookBack[] = [];
  let looks = m;
  const stride = Math.max(1, Math.floor((end - first) / LOOKS_PER_MACHINE));
  for (let i = first; i < end; i++) {
    // at least one increment known before looking ahead
    if (i > first && (i - first) % stride === Math.floor(stride / 2)) {
      const origin = increments.from[i]!;
      // a forecast is asked for some time after the machine's last reading, when its neighbours have told more
      const asked = origin + ((looks++ % 3) / 3) * (increments.to[i]! - origin);
      const pace = track.paceAt(asked);
      let j = i;
      let hours = increments.hours[i]!;
      for (const horizon of HORIZONS) {
        while (j + 1 < end && increments.to[j]! - asked < horizon * 0.8) hours += increments.hours[++j]!;
        const days = increments.to[j]! - origin;
        const ahead = increments.to[j]! - asked;
        if (ahead < horizon * 0.6 || ahead > horizon * 1.6) continue;
        const span = clock.at(asked) - clock.at(origin) + clock.foreseen(asked, increments.to[j]!);
        const expected = pace.hoursPerSeasonDay * span;
        const weight = seasonLikeness(span / days, coming);
        // the season of a span gone by has been seen: no doubt is left about it
        const period = { climate, middle: (asked + increments.to[j]!) / 2, days: ahead };
        found.push({ expected, hours, evidenceHours: pace.evidenceHours, weight, ...period });
      }
    }
    track.add(increments, seasonDays, i);
  }
  return found;
}

/** How alike two spans' seasons are: exp(−(ln a/b)²/(2·0.25²)), rates below a tenth of the year's mean taken as equal. */
function seasonLikeness(a: number, b: number): number {
  return Math.exp(-8 * Math.log(Math.max(0.1, a) / Math.max(0.1, b)) ** 2);
}

function indicesWhere(groupOf: Int32Array, group: number | null): number[] {
  const found: number[] = [];
  groupOf.forEach((each, m) => {
    if (group === null || each === group) found.push(m);
  });
  return found;
}

/** At most `count` entries, evenly spread. */
function spread(all: readonly number[], count: number): number[] {
  if (all.length <= count) return [...all];
  return Array.from({ length: count }, (_, k) => all[Math.floor((k * all.length) / count)]!);
}
