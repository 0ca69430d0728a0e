export * from './import-counts.js';
export * from './import-register.js';
export * from './life-history.js';
export * from './load-register.js';
export * from './local-time.js';
export * from './set-aside.js';
export * from './visit-calendar.js';
export * from './write-catalogue.js';
