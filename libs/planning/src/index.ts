export { describeChange, type PlanChange, type VisitChange, type VisitPlace } from './adjust/describe-change.js';
export type { PlacementObstacle } from './adjust/place-visit.js';
export { type MovePrice, type MovePrices, moveVisit, priceMoves } from './adjust/price-moves.js';
export {
  bestRoadCallOptions,
  type RoadCallKind,
  type RoadCallOption,
  type RoadCallSettings,
  roadCallChange,
  roadCallOptions,
} from './adjust/road-call.js';
export {
  evaluateStanding,
  type NamedDraft,
  type NamedVisit,
  type StandingVisit,
  type StandingWeek,
  standingWeek,
  workedDates,
} from './adjust/standing-week.js';
export { type BaselineVariant, baselinePlan } from './baseline.js';
export { checkPlan } from './check/check-plan.js';
export type { PlanFault, PlanFaultCode } from './check/plan-fault.js';
export { Clause, clause } from './clause.js';
export { SnapshotInconsistent } from './errors.js';
export { type ExtraTime, extraTime } from './extra-time.js';
export { buildInstance, type PlanningInstance } from './instance.js';
export { type OrderLine, orderList, type PartNeed, type PartUse } from './order-list.js';
export { type PlanDifference, planDifference, type VisitDifference } from './plan-difference.js';
export { type PlanProgress, type PlanWeekOptions, planWeek, searchBeside } from './plan-week.js';
export { reportRoute } from './report-plan.js';
export * from './snapshot.js';
export * from './week-plan.js';
