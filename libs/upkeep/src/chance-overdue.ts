const DAY_MS = 86_400_000;

/** Half a chance of being past its tolerance is called overdue. */
export const OVERDUE_FROM = 0.5;

interface Forecast {
  /** The first day of the chances, `YYYY-MM-DD`. */
  readonly costFrom: string;
  /** One per day. */
  readonly probabilityOverdue: readonly number[];
}

/** The chance that it is past its tolerance on a day. The forecast may be some days old, or begin with the week to come. */
export function chanceOverdue({ costFrom, probabilityOverdue }: Forecast, today: string): number {
  const days = Math.round((midnight(today) - midnight(costFrom)) / DAY_MS);
  return probabilityOverdue[Math.min(Math.max(0, days), probabilityOverdue.length - 1)] ?? 0;
}

/** The day that the chance speaks of: the one asked for, where the forecast reaches to it. */
export function chanceDay({ costFrom, probabilityOverdue }: Forecast, today: string): string {
  const days = Math.max(0, probabilityOverdue.length - 1);
  const last = new Date(midnight(costFrom) + days * DAY_MS).toISOString().slice(0, 10);
  return today < costFrom ? costFrom : today > last ? last : today;
}

function midnight(date: string): number {
  return Date.parse(`${date}T00:00:00Z`);
}
