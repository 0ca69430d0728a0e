export { chanceDay, chanceOverdue, OVERDUE_FROM } from './chance-overdue.js';
export { shiftCents, stopgapCents } from './cost/timing-cost.js';
export { forecastDue, forecastDueWith } from './forecast-due.js';
export * from './snapshot.js';
