import type { ChargesSince } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import type { DocumentRow } from './document-view.js';
import { type Differences, sinceIssue } from './since-issue.js';

export const LEFT = 'charge-document.left';

/** What an issued document lacks or charges too much, and whether somebody has decided to leave it so. */
export async function chargesSince(
  tx: Tx,
  row: Pick<DocumentRow, 'id' | 'visitId' | 'record'>,
): Promise<z.infer<typeof ChargesSince>> {
  const since = await sinceIssue(tx, row);
  const entry = await tx.auditEntry.findFirst({
    where: { action: LEFT, subjectId: row.id },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
  const { seen, reason } = (entry?.detail ?? {}) as { seen?: string; reason?: string };
  // What came to light after that is a matter of its own.
  const isSeen = entry !== null && seen === inWords(since);
  return { ...since, left: isSeen ? { by: entry.actorName, at: entry.at.toISOString(), reason: reason ?? '' } : null };
}

/** @throws DomainError conflict where there is nothing to be left as it is, or where it was taken back */
export async function leaveAsItIs(tx: Tx, actor: Actor, row: DocumentRow, reason: string, now: Date): Promise<void> {
  const { missing, surplus } = await sinceIssue(tx, row);
  if (row.state !== 'issued' || row.kind !== 'invoice' || missing.length + surplus.length === 0)
    throw new DomainError('conflict', 'The document charges what is on record: there is nothing to decide about it.');
  if (await tx.chargeDocument.findFirst({ where: { creditsId: row.id } }))
    throw new DomainError('conflict', 'It was credited before: read it again.');
  const detail = { reason, seen: inWords({ missing, surplus }) };
  await audit(tx, actor, { action: LEFT, subjectKind: 'charge-document', subjectId: row.id, detail }, now);
}

/** The same for the same differences. */
function inWords({ missing, surplus }: Differences): string {
  const lines = (list: Differences['missing']) =>
    list
      .map(({ kind, code, machineCode, slot, quantity }) => [kind, code, machineCode, slot, quantity].join('|'))
      .sort();
  return JSON.stringify([lines(missing), lines(surplus)]);
}
