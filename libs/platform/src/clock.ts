/** Where the present comes from; tests stop it. */
export interface Clock {
  now(): Date;
}

export const systemClock: Clock = { now: () => new Date() };

/** A clock that stands still at `instant` until it is moved. */
export function stoppedClock(instant: string | Date): Clock & { moveTo(next: string | Date): void } {
  let current = new Date(instant);
  return {
    now: () => new Date(current),
    moveTo: (next) => {
      current = new Date(next);
    },
  };
}
