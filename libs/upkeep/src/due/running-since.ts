import { dayNumber, type MachineForecast } from '@deckround/usage';
import type { Completion, PlannedWork, ServiceItem } from '../snapshot.js';

/** From where an item's running interval is counted. */
export interface RunningSince {
  readonly day: number;
  readonly lifetimeHours: number;
  /** The completion counted from; null when one had to be assumed. */
  readonly completion: Completion | null;
  /** The completion is still to come: the work stands in a visit of that day. */
  readonly isPlanned?: true;
  /** In words, for the explanation. */
  readonly assumption: 'in-service' | 'first-reading' | 'share-used' | null;
}

/** Whether a record about `code` (and slot) concerns the item; a record or item without slot speaks for all slots. */
export function concerns(item: ServiceItem, record: { code: string; slot: string | null }, resets: boolean): boolean {
  if (record.slot !== null && item.slot !== null && record.slot !== item.slot) return false;
  return record.code === item.code || (resets && item.resetBy.includes(record.code));
}

/**
 * The newest completion of the item or of one that resets it, on the lifetime scale; completions dated after the
 * forecast origin are left out. What stands in a visit to come counts as done there, at the median of the hours by then.
 * Without any: the assumed share of the interval, else new (0 h at the in-service date), else the first reading.
 */
export function runningSince(
  item: ServiceItem,
  completions: readonly Completion[],
  planned: readonly PlannedWork[],
  forecast: MachineForecast,
  interval: { readonly hours: number | null; readonly days: number | null },
): RunningSince {
  const ahead = planned.filter((each) => concerns(item, each, true)).sort((a, b) => (a.on < b.on ? 1 : -1))[0];
  if (ahead !== undefined) {
    const { on, ...work } = ahead;
    const day = dayNumber(on);
    return {
      ...{ day, lifetimeHours: forecast.lifetimeHoursAt(day), assumption: null, isPlanned: true },
      completion: { ...work, doneOn: on, meterHours: null, outcome: 'done' },
    };
  }
  let newest: Completion | null = null;
  for (const each of completions) {
    if (!concerns(item, each, true) || dayNumber(each.doneOn) > forecast.originDay) continue;
    if (newest === null || each.doneOn > newest.doneOn) newest = each;
    else if (each.doneOn === newest.doneOn && (each.meterHours ?? -1) > (newest.meterHours ?? -1)) newest = each;
  }
  if (newest !== null) {
    const day = dayNumber(newest.doneOn);
    return { day, lifetimeHours: lifetimeAt(newest, day, forecast), completion: newest, assumption: null };
  }
  const now = forecast.lifetimeHoursNow;
  if (item.assumedShare != null) {
    return {
      day: Math.round(forecast.originDay - item.assumedShare * (interval.days ?? 365)),
      lifetimeHours: Math.max(0, now - item.assumedShare * (interval.hours ?? 0)),
      completion: null,
      assumption: 'share-used',
    };
  }
  const { machine, line } = forecast.usage;
  const first = line[0];
  if (machine.inServiceOn !== null || first === undefined) {
    const day = machine.inServiceOn === null ? forecast.originDay : dayNumber(machine.inServiceOn);
    return { day: Math.min(day, forecast.originDay), lifetimeHours: 0, completion: null, assumption: 'in-service' };
  }
  const day = Math.floor(first.moment);
  return { day, lifetimeHours: first.lifetimeHours, completion: null, assumption: 'first-reading' };
}

/** Lifetime hours at a completion: its meter hours on the meter of the nearest reading, when that is near the estimate. */
function lifetimeAt(completion: Completion, day: number, forecast: MachineForecast): number {
  const estimate = forecast.lifetimeHoursAt(day);
  const { line } = forecast.usage;
  if (completion.meterHours === null || line.length === 0) return completion.meterHours ?? estimate;
  let low = 0;
  let high = line.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (line[middle]!.moment < day) low = middle + 1;
    else high = middle;
  }
  let best = estimate;
  let miss = 100 + 0.1 * estimate;
  for (const near of [line[low - 1], line[low]]) {
    if (near === undefined) continue;
    const stated = completion.meterHours + near.lifetimeHours - near.meterHours;
    if (Math.abs(stated - estimate) < miss) {
      best = stated;
      miss = Math.abs(stated - estimate);
    }
  }
  return Math.max(0, best);
}
