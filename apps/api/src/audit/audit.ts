import type { Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';

export interface AuditedAct {
  readonly action: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  /** Whose history it is told in. */
  readonly machineId?: string;
  /** No secrets, and no more of a person than the act itself. */
  readonly detail?: object;
}

/** Writes who did what, in the transaction that does it. */
export async function audit(tx: Tx, actor: Actor, act: AuditedAct, at: Date): Promise<void> {
  await tx.auditEntry.create({
    data: { shopId: actor.shopId, at, actorKind: actor.kind, actorId: actor.id, actorName: actor.name, ...act },
  });
}
