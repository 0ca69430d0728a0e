import type { KeptRecord } from '../offline/field-store.js';

/** Which part is meant: one that the shop does not keep goes by its name. */
export interface PartMeant {
  readonly partId: string | null;
  readonly name: string;
}

/** How much of a part is recorded here, and what of it may still be taken back. */
export interface Used {
  /** Sent, or waiting for it: what the service refused, and what is taken back, is used nowhere but here. */
  readonly quantity: number;
  readonly waiting: readonly KeptRecord[];
  readonly sent: readonly KeptRecord[];
  readonly refused: readonly KeptRecord[];
}

export function usedOf(part: PartMeant, kept: readonly KeptRecord[]): Used {
  const records = usesIn(kept).filter(({ fact }) => isSame(fact, part));
  const counted = records.filter(({ state }) => state !== 'refused');
  return {
    quantity: quantityOf(counted),
    waiting: records.filter(({ state }) => state === 'waiting'),
    sent: records.filter(({ state }) => state === 'sent'),
    refused: records.filter(({ state }) => state === 'refused'),
  };
}

export function quantityOf(records: readonly KeptRecord[]): number {
  return records.reduce((sum, { fact }) => sum + (fact.kind === 'part-used' ? Number(fact.quantity) : 0), 0);
}

/** Whether there is anything to say of the part, be it that it was refused. */
export function isRecorded(part: PartMeant, kept: readonly KeptRecord[]): boolean {
  return usesIn(kept).some(({ fact }) => isSame(fact, part));
}

/** The parts recorded here that none of these are. */
export function othersUsed(known: readonly PartMeant[], kept: readonly KeptRecord[]): PartMeant[] {
  const others: PartMeant[] = [];
  for (const { fact } of usesIn(kept))
    if (![...known, ...others].some((each) => isSame(fact, each)))
      others.push({ partId: fact.partId ?? null, name: fact.name });
  return others;
}

type Use = KeptRecord & { readonly fact: Extract<KeptRecord['fact'], { kind: 'part-used' }> };

/** The used parts recorded here, but for those that were taken back, unless the service refused that. */
function usesIn(kept: readonly KeptRecord[]): Use[] {
  const back = new Set(
    kept.flatMap(({ fact, state }) => (fact.kind === 'part-taken-back' && state !== 'refused' ? [fact.useId] : [])),
  );
  return kept.filter((record): record is Use => record.fact.kind === 'part-used' && !back.has(record.id));
}

function isSame(a: { readonly partId?: string | null; readonly name: string }, b: PartMeant): boolean {
  return b.partId === null ? !a.partId && a.name === b.name : a.partId === b.partId;
}
