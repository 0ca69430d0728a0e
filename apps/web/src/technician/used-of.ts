import type { KeptRecord } from '../offline/field-store.js';

/** Which part is meant: one that the shop does not keep goes by its name. */
export interface PartMeant {
  readonly partId: string | null;
  readonly name: string;
}

/** How much of a part is recorded here, and what of it may still be taken back. */
export interface Used {
  /** Sent, or waiting for it: what the service refused is used nowhere but here. */
  readonly quantity: number;
  readonly waiting: readonly KeptRecord[];
  readonly sent: readonly KeptRecord[];
  readonly refused: readonly KeptRecord[];
}

export function usedOf(part: PartMeant, kept: readonly KeptRecord[]): Used {
  const records = kept.filter(({ fact }) => fact.kind === 'part-used' && isSame(fact, part));
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
  return kept.some(({ fact }) => fact.kind === 'part-used' && isSame(fact, part));
}

/** The parts recorded here that none of these are. */
export function othersUsed(known: readonly PartMeant[], kept: readonly KeptRecord[]): PartMeant[] {
  const others: PartMeant[] = [];
  for (const { fact } of kept)
    if (fact.kind === 'part-used' && ![...known, ...others].some((each) => isSame(fact, each)))
      others.push({ partId: fact.partId ?? null, name: fact.name });
  return others;
}

function isSame(a: { readonly partId?: string | null; readonly name: string }, b: PartMeant): boolean {
  return b.partId === null ? !a.partId && a.name === b.name : a.partId === b.partId;
}
