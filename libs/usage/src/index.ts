export * from './calendar.js';
export * from './cleaning/clean-readings.js';
export * from './snapshot.js';
