import {
  dateOfDay,
  dayNumber,
  fitUsage,
  forecastUsage,
  type MachineForecast,
  type UsageForecast,
} from '@deckround/usage';
import { costCurve } from './cost/cost-curve.js';
import { shiftCents, stopgapCents } from './cost/timing-cost.js';
import { type UsageScenarios, usageScenarios } from './cost/usage-scenarios.js';
import { dueDay } from './due/due-dates.js';
import { type DueMark, dueMarkOf } from './due/due-mark.js';
import { intervalOf } from './due/interval-limits.js';
import { type RunningSince, runningSince } from './due/running-since.js';
import { dueSentence, spokenDay } from './due/sentence.js';
import type { DueForecast, DueReason, ServiceItem, StopgapForUpkeep, UpkeepSnapshot } from './snapshot.js';

/** Due forecasts of every service item and stopgap of the snapshot, in their order; pure and without sampling. */
export function forecastDue(snapshot: UpkeepSnapshot): DueForecast[] {
  return forecastDueWith(forecastUsage(fitUsage(snapshot.usage)), snapshot);
}

/**
 * The same on a usage forecast already at hand.
 * Items and stopgaps of machines that the usage snapshot does not hold are left out.
 */
export function forecastDueWith(usage: UsageForecast, snapshot: Omit<UpkeepSnapshot, 'usage'>): DueForecast[] {
  const completions = byMachine(snapshot.completions);
  const planned = byMachine(snapshot.planned ?? []);
  const findings = byMachine(snapshot.findings);
  const firstDay = dayNumber(snapshot.costFrom);
  const courses = new Map<string, UsageScenarios>();
  const coursesOf = (forecast: MachineForecast) => {
    let found = courses.get(forecast.machineId);
    if (found === undefined) {
      found = usageScenarios(forecast, firstDay, 2 * snapshot.costDays);
      courses.set(forecast.machineId, found);
    }
    return found;
  };
  // hundreds of thousands of items share few wordings: one text each
  const texts = new Map<string, string>();
  const shared = (text: string) => {
    const known = texts.get(text) ?? text;
    texts.set(known, known);
    return known;
  };
  const due: DueForecast[] = [];
  for (const item of snapshot.items) {
    const forecast = usage.machines.get(item.machineId);
    if (forecast === undefined) continue;
    const interval = intervalOf(item);
    const { machineId } = item;
    const since = runningSince(
      item,
      completions.get(machineId) ?? [],
      planned.get(machineId) ?? [],
      forecast,
      interval,
    );
    const mark = dueMarkOf(item, interval, since, findings.get(item.machineId) ?? [], forecast);
    const { economics } = item;
    due.push({
      itemId: item.id,
      machineId: item.machineId,
      code: item.code,
      slot: item.slot,
      kind: 'service',
      title: item.title,
      ...datesAndReason(
        mark,
        forecast,
        since,
        sinceWords(since, forecast),
        shared(ruleWords(item)),
        item.title,
        interval,
        shared(hazardWords(item)),
      ),
      ...costCurve(mark, coursesOf(forecast), (r) => shiftCents(r, economics), economics.latePenaltyCentsPerDay),
    });
  }
  for (const stopgap of snapshot.stopgaps) {
    const forecast = usage.machines.get(stopgap.machineId);
    if (forecast === undefined) continue;
    const since = limitedSince(stopgap, forecast);
    const mark = stopgapMark(stopgap, since);
    const what = stopgap.renewedOn ? 'temporary repair renewed' : 'temporary repair of';
    const words = `${what} ${spokenDay(since.day, forecast.originDay)} at ${since.lifetimeHours.toFixed(1)} h`;
    const rule = stopgap.limitHours === null ? '' : `good for ${stopgap.limitHours} h`;
    due.push({
      itemId: stopgap.id,
      machineId: stopgap.machineId,
      code: stopgap.code,
      slot: null,
      kind: 'stopgap',
      title: stopgap.title,
      ...datesAndReason(
        mark,
        forecast,
        since,
        words,
        rule,
        stopgap.title,
        { hours: stopgap.limitHours, days: null },
        null,
      ),
      ...costCurve(mark, coursesOf(forecast), (r) => stopgapCents(r, stopgap.failureCents), 0),
    });
  }
  return due;
}

function datesAndReason(
  mark: DueMark,
  forecast: MachineForecast,
  since: RunningSince,
  sinceText: string,
  rule: string,
  title: string,
  interval: { hours: number | null; days: number | null },
  hazard: string | null,
): Pick<DueForecast, 'p10' | 'p50' | 'p90' | 'why'> {
  // a date reached with chance 0.1 is the early end
  const days = [dueDay(mark, forecast, 0.1), dueDay(mark, forecast, 0.5), dueDay(mark, forecast, 0.9)] as const;
  const p50 = days[1];
  const decidedByHours = mark.hours !== null && (mark.day === null || p50 === null || p50 < mark.day);
  const date = (day: number | null) => (day === null ? null : dateOfDay(day));
  const last = forecast.usage.line.at(-1);
  const why: DueReason = {
    rule,
    lastCompletion:
      since.completion === null
        ? null
        : { on: since.completion.doneOn, lifetimeHours: tenths(since.lifetimeHours), code: since.completion.code },
    ...(since.isPlanned && { isPlanned: true }),
    dueAtHours: mark.hours === null ? null : tenths(mark.hours),
    dueOnByCalendar: date(mark.day),
    lifetimeHoursNow: tenths(forecast.lifetimeHoursNow),
    lastReading: last === undefined ? null : { at: last.readAt, hours: last.meterHours },
    hoursPerWeekNow: tenths(forecast.hoursPerWeek),
    decidedBy: decidedByHours
      ? mark.hoursBy
      : mark.day !== null
        ? mark.dayBy
        : interval.hours === null
          ? 'days'
          : 'hours',
    hazard,
    sentence: dueSentence({
      title,
      readerDay: forecast.originDay,
      since: sinceText,
      rule,
      dueAtHours: mark.hours,
      dueOnDay: mark.day,
      decidedByHours,
      hoursPerWeek: forecast.hoursPerWeek,
      days,
    }),
  };
  return { p10: date(days[0]), p50: date(p50), p90: date(days[2]), why };
}

function hazardWords({ economics, hazardBasis }: ServiceItem): string {
  const shape = `Failure hazard with shape ${+economics.hazardShape.toFixed(2)}`;
  return `${shape}: ${hazardBasis ?? 'as set in the catalogue; the shop’s own lives have not been asked or say too little.'}`;
}

function sinceWords(since: RunningSince, forecast: MachineForecast): string {
  const hours = `${since.lifetimeHours.toFixed(1)} h`;
  const day = spokenDay(since.day, forecast.originDay);
  if (since.isPlanned) return `to be done ${day} at about ${hours}`;
  if (since.completion !== null) return `last done ${day} at ${hours}`;
  if (since.assumption === 'share-used') return 'never recorded as done, part of its interval is assumed to be used up';
  if (since.assumption === 'first-reading')
    return `never recorded as done, counted from the first reading ${day} at ${hours}`;
  return `never recorded as done, counted from new (${day})`;
}

function ruleWords(item: ServiceItem): string {
  const { hours, days } = intervalOf(item);
  const parts: string[] = [];
  if (hours !== null) parts.push(`${+hours.toFixed(1)} h`);
  if (days !== null) parts.push(`${Math.round(days)} days`);
  const season =
    item.rule.seasonEvent === 'before-first-cut'
      ? 'before the first cut'
      : item.rule.seasonEvent === 'before-storage'
        ? 'before storage'
        : '';
  const every = parts.length > 0 ? `every ${parts.join(' or ')}` : '';
  const first = item.rule.firstHours === null ? '' : `first at ${item.rule.firstHours} h`;
  return [every, first, season].filter((part) => part !== '').join(', ');
}

/** Its hours count from here. */
function limitedSince({ madeOn, renewedOn }: StopgapForUpkeep, forecast: MachineForecast): RunningSince {
  const day = dayNumber(renewedOn ?? madeOn);
  return { day, lifetimeHours: forecast.lifetimeHoursAt(day), completion: null, assumption: null };
}

function stopgapMark(stopgap: StopgapForUpkeep, since: RunningSince): DueMark {
  const day = stopgap.limitOn === null ? null : dayNumber(stopgap.limitOn);
  return {
    hours: stopgap.limitHours === null ? null : since.lifetimeHours + stopgap.limitHours,
    hoursBy: 'stopgap',
    day,
    dayBy: 'stopgap',
    hoursScale: Math.max(1, stopgap.limitHours ?? 1),
    daysScale: Math.max(7, day === null ? 7 : day - since.day),
    toleranceHours: 0,
    toleranceDays: 0,
  };
}

function byMachine<T extends { machineId: string }>(rows: readonly T[]): Map<string, T[]> {
  const map = new Map<string, T[]>();
  for (const row of rows) {
    const list = map.get(row.machineId);
    if (list) list.push(row);
    else map.set(row.machineId, [row]);
  }
  return map;
}

function tenths(value: number): number {
  return Math.round(value * 10) / 10;
}
