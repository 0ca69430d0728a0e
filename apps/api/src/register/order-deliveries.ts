import { DomainError } from '@deckround/platform';
import { dateColumn } from '@deckround/register-store';
import { Prisma, type Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';

export type OrderRow = Prisma.PartOrderGetPayload<object>;

interface Delivery {
  readonly receivedOn: string;
  /** All that has come, this delivery included; undefined = all that was ordered. */
  readonly receivedQuantity: string | undefined;
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
    { ...act(row, 'received'), detail: { partId: row.partId, quantity: String(came), receivedOn } },
    now,
  );
}

/** Nothing more of it comes; the row stays, with what has come. */
export async function cancelRest(tx: Tx, actor: Actor, row: OrderRow, cancelledOn: string, now: Date): Promise<void> {
  await tx.partOrder.update({ where: { id: row.id }, data: { cancelledOn: dateColumn(cancelledOn) } });
  await audit(
    tx,
    actor,
    { ...act(row, 'cancelled'), detail: { partId: row.partId, quantity: String(row.outstanding), cancelledOn } },
    now,
  );
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
