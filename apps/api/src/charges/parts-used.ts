import type { Coverage } from '@deckround/billing';
import { DomainError } from '@deckround/platform';
import { Prisma, type Tx } from '@deckround/store';
import type { ChargedVisit, DoneItem, Facts } from './charged-visit.js';

export interface UsedPart {
  readonly part: Prisma.PartGetPayload<object>;
  readonly quantity: Prisma.Decimal;
  /** The work that it was used for; null = it is not told. */
  readonly workId: string | null;
  /** Work on the machine that it went into; null = none was done there. */
  readonly item: DoneItem | null;
  readonly coverage: Coverage | null;
}

/** The listed parts that a visit used: those that a person states, else those recorded and what the work done takes. */
export function partsUsed(
  tx: Tx,
  visit: ChargedVisit,
  done: readonly DoneItem[],
  { parts }: Facts,
): Promise<UsedPart[]> {
  return parts === undefined ? recordedParts(tx, visit.id, done) : statedParts(tx, parts, done);
}

/**
 * Work takes its standard parts unless one of them was recorded at the machine, or the part that its completion names in
 * their place: then what was recorded counts for it. Whatever else was recorded comes besides.
 */
async function recordedParts(tx: Tx, visitId: string, done: readonly DoneItem[]): Promise<UsedPart[]> {
  const uses = await tx.partUse.findMany({
    where: { visitId, partId: { not: null } },
    include: { part: true },
    orderBy: [{ usedAt: 'asc' }, { id: 'asc' }],
  });
  const inPlace = await tx.completion.findMany({
    where: { visitId, partId: { not: null } },
    include: { slot: true },
  });
  const isTold = (item: DoneItem, standard: readonly UsedPart[]) => {
    const own = new Set<string | null>(standard.map(({ part }) => part.id));
    for (const each of inPlace)
      if (each.machineId === item.machineId && each.itemCode === item.code && (each.slot?.name ?? null) === item.slot)
        own.add(each.partId);
    return uses.some((use) => use.machineId === item.machineId && own.has(use.partId));
  };
  const standard = done.flatMap((item) => {
    const parts = standardParts(item);
    return isTold(item, parts) ? [] : parts;
  });
  const recorded = uses.map(({ part, quantity, machineId }) => {
    const item = done.find((each) => each.machineId === machineId) ?? null;
    return { part: part!, quantity, workId: null, item, coverage: null };
  });
  return [...standard, ...recorded];
}

function standardParts(item: DoneItem): UsedPart[] {
  const rows = (item.serviceItem?.serviceItemParts ?? []).map(({ part, quantity, perSpindle }) => ({
    part,
    // Work on one spindle takes the parts of one.
    quantity: quantity.times(perSpindle && item.slot === null ? item.machine.spindles : 1),
  }));
  if (item.stopgap?.part) rows.push({ part: item.stopgap.part, quantity: item.stopgap.partQuantity });
  return rows.map((row) => ({ ...row, workId: item.id, item, coverage: null }));
}

async function statedParts(
  tx: Tx,
  stated: NonNullable<Facts['parts']>,
  done: readonly DoneItem[],
): Promise<UsedPart[]> {
  const rows = await tx.part.findMany({ where: { id: { in: stated.map((each) => each.partId) } } });
  const parts = new Map(rows.map((part) => [part.id, part]));
  return stated.map(({ partId, itemId, machineId, quantity, coverage }, index) => {
    const part = parts.get(partId);
    const item = done.find((each) => (itemId === null ? each.machineId === machineId : each.id === itemId)) ?? null;
    if (!part)
      throw new DomainError('invalid-input', 'It names a part that the shop does not keep.', [
        { pointer: `/parts/${index}/partId`, detail: 'no such part' },
      ]);
    return {
      ...{ part, item, workId: itemId, quantity: new Prisma.Decimal(quantity) },
      coverage: (coverage as Coverage | undefined) ?? null,
    };
  });
}
