export { type BaselineVariant, baselinePlan } from './baseline.js';
export { checkPlan } from './check/check-plan.js';
export type { PlanFault, PlanFaultCode } from './check/plan-fault.js';
export { SnapshotInconsistent } from './errors.js';
export { buildInstance, type PlanningInstance } from './instance.js';
export { type PlanProgress, type PlanWeekOptions, planWeek } from './plan-week.js';
export * from './snapshot.js';
export * from './week-plan.js';
