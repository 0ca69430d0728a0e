import { dayNumber, type MachineForecast } from '@deckround/usage';
import type { DueReason, FindingForUpkeep, ServiceItem } from '../snapshot.js';
import { type Interval, nextFixed } from './interval-limits.js';
import { concerns, type RunningSince } from './running-since.js';
import { nextSeasonEvent } from './season-events.js';

type Decider = DueReason['decidedBy'];

/** The limits of one running interval; whichever is reached first counts. */
export interface DueMark {
  /** Lifetime hours; null without an hour limit. */
  readonly hours: number | null;
  readonly hoursBy: Decider;
  /** Day number; null without a calendar limit. */
  readonly day: number | null;
  readonly dayBy: Decider;
  /** Length of the whole interval: the scale on which early and late are measured. */
  readonly hoursScale: number;
  readonly daysScale: number;
  readonly toleranceHours: number;
  readonly toleranceDays: number;
}

/** Everything that limits the running interval of a service item. */
export function dueMarkOf(
  item: ServiceItem,
  interval: Interval,
  since: RunningSince,
  findings: readonly FindingForUpkeep[],
  forecast: MachineForecast,
): DueMark {
  const { rule } = item;
  const completed = since.completion !== null;
  const fixed = rule.anchor === 'fixed' && since.assumption !== 'share-used';
  let hours =
    interval.hours === null
      ? null
      : fixed
        ? nextFixed(since.lifetimeHours, interval.hours, completed)
        : since.lifetimeHours + interval.hours;
  let hoursBy: Decider = 'hours';
  if (!completed && rule.firstHours !== null && since.lifetimeHours < rule.firstHours) {
    if (hours === null || rule.firstHours < hours) {
      hours = rule.firstHours;
      hoursBy = 'first-hours';
    }
  }
  let day: number | null = null;
  let dayBy: Decider = 'days';
  if (interval.days !== null) {
    const { inServiceOn } = forecast.usage.machine;
    const start = fixed && inServiceOn !== null ? Math.min(dayNumber(inServiceOn), since.day) : since.day;
    day = Math.round(start + (fixed ? nextFixed(since.day - start, interval.days, completed) : interval.days));
  }
  if (rule.seasonEvent !== null) {
    const from = completed ? since.day : Math.max(since.day, forecast.originDay - 30);
    const event = nextSeasonEvent(forecast.usage.clock, rule.seasonEvent, from, completed);
    if (event !== null && (day === null || event < day)) {
      day = event;
      dayBy = 'season';
    }
  }
  for (const finding of findings) {
    const found = dayNumber(finding.foundOn);
    if (!concerns(item, finding, false) || found < since.day || found > forecast.originDay) continue;
    if (completed && found === since.day) continue;
    const hoursThen = forecast.lifetimeHoursAt(found);
    const factor = finding.intervalFactor;
    const nextHours = least(
      hours !== null && factor !== null && hours > hoursThen ? hoursThen + factor * (hours - hoursThen) : null,
      finding.dueWithinHours === null ? null : hoursThen + finding.dueWithinHours,
    );
    if (nextHours !== null && (hours === null || nextHours < hours)) {
      hours = nextHours;
      hoursBy = 'finding';
    }
    const nextDay = least(
      day !== null && factor !== null && day > found ? Math.round(found + factor * (day - found)) : null,
      finding.dueWithinDays === null ? null : found + finding.dueWithinDays,
    );
    if (nextDay !== null && (day === null || nextDay < day)) {
      day = nextDay;
      dayBy = 'finding';
    }
  }
  return {
    hours,
    hoursBy,
    day,
    dayBy,
    hoursScale: Math.max(1, interval.hours ?? rule.firstHours ?? 100),
    daysScale: Math.max(7, interval.days ?? 365),
    toleranceHours: rule.toleranceHours,
    toleranceDays: rule.toleranceDays,
  };
}

function least(a: number | null, b: number | null): number | null {
  return a === null ? b : b === null ? a : Math.min(a, b);
}
