import type { Increments } from './increments.js';
import type { SeasonClock } from './season-clock.js';

/** How fast the past is forgotten and how strongly machines follow their site. */
export interface Memory {
  /** Season days after which a reading counts 1/e. */
  readonly days: number;
  /** Hours of a machine's own evidence that weigh as much as its site's. */
  readonly siteHours: number;
}

/** Hours of a site's evidence that weigh as much as its climate group's, and of a group's against "as ever". */
const SITE_HOURS = 80;
const GROUP_HOURS = 400;
const WEEK = 7;

/**
 * This year against other years: hours run over hours expected from long-run levels, recent ones counting most,
 *   a(T) = (Σ w_i y_i + K·a_above(T)) / (Σ w_i ℓ_i e_i + K),   w_i = exp(−season days since i / τ).
 * A rainy week idles a whole site, so machines borrow the factor of their site, and sites that of their climate.
 * Kept at week starts only; a value never uses what was read after its week began.
 */
export class Activity {
  readonly #weeks: number;
  readonly #ofSite: Float64Array;

  constructor(
    increments: Increments,
    seasonDays: Float64Array,
    level: Float64Array,
    readonly siteOf: Int32Array,
    groupOfSite: Int32Array,
    groups: number,
    clocks: readonly SeasonClock[],
    memory: Memory,
    readonly from: number,
    to: number,
  ) {
    const sites = groupOfSite.length;
    this.#weeks = Math.max(1, Math.ceil((to - from) / WEEK) + 2);
    const weeks = this.#weeks;
    const hours = new Float64Array(sites * weeks);
    const expected = new Float64Array(sites * weeks);
    increments.machine.forEach((m, i) => {
      const week = Math.min(weeks - 1, Math.max(0, Math.ceil((increments.to[i]! - from) / WEEK)));
      const at = siteOf[m]! * weeks + week;
      hours[at] = hours[at]! + increments.hours[i]!;
      expected[at] = expected[at]! + level[m]! * seasonDays[i]!;
    });
    this.#ofSite = new Float64Array(sites * weeks).fill(1);
    const siteSums = new Float64Array(2 * sites);
    const groupSums = new Float64Array(2 * groups);
    for (let w = 0; w < weeks; w++) {
      const keep = clocks.map((clock) => {
        const passed = clock.at(from + w * WEEK) - clock.at(from + (w - 1) * WEEK);
        return Math.exp(-Math.max(0, passed) / memory.days);
      });
      for (let g = 0; g < groups; g++) {
        groupSums[2 * g] = groupSums[2 * g]! * keep[g]!;
        groupSums[2 * g + 1] = groupSums[2 * g + 1]! * keep[g]!;
      }
      for (let s = 0; s < sites; s++) {
        const g = groupOfSite[s]!;
        const at = s * weeks + w;
        siteSums[2 * s] = siteSums[2 * s]! * keep[g]! + hours[at]!;
        siteSums[2 * s + 1] = siteSums[2 * s + 1]! * keep[g]! + expected[at]!;
        groupSums[2 * g] = groupSums[2 * g]! + hours[at]!;
        groupSums[2 * g + 1] = groupSums[2 * g + 1]! + expected[at]!;
      }
      for (let s = 0; s < sites; s++) {
        const g = groupOfSite[s]!;
        const group = (groupSums[2 * g]! + GROUP_HOURS) / (groupSums[2 * g + 1]! + GROUP_HOURS);
        this.#ofSite[s * weeks + w] = (siteSums[2 * s]! + SITE_HOURS * group) / (siteSums[2 * s + 1]! + SITE_HOURS);
      }
    }
  }

  /** Factor of a site in the week of a moment. */
  ofSite(site: number, moment: number): number {
    const week = Math.min(this.#weeks - 1, Math.max(0, Math.floor((moment - this.from) / WEEK)));
    return this.#ofSite[site * this.#weeks + week]!;
  }
}
