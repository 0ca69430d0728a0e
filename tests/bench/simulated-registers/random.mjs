/** Seeded draws. Source: Tommy Ettinger's mulberry32, Box & Muller, Marsaglia & Tsang 2000; from memory. */
export class Draws {
  #state;

  constructor(seed) {
    this.#state = seed >>> 0;
  }

  /** Uniform in [0, 1). */
  uniform() {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(this.#state ^ (this.#state >>> 15), this.#state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  between(low, high) {
    return low + (high - low) * this.uniform();
  }

  whole(low, high) {
    return Math.floor(this.between(low, high + 1));
  }

  chance(p) {
    return this.uniform() < p;
  }

  oneOf(values) {
    return values[this.whole(0, values.length - 1)];
  }

  normal() {
    return Math.sqrt(-2 * Math.log(1 - this.uniform())) * Math.cos(2 * Math.PI * this.uniform());
  }

  /** Median 1. */
  logNormal(deviation) {
    return Math.exp(deviation * this.normal());
  }

  /** Mean 1. */
  gamma(shape) {
    if (shape < 1) return (this.gamma(shape + 1) * (shape + 1) * this.uniform() ** (1 / shape)) / shape;
    const d = shape - 1 / 3;
    for (;;) {
      const z = this.normal();
      const v = (1 + z / Math.sqrt(9 * d)) ** 3;
      if (v > 0 && Math.log(1 - this.uniform()) < (z * z) / 2 + d - d * v + d * Math.log(v)) return (d * v) / shape;
    }
  }
}
