import type { KeptRecord } from '../offline/field-store.js';

/** Which part is meant: one that the shop does not keep goes by its name. */
export interface PartMeant {
  readonly partId: string | null;
  readonly name: string;
}

/** How much of a part is recorded here, sent or not, and what of it may still be taken back. */
export interface Used {
  readonly quantity: number;
  readonly notSent: readonly KeptRecord[];
}

export function usedOf(part: PartMeant, kept: readonly KeptRecord[]): Used {
  const records = kept.filter(({ fact }) => fact.kind === 'part-used' && isSame(fact, part));
  return {
    quantity: records.reduce((sum, { fact }) => sum + (fact.kind === 'part-used' ? Number(fact.quantity) : 0), 0),
    notSent: records.filter(({ state }) => state !== 'sent'),
  };
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
