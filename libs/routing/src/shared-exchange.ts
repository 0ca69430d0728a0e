import type { Exchange, PlanInNumbers, Shown } from './exchange.js';

/** Waits of a second for the other search before going on alone: it may have died. */
const PATIENCE = 60;
/** Cells per side of the control array: meetings come to, whether it has left. */
const CONTROL = 2;
const BOXES = 3;
const LAST_BOX = 2;
/** In place of a meeting: the box is empty. */
const NOTHING = -2;

/** Two searches meet so often, whatever their iterations: 100 times was no better. Measured. */
const MEETINGS = 30;

/** Iterations between two meetings. */
export function meetingEvery(iterations: number): number {
  return Math.max(1000, Math.floor(iterations / MEETINGS));
}

/** Shared memory for two searches to meet in; `cells` numbers hold what one shows. */
export interface SharedMeeting {
  readonly control: SharedArrayBuffer;
  readonly mail: SharedArrayBuffer;
  readonly cells: number;
}

export function sharedMeeting(cells = 200_000): SharedMeeting {
  // per side two boxes used in turn, and one for its last plan: none as long as it has left without a word
  const mail = new SharedArrayBuffer(2 * BOXES * cells * 8);
  const numbers = new Float64Array(mail);
  for (const side of [0, 1]) numbers[(side * BOXES + LAST_BOX) * cells] = NOTHING;
  return { control: new SharedArrayBuffer(2 * CONTROL * 4), mail, cells };
}

/** For a side that broke off: the other need not wait for it. */
export function leaveMeeting({ control }: SharedMeeting, side: 0 | 1): void {
  const state = new Int32Array(control);
  Atomics.store(state, side * CONTROL + 1, 1);
  Atomics.notify(state, side * CONTROL);
}

/**
 * One side's view of a meeting between two threads. A side is never more than one meeting ahead: the box it writes to is
 * the one that the other has finished reading.
 */
export function sharedExchange({ control, mail, cells }: SharedMeeting, side: 0 | 1, every: number): Exchange {
  const state = new Int32Array(control);
  const numbers = new Float64Array(mail);
  const other = 1 - side;
  const boxAt = (owner: number, box: number) => (owner * BOXES + box) * cells;
  const writePlan = (at: number, { cost, visits }: PlanInNumbers) => {
    numbers[at] = cost;
    numbers[at + 1] = visits.length;
    numbers.set(visits, at + 2);
    return at + 2 + visits.length;
  };
  const write = (box: number, { best, current, division }: Shown) => {
    const at = boxAt(side, box);
    const fits = best.visits.length + current.visits.length + 5 <= cells;
    numbers[at] = fits ? division : NOTHING;
    if (fits) writePlan(writePlan(at + 1, best), current);
  };
  const readPlan = (at: number): PlanInNumbers => ({
    cost: numbers[at]!,
    visits: numbers.slice(at + 2, at + 2 + numbers[at + 1]!),
  });
  const read = (box: number, isLast: boolean) => {
    const at = boxAt(other, box);
    const division = numbers[at]!;
    if (division === NOTHING) return null;
    const best = readPlan(at + 1);
    return { best, current: readPlan(at + 3 + best.visits.length), division, isLast };
  };
  let meeting = 0;
  return {
    side,
    every,
    meet: (shown, isLast) => {
      meeting++;
      write(isLast ? LAST_BOX : meeting & 1, shown);
      if (isLast) Atomics.store(state, side * CONTROL + 1, 1);
      Atomics.store(state, side * CONTROL, meeting);
      Atomics.notify(state, side * CONTROL);
      for (let waits = 0; waits < PATIENCE; waits++) {
        const come = Atomics.load(state, other * CONTROL);
        const hasLeft = Atomics.load(state, other * CONTROL + 1) === 1;
        if (hasLeft) return read(LAST_BOX, true);
        if (!isLast && come >= meeting) return read(meeting & 1, false);
        Atomics.wait(state, other * CONTROL, come, 1000);
      }
      return null;
    },
  };
}
