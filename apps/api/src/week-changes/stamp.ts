import { DomainError } from '@deckround/platform';
import type { LoadedWeek } from './load-standing-week.js';

/** @throws DomainError conflict when the week is not the one that prices or options were given for */
export function requireStamp({ stamp }: LoadedWeek, given: string): void {
  if (stamp !== given)
    throw new DomainError(
      'conflict',
      'The week has changed since then: nothing was done. Look at the prices again and decide again.',
    );
}
