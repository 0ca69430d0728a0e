import type { DueMark } from '../due/due-mark.js';
import { chancePassed, SCENARIOS, type UsageScenarios } from './usage-scenarios.js';

/** Days of contract penalty counted at most, so that a forgotten item stays a finite number. Own choice. */
const PENALTY_DAYS = 60;

export interface CostCurve {
  readonly probabilityOverdue: number[];
  readonly timingCostCents: number[];
  readonly deferralCents: number;
}

/**
 * Expected cost of doing an item on each of the first half of the scenarios' days, and of leaving it to the best day of
 * the second half, with whichever limit is further used up deciding:
 *   r = max(1 + (H − H*)/hours scale, 1 + (day − day*)/days scale),  C[d] = round(E h(r)) + penalty · E(days past tolerance).
 *
 * @param cents h(r) in cents
 */
export function costCurve(
  mark: DueMark,
  scenarios: UsageScenarios,
  cents: (r: number) => number,
  penaltyCentsPerDay: number,
): CostCurve {
  const { days, firstDay } = scenarios;
  const asked = days >> 1;
  const probabilityOverdue: number[] = [];
  const expected: number[] = [];
  let daysOverdue = penaltyCentsPerDay > 0 ? daysAlreadyOverdue(mark, scenarios) : 0;
  for (let d = 0; d < days; d++) {
    const byDay = mark.day === null ? Number.NEGATIVE_INFINITY : 1 + (firstDay + d - mark.day) / mark.daysScale;
    let sum = 0;
    if (mark.hours === null) sum = SCENARIOS * (mark.day === null ? 0 : cents(byDay));
    else {
      for (let j = 0; j < SCENARIOS; j++) {
        const byHours = 1 + (scenarios.hours[j * days + d]! - mark.hours) / mark.hoursScale;
        sum += cents(Math.max(byHours, byDay));
      }
    }
    const overdue = chanceOverdue(mark, scenarios, d);
    daysOverdue = Math.min(PENALTY_DAYS, daysOverdue + overdue);
    expected.push(Math.round(sum / SCENARIOS + penaltyCentsPerDay * daysOverdue));
    if (d < asked) probabilityOverdue.push(overdue);
  }
  return {
    probabilityOverdue,
    timingCostCents: expected.slice(0, asked),
    deferralCents: Math.min(...expected.slice(asked)),
  };
}

function chanceOverdue(mark: DueMark, scenarios: UsageScenarios, d: number): number {
  if (mark.day !== null && scenarios.firstDay + d > mark.day + mark.toleranceDays) return 1;
  return mark.hours === null ? 0 : chancePassed(scenarios, mark.hours + mark.toleranceHours, d);
}

/** Days past tolerance before the first day asked about; a mark in hours already passed counts as a week. */
function daysAlreadyOverdue(mark: DueMark, scenarios: UsageScenarios): number {
  const byDay = mark.day === null ? 0 : scenarios.firstDay - 1 - mark.day - mark.toleranceDays;
  const byHours =
    mark.hours === null ? 0 : 7 * Math.floor(chancePassed(scenarios, mark.hours + mark.toleranceHours, 0));
  return Math.max(0, byDay, byHours);
}
