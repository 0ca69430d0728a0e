import type { DeliveryTakenBack } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, shopNow, todayOf } from '@deckround/register-store';
import { Prisma, type Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { takeFromStock } from '../charges/stock.js';

export type OrderRow = Prisma.PartOrderGetPayload<object>;

interface Delivery {
  readonly receivedOn: string;
  /** All that has come, this delivery included; undefined = all that was ordered. */
  readonly receivedQuantity: string | undefined;
}

/**
 * Two who say of the same order what has come do so one after the other.
 * @throws DomainError not-found
 */
export async function lockOrder(tx: Tx, id: string): Promise<OrderRow> {
  await tx.$queryRaw`select id from part_order where id = ${id}::uuid for update`;
  const row = await tx.partOrder.findUnique({ where: { id } });
  if (!row) throw new DomainError('not-found', 'There is no such order of parts.');
  return row;
}

/** Puts what came on the shelf; the rest stays on order. */
export async function receive(tx: Tx, actor: Actor, row: OrderRow, delivery: Delivery, now: Date): Promise<void> {
  const { receivedOn } = delivery;
  const total = new Prisma.Decimal(delivery.receivedQuantity ?? row.quantity);
  requireMore(row, total);
  const came = total.minus(row.receivedQuantity);
  await tx.partOrder.update({
    where: { id: row.id },
    data: { receivedOn: dateColumn(receivedOn), receivedQuantity: total },
  });
  const { count } = await tx.stock.updateMany({
    where: { partId: row.partId, technicianId: null },
    data: { onHand: { increment: came } },
  });
  if (count === 0) await tx.stock.create({ data: { shopId: actor.shopId, partId: row.partId, onHand: came } });
  await audit(
    tx,
    actor,
    { ...act(row, 'received'), detail: { partId: row.partId, quantity: String(came), on: receivedOn } },
    await shopNow(tx, now),
  );
}

/** Nothing more of it comes; the row stays, with what has come. */
export async function cancelRest(tx: Tx, actor: Actor, row: OrderRow, cancelledOn: string, now: Date): Promise<void> {
  await tx.partOrder.update({ where: { id: row.id }, data: { cancelledOn: dateColumn(cancelledOn) } });
  await audit(
    tx,
    actor,
    { ...act(row, 'cancelled'), detail: { partId: row.partId, quantity: String(row.outstanding), on: cancelledOn } },
    await shopNow(tx, now),
  );
}

/**
 * Puts right what was received by mistake: it leaves the shelf, and is still to come, unless the order is cancelled.
 *
 * @throws DomainError invalid-input where not so many had come; conflict where the shelf no longer holds them and that was
 * not said
 */
export async function takeBackDelivery(
  tx: Tx,
  actor: Actor,
  id: string,
  { quantity, reason, evenIfGone }: z.infer<typeof DeliveryTakenBack>,
  now: Date,
): Promise<void> {
  const row = await lockOrder(tx, id);
  const { partId, receivedQuantity } = row;
  const left = receivedQuantity.minus(quantity);
  if (left.isNegative())
    throw new DomainError('invalid-input', 'So many have not been received. Nothing was changed.', [
      { pointer: '/quantity', detail: `only ${receivedQuantity} of the order have come` },
    ]);
  const { shelf: gone } = await takeFromStock(tx, partId, new Prisma.Decimal(quantity), null);
  if (gone.lessThan(quantity) && !evenIfGone)
    throw new DomainError(
      'conflict',
      `The shelf holds ${gone} of them: the others have been used, or counted off. Count the shelf, or say that they are gone.`,
    );
  await tx.partOrder.update({
    where: { id },
    data: {
      ...{ receivedQuantity: left, version: { increment: 1 } },
      ...(left.isZero() && { receivedOn: null }),
    },
  });
  const detail = { partId, quantity, reason, on: await todayOf(tx, now) };
  await audit(tx, actor, { ...act(row, 'taken-back'), detail }, await shopNow(tx, now));
}

/** @throws DomainError invalid-input where nothing came, or more than was ordered */
function requireMore({ quantity, receivedQuantity }: OrderRow, total: Prisma.Decimal): void {
  const detail = total.greaterThan(quantity)
    ? `only ${quantity} were ordered: count the rest to the shelf`
    : total.greaterThan(receivedQuantity)
      ? null
      : `${receivedQuantity} have come before: write them and what came now together`;
  if (detail !== null)
    throw new DomainError('invalid-input', 'So many cannot be received.', [{ pointer: '/receivedQuantity', detail }]);
}

const act = ({ id }: OrderRow, what: string) => ({
  action: `part-order.${what}`,
  subjectKind: 'part-order',
  subjectId: id,
});
