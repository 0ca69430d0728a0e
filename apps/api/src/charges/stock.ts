import { Prisma, type Tx } from '@deckround/store';

/** Pieces of a part that came out of a technician's van and off the shop's shelf. */
export interface Taken {
  readonly van: Prisma.Decimal;
  readonly shelf: Prisma.Decimal;
}

const NOTHING: Taken = { van: new Prisma.Decimal(0), shelf: new Prisma.Decimal(0) };

/**
 * From the van where it has some, else from the shelf; what the lists did not know of is not taken below nothing.
 *
 * @returns what is taken now, with what was before
 */
export async function takeFromStock(
  tx: Tx,
  partId: string,
  quantity: Prisma.Decimal,
  technicianId: string | null,
  before: Taken = NOTHING,
): Promise<Taken> {
  const van = technicianId === null ? NOTHING.van : await takeFrom(tx, partId, technicianId, quantity);
  const shelf = await takeFrom(tx, partId, null, quantity.minus(van));
  return { van: before.van.plus(van), shelf: before.shelf.plus(shelf) };
}

/**
 * What was taken beyond `kept` goes back where it came from, to the shelf first: it was the last to be asked.
 *
 * @returns what stays taken
 */
export async function giveBackToStock(
  tx: Tx,
  partId: string,
  kept: Prisma.Decimal,
  technicianId: string,
  { van, shelf }: Taken,
): Promise<Taken> {
  const tooMany = Prisma.Decimal.max(0, van.plus(shelf).minus(kept));
  const toShelf = Prisma.Decimal.min(tooMany, shelf);
  const toVan = tooMany.minus(toShelf);
  for (const [back, owner] of [
    [toShelf, null],
    [toVan, technicianId],
  ] as const)
    if (back.isPositive() && !back.isZero())
      await tx.stock.updateMany({ where: { partId, technicianId: owner }, data: { onHand: { increment: back } } });
  return { van: van.minus(toVan), shelf: shelf.minus(toShelf) };
}

async function takeFrom(
  tx: Tx,
  partId: string,
  technicianId: string | null,
  wanted: Prisma.Decimal,
): Promise<Prisma.Decimal> {
  const rows = await tx.$queryRaw<{ id: string; on_hand: Prisma.Decimal }[]>`
    select id, on_hand from stock
    where part_id = ${partId}::uuid and technician_id is not distinct from ${technicianId}::uuid
    for update`;
  let taken = NOTHING.van;
  for (const row of rows) {
    const now = Prisma.Decimal.min(wanted.minus(taken), row.on_hand);
    if (!now.isPositive() || now.isZero()) continue;
    await tx.stock.update({ where: { id: row.id }, data: { onHand: { decrement: now } } });
    taken = taken.plus(now);
  }
  return taken;
}
