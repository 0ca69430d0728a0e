/** So many requests in so many seconds; whoever has been quiet for that long may send them all at once. */
export interface RatePolicy {
  readonly quota: number;
  readonly windowSeconds: number;
}

export interface Taken {
  readonly allowed: boolean;
  /** Requests that may still be sent at once. */
  readonly remaining: number;
  /** Seconds until the whole quota is there again. */
  readonly resetSeconds: number;
  /** Seconds until the next request would be let through; 0 when it would now. */
  readonly retryAfterSeconds: number;
}

/** A thousandth of a millisecond: instants and shares of a window are added in binary, which is not exact. */
const SLACK = 0.001;

/** One bucket, as the instant at which it will be full again, milliseconds. */
export type FullAt = number;

/**
 * Takes `cost` requests out of a bucket that fills at an even pace; 0 only looks. This is the generic cell rate algorithm
 * (ITU-T I.371, annex A, from memory): the bucket's whole state is one instant.
 *
 * @returns what came of it and the bucket afterwards; unchanged when it was refused
 */
export function takeFrom(fullAt: FullAt, { quota, windowSeconds }: RatePolicy, cost: number, now: number) {
  const window = windowSeconds * 1000;
  const each = window / quota;
  const before = Math.max(fullAt, now);
  const asked = before + each * Math.max(cost, 1);
  const allowed = asked - now <= window + SLACK;
  const after = allowed && cost > 0 ? asked : before;
  return { fullAt: after, taken: judge({ quota, windowSeconds }, allowed, after, now) };
}

/** What a bucket says of itself. */
export function judge({ quota, windowSeconds }: RatePolicy, allowed: boolean, fullAt: FullAt, now: number): Taken {
  const window = windowSeconds * 1000;
  const each = window / quota;
  const owed = Math.max(0, fullAt - now);
  return {
    allowed,
    remaining: Math.max(0, Math.floor((window - owed + SLACK) / each)),
    resetSeconds: Math.max(0, Math.ceil((owed - SLACK) / 1000)),
    retryAfterSeconds: Math.max(0, Math.ceil((owed + each - window - SLACK) / 1000)),
  };
}
