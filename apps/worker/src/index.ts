export { computeForecast } from './compute/compute-forecast.js';
export * from './compute/compute-in-thread.js';
export * from './compute/messages.js';
export * from './compute/snapshot-hash.js';
export * from './context.js';
export { askMonthlyRefits } from './lives/ask-refits.js';
export { createProcessors } from './processors.js';
export { startSweep, sweepLostRuns } from './runs/sweep.js';
