import type { Random } from './random.js';
import type { Survey } from './survey.js';

/** Stops to be offered to the routes again, each once. */
export class Offers {
  readonly stops: Int32Array;
  count = 0;
  private readonly mark: Int32Array;
  private round = 0;

  constructor(stops: number) {
    this.stops = new Int32Array(stops);
    this.mark = new Int32Array(stops).fill(-1);
  }

  clear(): void {
    this.round++;
    this.count = 0;
  }

  has(stop: number): boolean {
    return this.mark[stop] === this.round;
  }

  add(stop: number): void {
    if (this.has(stop)) return;
    this.mark[stop] = this.round;
    this.stops[this.count++] = stop;
  }

  /** Adds drawn stops that want a visit, from none to `most`. */
  addUnserved(survey: Survey, random: Random, most: number): void {
    if (survey.unserved.count === 0) return;
    for (let k = random.below(most + 1); k > 0; k--) this.add(survey.unserved.draw(random));
  }
}
