import type { Activity, Memory } from './activity.js';
import type { Increments } from './increments.js';

/** What is known of a machine's pace at one moment. */
export interface Pace {
  /** Expected hours per season day. */
  readonly hoursPerSeasonDay: number;
  /** Hours of own evidence plus those borrowed; the more, the surer the pace. */
  readonly evidenceHours: number;
}

/**
 * Walks along one machine's increments and tells its pace after each:
 *   pace = ℓ·(Σ w_i y_i + K·a_site) / (Σ w_i ℓ e_i + K),  w_i = exp(−season days since i / τ).
 */
export class MachineTrack {
  #hours = 0;
  #expected = 0;
  /** Hours expected since the machine was last seen running. */
  #missed = 0;

  constructor(
    readonly site: number,
    readonly level: number,
    readonly activity: Activity,
    readonly memory: Memory,
  ) {}

  add(increments: Increments, seasonDays: Float64Array, i: number): void {
    const keep = Math.exp(-seasonDays[i]! / this.memory.days);
    this.#hours = this.#hours * keep + increments.hours[i]!;
    this.#expected = this.#expected * keep + this.level * seasonDays[i]!;
    this.#missed = increments.hours[i]! < 0.2 ? this.#missed + this.level * seasonDays[i]! : 0;
  }

  paceAt(moment: number): Pace {
    const borrowed = this.memory.siteHours;
    const evidenceHours = this.#expected + borrowed;
    const factor = (this.#hours + borrowed * this.activity.ofSite(this.site, moment)) / evidenceHours;
    const still = standingStill(this.#missed * factor);
    return {
      hoursPerSeasonDay: Math.max(1e-4, this.level * factor * (1 - RESTS_ON * still)),
      evidenceHours: evidenceHours * (1 - still) + RESTING_EVIDENCE * still,
    };
  }
}

/** Share of the hours ahead that a machine seen standing still is taken to miss; hours of evidence left then. Own judgement. */
const RESTS_ON = 0.8;
const RESTING_EVIDENCE = 4;
const RESTING_BEFORE = 0.02;
const LUMP_HOURS = 6;

/**
 * Chance that a machine is laid up (spare, or waiting for repair) when none of `missed` expected hours were run:
 * Bayes with odds 1 : 49 before, and exp(−missed/6 h) as the chance of such a gap in ordinary work.
 */
function standingStill(missed: number): number {
  const chance = Math.exp(-missed / LUMP_HOURS);
  return missed < LUMP_HOURS ? 0 : RESTING_BEFORE / (RESTING_BEFORE + (1 - RESTING_BEFORE) * chance);
}
