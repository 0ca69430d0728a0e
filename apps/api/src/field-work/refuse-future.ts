import { DomainError } from '@deckround/platform';
import { CLOCK_SKEW_MS, shopNow, todayOf, wallClockOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';

/** @throws DomainError invalid-input, pointing to each reading that lies in the future */
export function refuseFuture(
  readings: readonly { readonly pointer: string; readonly readAt: string }[],
  now: Date,
): void {
  const errors = readings.flatMap(({ pointer, readAt }) => (isFuture(readAt, now) ? [faultOfTime(pointer)] : []));
  if (errors.length > 0)
    throw new DomainError('invalid-input', 'Some readings lie in the future. None was recorded.', errors);
}

/** @throws DomainError invalid-input, pointing to the time where it is yet to come */
export function refuseFutureTime(pointer: string, instant: string, now: Date): void {
  if (isFuture(instant, now)) throw notYet(faultOfTime(pointer));
}

/**
 * @param day a local date where the machine stands
 * @param now of the world
 * @throws DomainError invalid-input, pointing to the day where it is yet to come there
 */
export async function refuseFutureDay(
  tx: Tx,
  machineId: string,
  pointer: string,
  day: string | null | undefined,
  now: Date,
): Promise<void> {
  if (day === null || day === undefined) return;
  const { site } = await tx.machine.findUniqueOrThrow({ where: { id: machineId }, select: { site: true } });
  const latest = new Date((await shopNow(tx, now)).getTime() + CLOCK_SKEW_MS);
  if (day > wallClockOf(latest, site.timeZone).slice(0, 10)) throw dayNotYet(pointer);
}

const isFuture = (instant: string, now: Date) => new Date(instant).getTime() > now.getTime() + CLOCK_SKEW_MS;

const faultOfTime = (pointer: string) => ({ pointer, detail: 'it lies in the future: check the device’s clock' });

/**
 * @param now of the world
 * @throws DomainError invalid-input, pointing to the day where it is yet to come by the shop's calendar
 */
export async function refuseFutureDayOfShop(
  tx: Tx,
  pointer: string,
  day: string | undefined,
  now: Date,
): Promise<void> {
  if (day !== undefined && day > (await todayOf(tx, new Date(now.getTime() + CLOCK_SKEW_MS)))) throw dayNotYet(pointer);
}

const dayNotYet = (pointer: string) => notYet({ pointer, detail: 'it lies in the future: give today or a day before' });

function notYet(fault: { readonly pointer: string; readonly detail: string }): DomainError {
  return new DomainError('invalid-input', 'It tells of a time that is yet to come. Nothing was recorded.', [fault]);
}
