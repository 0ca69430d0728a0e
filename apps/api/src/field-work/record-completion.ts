import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { settleFindings } from './owed-work.js';
import { slotId } from './require-machine.js';

type Kept = Pick<Prisma.CompletionCreateManyInput, 'machineId' | 'doneOn' | 'meterHours' | 'note'>;

export interface WorkDone extends Kept {
  readonly machineId: string;
  readonly doneOn: Date;
  readonly code: string;
  /** Which of several places; null = it has one, or all are meant. */
  readonly slot: string | null;
}

/**
 * Starts the next interval of a service item, and closes what findings of it owed. Done is done, however many say so of the
 * same day.
 */
export async function recordCompletion(
  tx: Tx,
  actor: Actor,
  visitId: string | null,
  { code, slot, ...work }: WorkDone,
): Promise<void> {
  const { machineId, doneOn } = work;
  await settleFindings(tx, { machineId, code, slot }, doneOn, visitId);
  const place = { itemCode: code, slotId: await slotId(tx, actor.shopId, machineId, slot) };
  const by = { shopId: actor.shopId, visitId, recordedBy: actor.kind === 'person' ? actor.id : null };
  await tx.completion.createMany({ skipDuplicates: true, data: [{ ...by, ...place, ...work }] });
}
