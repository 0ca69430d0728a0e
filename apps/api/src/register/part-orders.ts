import { Id, PageQuery, PartOrder, PartOrderChanges, PartOrderCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { z } from 'zod';
import { refuseFutureDayOfShop } from '../field-work/refuse-future.js';
import { etagOf, requireVersion } from '../http/version.js';
import { cancelRest, lockOrder, type OrderRow, receive } from './order-deliveries.js';
import { type Resource, resourceController } from './resource.js';
import { dateOrNull, given } from './values.js';

export const partOrders: Resource<OrderRow> = {
  path: 'part-orders',
  name: 'PartOrder',
  view: PartOrder,
  query: PageQuery.extend({ partId: Id.optional() }),
  create: PartOrderCreate,
  changes: PartOrderChanges,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'expectedOn',
  orderValue: (key) => new Date(key),
  where: ({ partId }) => (partId === undefined ? {} : { partId }),
  table: (tx) => tx.partOrder,
  toView: (row) => ({
    ...row,
    quantity: String(row.quantity),
    orderedOn: dateText(row.orderedOn),
    expectedOn: dateText(row.expectedOn),
    receivedOn: dateOrNull(row.receivedOn),
    receivedQuantity: String(row.receivedQuantity),
    cancelledOn: dateOrNull(row.cancelledOn),
    outstanding: String(row.outstanding),
  }),
  insert: async (tx, actor, body: z.infer<typeof PartOrderCreate>) => {
    const row = await tx.partOrder.create({
      data: {
        shopId: actor.shopId,
        ...body,
        orderedOn: dateColumn(body.orderedOn),
        expectedOn: dateColumn(body.expectedOn),
      },
    });
    return row.id;
  },
  update: async (tx, actor, row, body: z.infer<typeof PartOrderChanges>, now) => {
    const { version } = await lockOrder(tx, row.id);
    requireVersion(etagOf(row.version), version);
    requireOpen(row);
    const { expectedOn, receivedOn, receivedQuantity, cancelledOn } = body;
    await refuseFutureDayOfShop(tx, '/receivedOn', receivedOn, now);
    await refuseFutureDayOfShop(tx, '/cancelledOn', cancelledOn, now);
    await tx.partOrder.update({
      where: { id: row.id },
      data: {
        ...given({ expectedOn: expectedOn === undefined ? undefined : dateColumn(expectedOn) }),
        version: { increment: 1 },
      },
    });
    if (receivedOn !== undefined) await receive(tx, actor, row, { receivedOn, receivedQuantity }, now);
    if (cancelledOn !== undefined) await cancelRest(tx, actor, row, cancelledOn, now);
  },
};

function requireOpen({ cancelledOn, outstanding }: OrderRow): void {
  if (cancelledOn !== null)
    throw new DomainError('conflict', 'The order has been cancelled: nothing more of it comes. Make a new order.');
  if (outstanding.isZero())
    throw new DomainError('conflict', 'The order has been received: its parts are on the shelf already.');
}

export const PartOrdersController = resourceController(partOrders);
