import type { ChoiceProblem, ChoiceSolver } from '@deckround/routing';
import loader, { type Highs } from 'highs';

/** Columns that the exact step may take on, nodes it may open, and steps of the linear one: no clock decides. */
const MOST_COLUMNS = 400;
const MOST_NODES = 100;
const MOST_SIMPLEX_STEPS = 60_000;

// The package's types describe its CommonJS form; what Node hands out here is the loader itself.
const loadHighs = loader as unknown as typeof loader.default;
let loaded: Promise<ChoiceSolver> | undefined;

type ModelMaker = Pick<Highs, 'createModel' | 'constants'>;

/** HiGHS as a choice solver: linear relaxation, reduced-cost fixing, then branch and bound over what is left. */
export function loadChoiceSolver(): Promise<ChoiceSolver> {
  loaded ??= loadHighs().then((highs) => (problem: ChoiceProblem) => choose(highs, problem));
  return loaded;
}

/** @returns the columns chosen, or null: nothing cheaper than what is in hand, or HiGHS gave up */
export function choose(highs: ModelMaker, problem: ChoiceProblem): readonly number[] | null {
  const all = Array.from({ length: problem.cost.length }, (_, j) => j);
  const relaxed = run(highs, problem, all, false);
  if (relaxed === null || relaxed.objective >= problem.below - 1e-6) return null;
  // a column whose reduced cost lifts the bound past the plan in hand is in no better plan
  const gap = problem.below - relaxed.objective;
  const open = all
    .filter((j) => relaxed.reducedCost[j]! < gap)
    .sort((a, b) => relaxed.reducedCost[a]! - relaxed.reducedCost[b]! || a - b)
    .slice(0, MOST_COLUMNS)
    .sort((a, b) => a - b);
  const exact = run(highs, problem, open, true);
  if (exact === null || exact.objective >= problem.below - 1e-6) return null;
  return open.filter((_, k) => exact.value[k]! > 0.5);
}

function run(highs: ModelMaker, problem: ChoiceProblem, columns: readonly number[], isExact: boolean) {
  const starts = new Int32Array(columns.length + 1);
  const indices: number[] = [];
  columns.forEach((j, k) => {
    for (let p = problem.start[j]!; p < problem.start[j + 1]!; p++) indices.push(problem.rows[p]!);
    starts[k + 1] = indices.length;
  });
  const numCols = columns.length;
  const numRows = problem.lower.length;
  const model = highs.createModel({
    numCols,
    numRows,
    colCost: Float64Array.from(columns, (j) => problem.cost[j]!),
    colLower: new Float64Array(numCols),
    colUpper: new Float64Array(numCols).fill(1),
    rowLower: problem.lower,
    rowUpper: problem.upper,
    matrix: {
      format: 'csc',
      numRows,
      numCols,
      starts,
      indices: Int32Array.from(indices),
      values: new Float64Array(indices.length).fill(1),
    },
    ...(isExact && { integrality: new Int32Array(numCols).fill(1) }),
  });
  try {
    model.options.set({
      output_flag: false,
      random_seed: 1,
      simplex_iteration_limit: MOST_SIMPLEX_STEPS,
      ...(isExact && { mip_max_nodes: MOST_NODES, mip_rel_gap: 0, objective_bound: problem.below }),
    });
    if (!hasRun(model)) return null;
    const solution = model.getSolution();
    const objective = model.getObjectiveValue();
    if (solution.colValue.length !== numCols || !Number.isFinite(objective)) return null;
    if (!isExact && model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
    if (isExact && !isWhole(solution.colValue, problem, columns)) return null;
    return { objective, value: solution.colValue, reducedCost: solution.colDual };
  } finally {
    model.dispose();
  }
}

/** Now and then HiGHS gives up with an error of its own on a problem of routes; the search then goes on without it. */
function hasRun(model: ReturnType<Highs['createModel']>): boolean {
  try {
    model.run();
    return true;
  } catch {
    return false;
  }
}

/** A run that met its limit may hand out half a solution: taken only when it is whole and keeps every row. */
function isWhole(value: Float64Array, problem: ChoiceProblem, columns: readonly number[]): boolean {
  const sums = new Float64Array(problem.lower.length);
  for (const [k, j] of columns.entries()) {
    const x = value[k]!;
    if (x > 1e-6 && x < 1 - 1e-6) return false;
    if (x > 0.5) for (let p = problem.start[j]!; p < problem.start[j + 1]!; p++) sums[problem.rows[p]!]! += 1;
  }
  return sums.every((sum, i) => sum >= problem.lower[i]! && sum <= problem.upper[i]!);
}
