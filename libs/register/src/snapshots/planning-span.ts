/** The days planned, and what is known of them. */
export interface PlanningSpan {
  readonly asOf: string;
  readonly firstDate: string;
  readonly days: number;
  /**
   * Where work has begun on the day `asOf`, so that what is planned for it stays as it is: when a visit of which nobody
   * knows yet can begin, `2026-06-08T10:40` on the wall clock of a zone. Absent = the whole day is planned.
   */
  readonly soonest?: (zone: string) => string;
}
