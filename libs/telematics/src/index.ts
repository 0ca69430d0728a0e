export * from './at-most.js';
export * from './heard-unit.js';
export * from './read-snapshot.js';
export { hoursOf, instantOf } from './values.js';
