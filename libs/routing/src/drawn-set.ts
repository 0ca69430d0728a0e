import type { Random } from './random.js';

/** Numbers 0 … size − 1 that are in or out, each change and each draw in constant time. */
export class DrawnSet {
  count = 0;
  readonly members: Int32Array;
  /** Where each stands among the members; −1 = it is out. */
  private readonly at: Int32Array;

  constructor(size: number) {
    this.members = new Int32Array(size);
    this.at = new Int32Array(size).fill(-1);
  }

  clear(): void {
    for (let k = 0; k < this.count; k++) this.at[this.members[k]!] = -1;
    this.count = 0;
  }

  set(x: number, isIn: boolean): void {
    const { members, at } = this;
    const k = at[x]!;
    if (k >= 0 === isIn) return;
    if (isIn) {
      at[x] = this.count;
      members[this.count++] = x;
    } else {
      const last = members[--this.count]!;
      members[k] = last;
      at[last] = k;
      at[x] = -1;
    }
  }

  /** A member, all alike; the set must not be empty. */
  draw(random: Random): number {
    return this.members[random.below(this.count)]!;
  }
}
