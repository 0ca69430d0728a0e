export * from './calendar.js';
export * from './cleaning/clean-readings.js';
export * from './model/fit-usage.js';
export * from './model/forecast-usage.js';
export { SeasonClock } from './model/season-clock.js';
export { seasonPrior } from './model/season-prior.js';
export * from './snapshot.js';
