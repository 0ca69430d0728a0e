import { fitWeibull, type WeibullFit } from './fit-weibull.js';
import { type CannotTell, FAILED, type LifeSample, sampleOfColumns } from './life.js';

export interface ThresholdWeibullFit {
  readonly ok: true;
  /** Hours before which no part fails. */
  readonly threshold: number;
  /** Of what comes after the threshold. */
  readonly after: WeibullFit;
  readonly logLikelihood: number;
}

/**
 * Weibull life that starts at a threshold, 0 ≤ threshold < first failure, by maximising the likelihood over a grid of
 * thresholds that is refined three times. The likelihood grows without bound as the threshold nears the first failure
 * while the shape falls below 1, so only fits with a shape of at least 1 are looked at.
 *
 * @source own choice of search; the unbounded likelihood is well known (from memory)
 */
export function fitThresholdWeibull(sample: LifeSample): ThresholdWeibullFit | CannotTell {
  const plain = fitWeibull(sample);
  if (!plain.ok) return plain;
  let first = Number.POSITIVE_INFINITY;
  for (let i = 0; i < sample.age.length; i++) if (sample.kind[i] !== 0) first = Math.min(first, sample.age[i]!);
  let best: ThresholdWeibullFit = { ok: true, threshold: 0, after: plain, logLikelihood: plain.logLikelihood };
  let [low, high] = [0, first * 0.999];
  for (let round = 0; round < 4; round++) {
    const step = (high - low) / 20;
    for (let i = 0; i <= 20; i++) {
      const threshold = low + i * step;
      const after = fitWeibull(shifted(sample, threshold));
      if (after.ok && after.shape >= 1 && after.logLikelihood > best.logLikelihood)
        best = { ok: true, threshold, after, logLikelihood: after.logLikelihood };
    }
    [low, high] = [Math.max(0, best.threshold - step), Math.min(first * 0.999, best.threshold + step)];
  }
  return best;
}

function shifted(sample: LifeSample, threshold: number): LifeSample {
  const rows = Array.from(sample.age, (_, i) => i).filter((i) => sample.failedBy[i]! > threshold);
  const less = (values: Float64Array) => Float64Array.from(rows, (i) => Math.max(0, values[i]! - threshold));
  return sampleOfColumns({
    age: less(sample.age),
    entry: less(sample.entry),
    failedBy: less(sample.failedBy),
    kind: Uint8Array.from(rows, (i) => (sample.kind[i] === FAILED ? FAILED : sample.kind[i]!)),
    count: Float64Array.from(rows, (i) => sample.count[i]!),
  });
}
