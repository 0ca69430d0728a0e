export type { Exchange, PlanInNumbers } from './exchange.js';
export { type LearnedTravel, learnTravel, type RecordedDrive } from './learn-travel.js';
export { EMPTY_MENU, type Menu, type MenuBook, SingleOptionMenus } from './menu.js';
export type { ChoiceProblem, ChoiceSolver } from './polish/choice.js';
export { type RoutingProblem, type Stops, triangleGap, type Vehicles } from './problem.js';
export { Random } from './random.js';
export { type RoutingResult, type SolveOptions, type StartVisit, solve } from './search.js';
export { DEFAULT_PARAMETERS, type SearchParameters } from './search-parameters.js';
export { leaveMeeting, meetingEvery, type SharedMeeting, sharedExchange, sharedMeeting } from './shared-exchange.js';
export { anyOf } from './stop/any-of.js';
export { cancelled } from './stop/cancelled.js';
export { maxIterations } from './stop/max-iterations.js';
export { maxRuntime } from './stop/max-runtime.js';
export type { StopRule } from './stop/stop-rule.js';
export { earliestReturn, type Timetable, type TimetableDay, type TimetableVisit, timetable } from './timetable.js';
export {
  closeMatrix,
  estimateTravel,
  estimateTrip,
  type KnownDrives,
  type Position,
  type TravelMatrix,
  type TravelSettings,
} from './travel.js';
export type { RoutedVisit } from './working-plan.js';
