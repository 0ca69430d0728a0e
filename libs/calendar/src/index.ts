export * from './calendar-entry.js';
export * from './write-calendar.js';
