import { DomainError } from '@deckround/platform';
import { CLOCK_SKEW_MS } from '@deckround/register-store';

/** @throws DomainError invalid-input, pointing to each reading that lies in the future */
export function refuseFuture(
  readings: readonly { readonly pointer: string; readonly readAt: string }[],
  now: Date,
): void {
  const latest = now.getTime() + CLOCK_SKEW_MS;
  const errors = readings.flatMap(({ pointer, readAt }) =>
    new Date(readAt).getTime() > latest ? [{ pointer, detail: 'it lies in the future: check the device’s clock' }] : [],
  );
  if (errors.length > 0)
    throw new DomainError('invalid-input', 'Some readings lie in the future. None was recorded.', errors);
}
