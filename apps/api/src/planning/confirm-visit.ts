import type { VisitChanges } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { emitEvent, type Tx } from '@deckround/store';
import type { z } from 'zod';
import type { VisitRow } from './visit-view.js';

const DEFAULT_SLOT_MINUTES = 30;

/** Promises a visit to the customer: the given slot, or the planned start give or take half an hour. */
export async function confirmVisit(
  tx: Tx,
  visit: VisitRow,
  changes: z.infer<typeof VisitChanges>,
  now: Date,
  slotMinutes = DEFAULT_SLOT_MINUTES,
): Promise<void> {
  const around = (minutes: number) => new Date(visit.startAt.getTime() + minutes * 60_000);
  const promisedFrom = changes.promisedFrom
    ? new Date(changes.promisedFrom)
    : (visit.promisedFrom ?? around(-slotMinutes));
  const promisedTo = changes.promisedTo ? new Date(changes.promisedTo) : (visit.promisedTo ?? around(slotMinutes));
  if (promisedFrom > promisedTo) {
    throw new DomainError('invalid-input', 'The promise cannot be used.', [
      { pointer: '/promisedTo', detail: 'it ends before it begins' },
    ]);
  }
  // Told so by the caller, not by an earlier promise, which a move may have broken knowingly.
  const isTold = changes.promisedFrom !== undefined;
  if (isTold && (visit.startAt < promisedFrom || visit.startAt > promisedTo)) {
    throw new DomainError('invalid-input', 'The promise cannot be used.', [
      {
        pointer: '/promisedFrom',
        detail: 'the visit is planned to begin at another time: promise a time around its start, or move it first',
      },
    ]);
  }
  await tx.visit.update({
    where: { id: visit.id },
    data: {
      state: 'confirmed',
      promisedFrom,
      promisedTo,
      ...(changes.moveCents === undefined ? {} : { moveCents: changes.moveCents }),
      version: { increment: 1 },
    },
  });
  const isSame =
    visit.promisedFrom?.getTime() === promisedFrom.getTime() && visit.promisedTo?.getTime() === promisedTo.getTime();
  if (isSame) return;
  await emitEvent(
    tx,
    visit.shopId,
    visit.promisedFrom === null ? 'visit.promised' : 'visit.moved',
    { visitId: visit.id, siteId: visit.siteId, promisedFrom, promisedTo },
    now,
  );
}
