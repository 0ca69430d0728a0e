/** Seeded 32-bit generator (mulberry32, public domain), so that the invented shop is the same everywhere. */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  whole(low: number, high: number): number {
    return Math.floor(this.between(low, high + 1));
  }

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  pick<T>(choices: readonly T[]): T {
    return choices[Math.floor(this.next() * choices.length)]!;
  }

  /** Standard normal, by the sum of twelve uniforms (close enough for invented data). */
  normal(): number {
    let sum = -6;
    for (let i = 0; i < 12; i += 1) sum += this.next();
    return sum;
  }
}
