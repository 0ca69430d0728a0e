import { dateOfDay, dayNumber } from './calendar.js';
import { fitUsage } from './model/fit-usage.js';
import { forecastUsage } from './model/forecast-usage.js';
import { workMoment } from './model/increments.js';
import { pinballLoss } from './scores/pinball.js';
import type { UsageSnapshot } from './snapshot.js';

/** How good the forecasts were, for one distance ahead. */
export interface BacktestRow {
  readonly daysAhead: number;
  /** Outcomes judged; 0 leaves the other figures null. */
  readonly judged: number;
  readonly coverage50: number | null;
  readonly coverage80: number | null;
  /** Mean pinball loss over P10, P25, P50, P75, P90; hours. */
  readonly pinballHours: number | null;
  /** Mean of outcome minus P50; hours. */
  readonly biasHours: number | null;
}

export interface BacktestOptions {
  readonly daysAhead?: readonly number[];
  /** Forecast origins, evenly spaced back from `asOf`. */
  readonly origins?: number;
  readonly daysBetweenOrigins?: number;
}

const PROBABILITIES = [0.1, 0.25, 0.5, 0.75, 0.9];
/** A reading so near to the day asked about stands for it, as share of the distance. */
const NEAR = 0.25;

/**
 * Rolling-origin back-test on the readings themselves: at each past origin the model is fitted on what had been read by
 * then and judged against later believed readings, each at its own day. No truth is needed.
 * Readings are believed or not on all readings up to `asOf`; only the forecast is blind to what came later.
 */
export function backtest(snapshot: UsageSnapshot, options: BacktestOptions = {}): BacktestRow[] {
  const { daysAhead = [7, 14, 30, 60], origins = 6, daysBetweenOrigins = 28 } = options;
  const asOf = dayNumber(snapshot.asOf);
  const now = fitUsage(snapshot);
  const sums = daysAhead.map(() => ({ judged: 0, in50: 0, in80: 0, pinball: 0, bias: 0 }));
  for (let o = 1; o <= origins; o++) {
    const origin = asOf - o * daysBetweenOrigins;
    const date = dateOfDay(origin);
    const readings = snapshot.readings.filter((each) => each.readAt.slice(0, 10) <= date);
    if (readings.length === 0) break;
    const meterChanges = snapshot.meterChanges.filter((each) => each.changedAt <= date);
    const then = forecastUsage(fitUsage({ ...snapshot, asOf: date, readings, meterChanges }));
    for (const [id, forecast] of then.machines) {
      const known = forecast.usage.line.at(-1);
      const line = now.machines.get(id)!.line;
      const sameNow = line.find((each) => each.readingId === known?.readingId);
      if (known === undefined || sameNow === undefined) continue;
      daysAhead.forEach((ahead, k) => {
        let outcome: (typeof line)[number] | null = null;
        for (const each of line) {
          const off = Math.abs(each.moment - origin - 1 - ahead);
          if (each.moment < origin + 1 || off > NEAR * ahead) continue;
          if (outcome === null || off < Math.abs(outcome.moment - origin - 1 - ahead)) outcome = each;
        }
        if (outcome === null) return;
        const hours = known.lifetimeHours + outcome.lifetimeHours - sameNow.lifetimeHours;
        const day = Math.ceil(workMoment(outcome.moment)) - 1;
        const q = PROBABILITIES.map((p) => forecast.lifetimeHours(day, p));
        const sum = sums[k]!;
        sum.judged++;
        if (hours >= q[0]! - 0.05 && hours <= q[4]! + 0.05) sum.in80++;
        if (hours >= q[1]! - 0.05 && hours <= q[3]! + 0.05) sum.in50++;
        sum.bias += hours - q[2]!;
        sum.pinball += PROBABILITIES.reduce((total, p, i) => total + pinballLoss(hours, q[i]!, p), 0) / q.length;
      });
    }
  }
  return sums.map((sum, k) => {
    const mean = (value: number) => (sum.judged === 0 ? null : value / sum.judged);
    return {
      daysAhead: daysAhead[k]!,
      judged: sum.judged,
      coverage50: mean(sum.in50),
      coverage80: mean(sum.in80),
      pinballHours: mean(sum.pinball),
      biasHours: mean(sum.bias),
    };
  });
}
