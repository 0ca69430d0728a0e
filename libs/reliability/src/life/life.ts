/** One component's stay in a slot, as a life model sees it. Ages in hours (or any one unit) since the part was new. */
export interface Life {
  /** failed: age at failure. running: age last known to work. between: last age known to work. */
  readonly age: number;
  /** Age at which watching began: a part that had failed before it could not have been seen. 0 = watched since new. */
  readonly entry?: number;
  readonly outcome: 'failed' | 'running' | 'between';
  /** Only for `between`: first age at which it was found failed. */
  readonly failedBy?: number;
  /** How many lives this row stands for. */
  readonly count?: number;
}

/** Lives as columns, one entry per distinct row; what every estimator works on. */
export interface LifeSample {
  readonly age: Float64Array;
  readonly entry: Float64Array;
  /** For `between`; equal to `age` otherwise. */
  readonly failedBy: Float64Array;
  /** 1 failed, 0 running, 2 between. */
  readonly kind: Uint8Array;
  readonly count: Float64Array;
  /** Lives in all, and those that ended in failure (exactly known or between two ages). */
  readonly lives: number;
  readonly failures: number;
  readonly intervals: number;
  readonly truncated: number;
  /** What was left out and why, in words; empty when everything was used. */
  readonly leftOut: readonly string[];
}

export const FAILED = 1;
export const RUNNING = 0;
export const BETWEEN = 2;

/** A clear statement in place of a number that the data cannot carry. */
export interface CannotTell {
  readonly ok: false;
  readonly code:
    | 'no-lives'
    | 'no-failure'
    | 'one-failure'
    | 'one-age'
    | 'shape-out-of-range'
    | 'one-group'
    | 'no-common-time';
  readonly statement: string;
}

/**
 * Checks and gathers lives. A row without watched time (age 0, or an age not above its entry) says nothing about lives
 * and is left out, with a word about it; so is a row with a figure that is no number.
 */
export function sampleOf(lives: readonly Life[]): LifeSample {
  const kept = new Map<string, { life: Life; count: number }>();
  let unwatched = 0;
  let unreadable = 0;
  for (const life of lives) {
    const count = life.count ?? 1;
    const entry = Math.max(0, life.entry ?? 0);
    const upper = life.outcome === 'between' ? (life.failedBy ?? Number.NaN) : life.age;
    if (!Number.isFinite(life.age) || !Number.isFinite(entry) || !(upper < Number.POSITIVE_INFINITY) || !(count > 0)) {
      unreadable += 1;
      continue;
    }
    if (upper <= entry || upper <= 0 || life.age < 0 || upper < life.age) {
      unwatched += count;
      continue;
    }
    const key = `${life.outcome} ${life.age} ${entry} ${upper}`;
    const before = kept.get(key);
    if (before) before.count += count;
    else kept.set(key, { life: { ...life, entry, failedBy: upper }, count });
  }
  const rows = [...kept.values()];
  const leftOut = [
    ...(unwatched > 0
      ? [`${unwatched} ${unwatched === 1 ? 'life' : 'lives'} without any watched running hours left out`]
      : []),
    ...(unreadable > 0 ? [`${unreadable} ${unreadable === 1 ? 'row' : 'rows'} without a usable age left out`] : []),
  ];
  return sampleOfColumns(
    {
      age: Float64Array.from(rows, ({ life }) => life.age),
      entry: Float64Array.from(rows, ({ life }) => life.entry ?? 0),
      failedBy: Float64Array.from(rows, ({ life }) => life.failedBy ?? life.age),
      kind: Uint8Array.from(rows, ({ life }) => kindOf(life)),
      count: Float64Array.from(rows, ({ count }) => count),
    },
    leftOut,
  );
}

/** The same from columns at hand, unchecked: every age above its entry, all numbers finite. */
export function sampleOfColumns(
  columns: Pick<LifeSample, 'age' | 'entry' | 'failedBy' | 'kind' | 'count'>,
  leftOut: readonly string[] = [],
): LifeSample {
  let [lives, failures, intervals, truncated] = [0, 0, 0, 0];
  const { kind, count, entry } = columns;
  for (let i = 0; i < kind.length; i++) {
    lives += count[i]!;
    if (kind[i] !== RUNNING) failures += count[i]!;
    if (kind[i] === BETWEEN) intervals += count[i]!;
    if (entry[i]! > 0) truncated += count[i]!;
  }
  return { ...columns, lives, failures, intervals, truncated, leftOut };
}

function kindOf(life: Life): number {
  if (life.outcome === 'failed') return FAILED;
  if (life.outcome === 'running') return RUNNING;
  // Both ages equal: the failure is known exactly.
  return life.failedBy === life.age ? FAILED : BETWEEN;
}

export function cannotTell(code: CannotTell['code'], statement: string): CannotTell {
  return { ok: false, code, statement };
}

/** Why a two-parameter life model cannot be fitted to these lives; null when it can be tried. */
export function tooLittle(sample: LifeSample): CannotTell | null {
  if (sample.lives === 0) return cannotTell('no-lives', 'There is no life on record with watched running hours.');
  if (sample.failures === 0)
    return cannotTell(
      'no-failure',
      `None of ${sample.lives} lives has ended in failure: only a lower bound of life can be stated, under an assumed shape.`,
    );
  if (sample.failures === 1)
    return cannotTell(
      'one-failure',
      `Only one of ${sample.lives} lives has ended in failure: one failure cannot tell ageing from chance. A shape has to be assumed.`,
    );
  return null;
}
