export { loadChoiceSolver } from './choice-solver.js';
