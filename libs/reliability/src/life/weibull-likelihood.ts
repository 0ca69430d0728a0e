import { FAILED, type LifeSample } from './life.js';

/**
 * All that the Weibull likelihood of exact, right-censored and left-truncated lives needs:
 *   ℓ(β, η) = r ln β − r β ln η + (β − 1) Σ_f ln t − Σ w (x/η)^β,
 * where every age counts with w = +1 and every entry age with w = −1. Equal ages are counted once, with their number.
 * Ages are divided by the greatest, so that no power overflows.
 */
export class WeibullLikelihood {
  readonly failures: number;
  /** Σ ln(t/unit) over failures. */
  readonly sumLog: number;
  /** Largest age; ages are measured in it. */
  readonly unit: number;
  readonly #logs: Float64Array;
  readonly #weights: Float64Array;
  readonly #logUnit: number;

  constructor(sample: LifeSample) {
    const { age, entry, kind, count } = sample;
    let unit = 0;
    let entries = 0;
    let equalCounts = true;
    for (let i = 0; i < age.length; i++) {
      if (age[i]! > unit) unit = age[i]!;
      if (entry[i]! > 0) entries += 1;
      if (count[i] !== 1) equalCounts = false;
    }
    this.unit = unit;
    this.#logUnit = Math.log(unit);
    const [logs, weights] = equalCounts
      ? mergeEqual(age, entry, entries, this.#logUnit)
      : asTheyAre(age, entry, count, entries, this.#logUnit);
    this.#logs = logs;
    this.#weights = weights;
    let failures = 0;
    let sumLog = 0;
    for (let i = 0; i < age.length; i++) {
      if (kind[i] !== FAILED) continue;
      failures += count[i]!;
      sumLog += count[i]! * (Math.log(age[i]!) - this.#logUnit);
    }
    this.failures = failures;
    this.sumLog = sumLog;
  }

  /** Σ w (x/unit)^β. */
  power(shape: number): number {
    const logs = this.#logs;
    const weights = this.#weights;
    let sum = 0;
    for (let i = 0; i < logs.length; i++) sum += weights[i]! * Math.exp(shape * logs[i]!);
    return sum;
  }

  /** The sums Σ w p, Σ w p z, Σ w p z² with z = ln(x/at), p = (x/at)^β; `at` in the sample's own unit. */
  moments(shape: number, at: number): [number, number, number] {
    const shift = Math.log(at) - this.#logUnit;
    const logs = this.#logs;
    const weights = this.#weights;
    let [s0, s1, s2] = [0, 0, 0];
    for (let i = 0; i < logs.length; i++) {
      const z = logs[i]! - shift;
      const p = weights[i]! * Math.exp(shape * z);
      s0 += p;
      s1 += p * z;
      s2 += p * z * z;
    }
    return [s0, s1, s2];
  }

  /** Σ ln(t/at) over failures. */
  sumLogAt(at: number): number {
    return this.sumLog - this.failures * (Math.log(at) - this.#logUnit);
  }

  /** Scale that is best for a given shape: η = (Σ w x^β / r)^(1/β). */
  bestScale(shape: number): number {
    return this.unit * (this.power(shape) / this.failures) ** (1 / shape);
  }

  /** Log-likelihood, density of t itself (not of ln t). */
  at(shape: number, scale: number): number {
    const [power] = this.moments(shape, scale);
    const r = this.failures;
    return r * Math.log(shape) + shape * this.sumLogAt(scale) - (this.sumLog + r * this.#logUnit) - power;
  }

  /** Log-likelihood at a shape and its best scale. */
  profileShape(shape: number): number {
    const r = this.failures;
    return (
      r * Math.log(shape) +
      shape * this.sumLog -
      (this.sumLog + r * this.#logUnit) -
      r * Math.log(this.power(shape) / r) -
      r
    );
  }
}

/** Sorted ages with run lengths: many lives end at the same whole hour, and each is then one power instead of many. */
function mergeEqual(
  age: Float64Array,
  entry: Float64Array,
  entries: number,
  logUnit: number,
): [Float64Array, Float64Array] {
  const ages = Float64Array.from(age).sort();
  const starts = entry.filter((each) => each > 0).sort();
  const logs = new Float64Array(ages.length + entries);
  const weights = new Float64Array(ages.length + entries);
  let n = 0;
  for (const [values, sign] of [
    [ages, 1],
    [starts, -1],
  ] as const) {
    for (let i = 0; i < values.length; ) {
      let j = i + 1;
      while (j < values.length && values[j] === values[i]) j++;
      logs[n] = Math.log(values[i]!) - logUnit;
      weights[n] = sign * (j - i);
      n += 1;
      i = j;
    }
  }
  return [logs.slice(0, n), weights.slice(0, n)];
}

function asTheyAre(
  age: Float64Array,
  entry: Float64Array,
  count: Float64Array,
  entries: number,
  logUnit: number,
): [Float64Array, Float64Array] {
  const logs = new Float64Array(age.length + entries);
  const weights = new Float64Array(age.length + entries);
  let n = 0;
  for (let i = 0; i < age.length; i++) {
    logs[n] = Math.log(age[i]!) - logUnit;
    weights[n++] = count[i]!;
    if (entry[i]! > 0) {
      logs[n] = Math.log(entry[i]!) - logUnit;
      weights[n++] = -count[i]!;
    }
  }
  return [logs, weights];
}
