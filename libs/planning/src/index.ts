export * from './snapshot.js';
export * from './week-plan.js';
