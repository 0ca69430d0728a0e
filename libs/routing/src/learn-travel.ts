import geodesic from 'geographiclib-geodesic';
import type { Position, TravelSettings } from './travel.js';

/** A drive that was really made. */
export interface RecordedDrive {
  readonly from: Position;
  readonly to: Position;
  readonly minutes: number;
  /** Road length, metres; null = not known. */
  readonly metres: number | null;
}

export interface LearnedTravel {
  readonly settings: TravelSettings;
  /** Drives that taught something; the others were too short, or had a stop on the way. */
  readonly used: number;
  /** Mean of |told − driven|, minutes, over the drives used. */
  readonly errorBefore: number;
  readonly errorAfter: number;
}

/** Recorded drives that weigh as much as the settings there are. */
const PRIOR_DRIVES = 10;
const TOWN_KM = 10;
/** A drive that took so many times what was expected had a stop on the way; so much less, a wrong clock. */
const ODD = 3;
const SHORTEST_KM = 0.5;

/**
 * Travel settings after recorded drives. Detours: per band exp of the mean of ln(road/direct), the present value counting
 * as ten drives. Speeds: minutes = 60·(town km·a + open km·b) with a, b hours per km, least squares of relative errors
 * (σ_i ∝ expected minutes), drawn to the present values as if by ten drives. Own choice of weights, no source.
 */
export function learnTravel(present: TravelSettings, drives: readonly RecordedDrive[]): LearnedTravel {
  const usable = drives.flatMap((drive) => {
    const direct = directKm(drive);
    const expected = exactMinutes(present, direct, drive.metres);
    const isOdd = drive.minutes > ODD * expected || drive.minutes < expected / ODD;
    return direct < SHORTEST_KM || !(drive.minutes > 0) || isOdd ? [] : [{ ...drive, direct, expected }];
  });
  const detour = (from: number, to: number, now: number) => {
    const ratios = usable.flatMap(({ direct, metres }) =>
      metres !== null && direct > from && direct <= to && metres >= direct * 1000 ? [metres / 1000 / direct] : [],
    );
    const sum = ratios.reduce((total, ratio) => total + Math.log(ratio), PRIOR_DRIVES * Math.log(now));
    return Math.min(3, Math.exp(sum / (PRIOR_DRIVES + ratios.length)));
  };
  const roads: TravelSettings = {
    ...present,
    detourShort: detour(0, 10, present.detourShort),
    detourMedium: detour(10, 50, present.detourMedium),
    detourLong: detour(50, Infinity, present.detourLong),
  };
  const settings = { ...roads, ...speeds(roads, usable) };
  const error = (by: TravelSettings) =>
    usable.reduce((sum, { direct, metres, minutes }) => sum + Math.abs(exactMinutes(by, direct, metres) - minutes), 0) /
    Math.max(1, usable.length);
  return { settings, used: usable.length, errorBefore: error(present), errorAfter: error(settings) };
}

/** Normal equations of the two slownesses, each drawn to its present value. */
function speeds(
  roads: TravelSettings,
  drives: readonly { direct: number; expected: number; minutes: number; metres: number | null }[],
): Pick<TravelSettings, 'townKmh' | 'openKmh'> {
  const [a0, b0] = [1 / roads.townKmh, 1 / roads.openKmh];
  let aa = PRIOR_DRIVES / a0 ** 2;
  let bb = PRIOR_DRIVES / b0 ** 2;
  let ab = 0;
  let ay = aa * a0;
  let by = bb * b0;
  for (const { direct, expected, minutes, metres } of drives) {
    const km = roadKm(roads, direct, metres);
    const town = (60 * Math.min(km, TOWN_KM)) / expected;
    const open = (60 * Math.max(0, km - TOWN_KM)) / expected;
    const y = minutes / expected;
    aa += town * town;
    bb += open * open;
    ab += town * open;
    ay += town * y;
    by += open * y;
  }
  const det = aa * bb - ab * ab;
  const kmh = (slowness: number) => Math.min(130, Math.max(5, 1 / slowness));
  return { townKmh: kmh((ay * bb - by * ab) / det), openKmh: kmh((by * aa - ay * ab) / det) };
}

function exactMinutes(settings: TravelSettings, direct: number, metres: number | null): number {
  const km = roadKm(settings, direct, metres);
  return 60 * (Math.min(km, TOWN_KM) / settings.townKmh + Math.max(0, km - TOWN_KM) / settings.openKmh);
}

function roadKm(settings: TravelSettings, direct: number, metres: number | null): number {
  if (metres !== null) return metres / 1000;
  return direct * (direct <= 10 ? settings.detourShort : direct <= 50 ? settings.detourMedium : settings.detourLong);
}

function directKm({ from, to }: RecordedDrive): number {
  const { WGS84, DISTANCE } = geodesic.Geodesic;
  return (WGS84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude, DISTANCE).s12 ?? 0) / 1000;
}
