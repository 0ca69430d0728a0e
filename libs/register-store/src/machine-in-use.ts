import { dateColumn } from './local-time.js';

/** Machines that are not retired by a date, for the `where` of a query. */
export function machineInUse(date: string) {
  return { OR: [{ retiredOn: null }, { retiredOn: { gt: dateColumn(date) } }] };
}
