import { dateOfDay, dayNumber } from '../calendar.js';
import type { MachineForUsage, MeterChange, Reading } from '../snapshot.js';
import { chooseReadings, explainMisreading, type Step } from './choose-readings.js';
import { fleetPeakRate, neighbourRates, type PlausibleUse, plausibleUse } from './plausible-use.js';
import { hoursAtFirst, hoursBetween, type PlacedReading, placeReadings } from './told-changes.js';

export type SetAsideCode =
  | 'backwards'
  | 'slipped-decimal'
  | 'swapped-digits'
  | 'impossible-rate'
  | 'duplicate'
  | 'in-future'
  | 'not-a-reading';

/** A reading that is kept but not used, with the reason in words and what was probably meant. */
export interface SetAside {
  readonly readingId: string;
  readonly machineId: string;
  readonly code: SetAsideCode;
  readonly reason: string;
  /** What the meter probably showed, hours; null when nothing can be said. */
  readonly suggestedHours: number | null;
}

/** A believed reading on the machine's lifetime scale. */
export interface LifetimeReading {
  readonly readingId: string;
  readonly readAt: string;
  /** Fractional days since 1970. */
  readonly moment: number;
  /** What the meter showed, hours. */
  readonly meterHours: number;
  /** Hours since new, across meter changes and rollovers; never falls. */
  readonly lifetimeHours: number;
}

export interface CleanedReadings {
  /** Per machine, in time order. */
  readonly believed: ReadonlyMap<string, readonly LifetimeReading[]>;
  readonly setAside: readonly SetAside[];
  /** Changes nobody told of, already counted in the lifetime hours; a person should confirm them. */
  readonly proposedMeterChanges: readonly MeterChange[];
}

/** A machine, as far as its hour meter is concerned. */
export type MeteredMachine = Pick<MachineForUsage, 'id' | 'meterRolloverHours'>;

/**
 * Puts readings on the lifetime scale and sets aside what cannot be true, looking at all readings of a machine at once.
 * Nothing is dropped; the order in which readings arrived does not matter.
 *
 * @param readings      any order, any machines
 * @param meterChanges  told changes, any order
 * @param options.asOf  readings after the end of this local day are set aside as `in-future`; absent = none are
 * @param options.machines  where their meters start again from zero, if told; without it the usual places are tried
 */
export function cleanReadings(
  readings: readonly Reading[],
  meterChanges: readonly MeterChange[],
  options: { readonly asOf?: string; readonly machines?: readonly MeteredMachine[] } = {},
): CleanedReadings {
  const setAside: SetAside[] = [];
  const end = options.asOf === undefined ? Number.POSITIVE_INFINITY : dayNumber(options.asOf) + 1;
  const changesOf = new Map<string, MeterChange[]>();
  for (const change of meterChanges) listOf(changesOf, change.machineId).push(change);
  for (const list of changesOf.values()) list.sort((a, b) => (a.changedAt < b.changedAt ? -1 : 1));
  const readingsOf = new Map<string, Reading[]>();
  for (const reading of readings) listOf(readingsOf, reading.machineId).push(reading);

  const machines = [...readingsOf.keys()].sort();
  const placedOf = new Map<string, PlacedReading[]>();
  const ratesOf = new Map<string, number[]>();
  for (const id of machines) {
    const placed = withoutUnusable(placeReadings(readingsOf.get(id)!, changesOf.get(id) ?? []), end, setAside);
    readingsOf.delete(id);
    placedOf.set(id, placed);
    ratesOf.set(
      id,
      neighbourRates(
        placed.map((each) => each.moment),
        placed.map((each) => each.hours),
      ),
    );
  }
  const rollovers = new Map(options.machines?.map((each) => [each.id, each.meterRolloverHours ?? undefined]));
  const fleetPeak = fleetPeakRate(ratesOf.values());
  const believed = new Map<string, LifetimeReading[]>();
  const proposedMeterChanges: MeterChange[] = [];
  for (const id of machines) {
    const use = plausibleUse(ratesOf.get(id)!, fleetPeak);
    const placed = placedOf.get(id)!;
    const changes = changesOf.get(id) ?? [];
    const story = chooseReadings(placed, changes, use, rollovers.get(id));
    believed.set(id, judge(placed, story, changes, use, setAside, proposedMeterChanges));
    // a million readings need not stand in memory twice
    placedOf.delete(id);
  }
  return { believed, setAside, proposedMeterChanges };
}

function judge(
  placed: readonly PlacedReading[],
  story: readonly Step[],
  changes: readonly MeterChange[],
  use: PlausibleUse,
  setAside: SetAside[],
  proposed: MeterChange[],
): LifetimeReading[] {
  const line: LifetimeReading[] = [];
  let lifetimeHours = 0;
  let next = 0;
  for (let s = 0; s <= story.length; s++) {
    const step = story[s];
    const before = s > 0 ? placed[story[s - 1]!.at] : undefined;
    const after = step && placed[step.at];
    const sameMeter = step === undefined || step.by === 'running' || step.by === 'first';
    for (const end = step?.at ?? placed.length; next < end; next++) {
      setAside.push(verdict(placed[next]!, before, sameMeter ? after : undefined, changes, use));
    }
    if (!step || !after) break;
    next = step.at + 1;
    if (before === undefined) lifetimeHours = hoursAtFirst(after, changes);
    else lifetimeHours += step.grown;
    if (before && (step.by === 'new-meter' || step.by === 'restart')) {
      proposed.push({
        machineId: after.reading.machineId,
        changedAt: dateOfDay(after.moment),
        oldHours: before.hours,
        newHours: step.by === 'new-meter' ? 0 : after.hours,
      });
    }
    line.push({
      readingId: after.reading.id,
      readAt: after.reading.readAt,
      moment: after.moment,
      meterHours: after.hours,
      lifetimeHours,
    });
  }
  return line;
}

function verdict(
  odd: PlacedReading,
  before: PlacedReading | undefined,
  after: PlacedReading | undefined,
  changes: readonly MeterChange[],
  use: PlausibleUse,
): SetAside {
  const { id: readingId, machineId, readAt } = odd.reading;
  const shown = odd.hours.toFixed(1);
  const day = readAt.slice(0, 10);
  const error = explainMisreading(odd, before, after, changes, use);
  if (error !== null) {
    const what = error.code === 'slipped-decimal' ? 'the decimal point has slipped' : 'two digits were exchanged';
    const reason = `${shown} h on ${day} does not fit the readings around it; probably ${what} and ${error.meant.toFixed(1)} h was meant.`;
    return { readingId, machineId, code: error.code, reason, suggestedHours: error.meant };
  }
  const suggestedHours = between(odd, before, after, changes);
  if (before !== undefined && hoursBetween(before, odd, changes) < 0) {
    const reason = `${shown} h on ${day} is less than the ${before.hours.toFixed(1)} h read on ${before.reading.readAt.slice(0, 10)}.`;
    return { readingId, machineId, code: 'backwards', reason, suggestedHours };
  }
  if (after !== undefined && hoursBetween(odd, after, changes) < 0) {
    const reason = `${shown} h on ${day} is more than the ${after.hours.toFixed(1)} h read later, on ${after.reading.readAt.slice(0, 10)}.`;
    return { readingId, machineId, code: 'impossible-rate', reason, suggestedHours };
  }
  const reason = `${shown} h on ${day} would mean more running hours than this machine can have had since the reading before.`;
  return { readingId, machineId, code: 'impossible-rate', reason, suggestedHours };
}

/** Straight line between the believed neighbours, in hours of the meter of the odd reading; null without both. */
function between(
  odd: PlacedReading,
  before: PlacedReading | undefined,
  after: PlacedReading | undefined,
  changes: readonly MeterChange[],
): number | null {
  if (before === undefined || before.meter !== odd.meter) return null;
  if (after === undefined) return before.hours;
  const share = (odd.moment - before.moment) / Math.max(1e-6, after.moment - before.moment);
  return Math.round((before.hours + share * Math.max(0, hoursBetween(before, after, changes))) * 10) / 10;
}

function withoutUnusable(placed: readonly PlacedReading[], end: number, setAside: SetAside[]): PlacedReading[] {
  const usable: PlacedReading[] = [];
  for (const each of placed) {
    const { id: readingId, machineId, readAt, hours } = each.reading;
    const last = usable.at(-1);
    if (!Number.isFinite(hours) || hours < 0 || !Number.isFinite(each.moment)) {
      const reason = 'This is not a number of hours that a meter can show at a time that exists.';
      setAside.push({ readingId, machineId, code: 'not-a-reading', reason, suggestedHours: null });
    } else if (each.moment >= end) {
      const reason = `Dated ${readAt.slice(0, 10)}, which is still to come; the clock of the device may be wrong.`;
      setAside.push({ readingId, machineId, code: 'in-future', reason, suggestedHours: null });
    } else if (last !== undefined && last.moment === each.moment && last.hours === hours) {
      const reason = 'The same hours were already reported for the same minute.';
      setAside.push({ readingId, machineId, code: 'duplicate', reason, suggestedHours: hours });
    } else {
      usable.push(each);
    }
  }
  return usable;
}

function listOf<T>(map: Map<string, T[]>, key: string): T[] {
  const list = map.get(key);
  if (list !== undefined) return list;
  const fresh: T[] = [];
  map.set(key, fresh);
  return fresh;
}
