/**
 * Seeded 32-bit generator: a Weyl sequence through a multiply-xor mixer, integers only, so that the same seed
 * gives the same numbers on every machine.
 *
 * @source mixer constants of MurmurHash3's finaliser, from memory
 */
export class Random {
  private state: number;

  constructor(seed: number) {
    this.state = Math.imul(seed | 0, 0x9e3779b1) ^ 0x5bd1e995;
  }

  /** Next unsigned 32-bit integer. */
  next(): number {
    this.state = (this.state + 0x9e3779b9) | 0;
    let z = this.state;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return (z ^ (z >>> 16)) >>> 0;
  }

  /** Integer in 0 … n − 1; n at least 1 and below 2^21. */
  below(n: number): number {
    return Math.floor((this.next() * n) / 4294967296);
  }

  /** True with the given chance, in 1/65536 steps. */
  chance(share: number): boolean {
    return this.next() >>> 16 < share * 65536;
  }

  /** −ln u for u uniform in (0, 1), from a rounded table: logarithms may differ between engine versions. */
  minusLog(): number {
    return MINUS_LOG[this.next() >>> 20]!;
  }
}

const MINUS_LOG = Float64Array.from(
  { length: 4096 },
  (_, k) => Math.round(-Math.log((k + 0.5) / 4096) * 1048576) / 1048576,
);
