import { Exact, type Numeric, sum } from './money.js';

/**
 * Divides a whole number by weights so that the shares are whole and add up to it: the largest remainder rule
 * (Hamilton's method); equal remainders go to whoever comes first. Without any weight all share alike.
 */
export function shareOut(total: number, weights: readonly Numeric[]): number[] {
  if (!Number.isSafeInteger(total) || total < 0) throw new RangeError(`Only whole amounts can be shared: ${total}`);
  if (weights.length === 0) return [];
  const given = weights.map((weight) => new Exact(weight));
  if (given.some((weight) => weight.isNegative() && !weight.isZero())) throw new RangeError('A weight is negative');
  const whole = sum(given);
  const used = whole.isZero() ? given.map(() => new Exact(1)) : given;
  const divisor = whole.isZero() ? new Exact(given.length) : whole;
  // total × weight = share × divisor + remainder, all without rounding.
  const parts = used.map((weight, index) => {
    const product = weight.times(total);
    const share = product.divToInt(divisor);
    return { index, share: share.toNumber(), remainder: product.minus(share.times(divisor)) };
  });
  const shares = parts.map((part) => part.share);
  const left = total - shares.reduce((one, other) => one + other, 0);
  const order = parts.toSorted((one, other) => other.remainder.cmp(one.remainder) || one.index - other.index);
  for (const { index } of order.slice(0, left)) shares[index]! += 1;
  return shares;
}

export interface DriveShare {
  readonly visitId: string;
  readonly driveMinutes: number;
  /** Minor units, once the visit has been charged. */
  readonly given: number | null;
}

/**
 * What a visit pays of its technician's drive of that day. Visits charged already keep their share; what is left of the
 * day's cost is divided among the others by their own drive, so that the last one takes exactly the rest.
 */
export function shareOfDrive(dayCost: number, visits: readonly DriveShare[], visitId: string): number {
  const open = visits.filter((visit) => visit.given === null);
  const given = visits.reduce((total, visit) => total + (visit.given ?? 0), 0);
  const index = open.findIndex((visit) => visit.visitId === visitId);
  if (index < 0) throw new RangeError('The visit has its share already, or is not of this day');
  return shareOut(
    Math.max(0, dayCost - given),
    open.map((visit) => visit.driveMinutes),
  )[index]!;
}
