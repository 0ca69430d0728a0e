/** One look back: what would have been forecast at a past reading, and what a later reading showed. */
export interface LookBack {
  /** Hours expected. */
  readonly expected: number;
  /** Hours run. */
  readonly hours: number;
  readonly evidenceHours: number;
  /** How much like the weeks ahead that season was, 0..1. */
  readonly weight: number;
  /** Whose sky it was, when (middle of the days ahead, day number) and how many days ahead. */
  readonly climate: number;
  readonly middle: number;
  readonly days: number;
}
