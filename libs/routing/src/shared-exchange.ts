import type { Exchange, PlanInNumbers } from './exchange.js';

/** Waits of a second for the other search before going on alone: it may have died. */
const PATIENCE = 60;
/** Cells per side of the control array: meetings come to, whether it has left. */
const CONTROL = 2;
const BOXES = 3;
const LAST_BOX = 2;

/** Shared memory for two searches to meet in; `cells` numbers hold one plan. */
export interface SharedMeeting {
  readonly control: SharedArrayBuffer;
  readonly mail: SharedArrayBuffer;
  readonly cells: number;
}

export function sharedMeeting(cells = 200_000): SharedMeeting {
  // per side two boxes used in turn, and one for its last plan: none as long as it has left without a word
  const mail = new SharedArrayBuffer(2 * BOXES * cells * 8);
  const numbers = new Float64Array(mail);
  for (const side of [0, 1]) numbers[(side * BOXES + LAST_BOX) * cells] = Infinity;
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
  const write = (box: number, { cost, visits }: PlanInNumbers) => {
    const at = boxAt(side, box);
    const fits = visits.length + 2 <= cells;
    numbers[at] = fits ? cost : Infinity;
    numbers[at + 1] = fits ? visits.length : 0;
    if (fits) numbers.set(visits, at + 2);
  };
  const read = (box: number): PlanInNumbers => {
    const at = boxAt(other, box);
    return { cost: numbers[at]!, visits: numbers.slice(at + 2, at + 2 + numbers[at + 1]!) };
  };
  let meeting = 0;
  return {
    every,
    meet: (best, isLast) => {
      meeting++;
      write(isLast ? LAST_BOX : meeting & 1, best);
      if (isLast) Atomics.store(state, side * CONTROL + 1, 1);
      Atomics.store(state, side * CONTROL, meeting);
      Atomics.notify(state, side * CONTROL);
      for (let waits = 0; waits < PATIENCE; waits++) {
        const come = Atomics.load(state, other * CONTROL);
        const hasLeft = Atomics.load(state, other * CONTROL + 1) === 1;
        if (hasLeft) return read(LAST_BOX);
        if (!isLast && come >= meeting) return read(meeting & 1);
        Atomics.wait(state, other * CONTROL, come, 1000);
      }
      return null;
    },
  };
}
