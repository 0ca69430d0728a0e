import { chiSquareCdf } from '../numeric/gamma.js';
import { invert } from '../numeric/linear.js';
import { BETWEEN, type CannotTell, cannotTell, FAILED, type LifeSample } from './life.js';

export interface LogRank {
  readonly ok: true;
  readonly groups: readonly { readonly lives: number; readonly failures: number; readonly expected: number }[];
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly p: number;
}

/**
 * Log-rank test that groups fail alike, with left truncation (at risk: entry < t ≤ age), failures expected at each age
 * in proportion to those at risk, hypergeometric variance.
 *
 * @source Mantel 1966, from memory; checked against R's survdiff and coxph score test in tests/published
 */
export function logRank(samples: readonly LifeSample[]): LogRank | CannotTell {
  const k = samples.length;
  if (samples.filter((each) => each.lives > 0).length < 2)
    return cannotTell('one-group', 'There are lives of one group only: there is nothing to compare.');
  const events = samples.map(eventsOf);
  const ages = [...new Set(events.flatMap((each) => each.failedAt))].sort((a, b) => a - b);
  if (ages.length === 0)
    return cannotTell('no-failure', 'None of the groups has a failure: the data cannot tell them apart.');
  const observed = samples.map((each) => each.failures);
  const expected = new Array<number>(k).fill(0);
  const variance = Array.from({ length: k }, () => new Array<number>(k).fill(0));
  const counters = events.map((each) => riskCounter(each));
  for (const age of ages) {
    const at = counters.map((count) => count(age));
    const n = at.reduce((sum, each) => sum + each.atRisk, 0);
    const d = at.reduce((sum, each) => sum + each.failures, 0);
    for (let i = 0; i < k; i++) {
      const share = at[i]!.atRisk / n;
      expected[i]! += d * share;
      if (n <= 1) continue;
      const spread = (d * (n - d)) / (n - 1);
      for (let j = 0; j < k; j++) variance[i]![j]! += spread * share * ((i === j ? 1 : 0) - at[j]!.atRisk / n);
    }
  }
  const inverse = invert(variance.slice(0, k - 1).map((row) => row.slice(0, k - 1)));
  if (!inverse)
    return cannotTell('no-common-time', 'The groups were never at risk at the same age: the data cannot compare them.');
  const difference = observed.slice(0, k - 1).map((each, i) => each - expected[i]!);
  const chiSquare = difference.reduce(
    (sum, a, i) => sum + a * difference.reduce((row, b, j) => row + inverse[i]![j]! * b, 0),
    0,
  );
  return {
    ok: true,
    groups: samples.map((each, i) => ({ lives: each.lives, failures: observed[i]!, expected: expected[i]! })),
    chiSquare,
    degreesOfFreedom: k - 1,
    p: 1 - chiSquareCdf(chiSquare, k - 1),
  };
}

interface Events {
  readonly entries: readonly [age: number, count: number][];
  readonly ends: readonly [age: number, count: number, failed: boolean][];
  readonly failedAt: readonly number[];
}

function eventsOf(sample: LifeSample): Events {
  const rows = Array.from(sample.age, (_, i) => i);
  const endOf = (i: number) =>
    sample.kind[i] === BETWEEN ? (sample.age[i]! + sample.failedBy[i]!) / 2 : sample.age[i]!;
  const failed = (i: number) => sample.kind[i] === FAILED || sample.kind[i] === BETWEEN;
  return {
    entries: rows.map((i): [number, number] => [sample.entry[i]!, sample.count[i]!]).sort((a, b) => a[0] - b[0]),
    ends: rows
      .map((i): [number, number, boolean] => [endOf(i), sample.count[i]!, failed(i)])
      .sort((a, b) => a[0] - b[0]),
    failedAt: rows.filter(failed).map(endOf),
  };
}

/** Lives at risk and failing at each of a rising series of ages. */
function riskCounter({ entries, ends }: Events) {
  let [entered, gone, nextEntry, nextEnd] = [0, 0, 0, 0];
  return (age: number) => {
    for (; nextEntry < entries.length && entries[nextEntry]![0] < age; nextEntry++) entered += entries[nextEntry]![1];
    for (; nextEnd < ends.length && ends[nextEnd]![0] < age; nextEnd++) gone += ends[nextEnd]![1];
    let failures = 0;
    for (let i = nextEnd; i < ends.length && ends[i]![0] === age; i++) if (ends[i]![2]) failures += ends[i]![1];
    return { atRisk: entered - gone, failures };
  };
}
