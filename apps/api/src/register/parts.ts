import {
  Id,
  PageQuery,
  Part,
  PartChanges,
  PartCreate,
  PartOrder,
  PartOrderChanges,
  PartOrderCreate,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';
import { dateOrNull, given } from './values.js';

type Row = Prisma.PartGetPayload<{ include: { stocks: true } }>;

const parts: Resource<Row> = {
  path: 'parts',
  name: 'Part',
  view: Part,
  create: PartCreate,
  changes: PartChanges,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'code',
  table: (tx) => tx.part,
  include: { stocks: true },
  toView: ({ stocks, ...row }) => ({ ...row, onHand: shelf(stocks) }),
  insert: async (tx, actor, body: z.infer<typeof PartCreate>) => {
    const { onHand, ...fields } = body;
    const { id } = await tx.part.create({ data: { shopId: actor.shopId, ...fields } });
    await tx.stock.create({ data: { shopId: actor.shopId, partId: id, onHand } });
    return id;
  },
  update: async (tx, actor, row, body: z.infer<typeof PartChanges>) => {
    const { onHand, ...fields } = body;
    await tx.part.update({ where: { id: row.id }, data: { ...fields, version: { increment: 1 } } });
    if (onHand !== undefined) await setShelf(tx, actor.shopId, row.id, onHand);
  },
};

function shelf(stocks: Row['stocks']): string {
  return String(stocks.find((each) => each.technicianId === null)?.onHand ?? 0);
}

async function setShelf(tx: Tx, shopId: string, partId: string, onHand: string): Promise<void> {
  const { count } = await tx.stock.updateMany({ where: { partId, technicianId: null }, data: { onHand } });
  if (count === 0) await tx.stock.create({ data: { shopId, partId, onHand } });
}

type OrderRow = Prisma.PartOrderGetPayload<object>;

const partOrders: Resource<OrderRow> = {
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
  update: async (tx, actor, row, body: z.infer<typeof PartOrderChanges>) => {
    if (row.receivedOn !== null)
      throw new DomainError('conflict', 'The order has been received: its parts are on the shelf already.');
    const dates = given({
      expectedOn: body.expectedOn === undefined ? undefined : dateColumn(body.expectedOn),
      receivedOn: body.receivedOn === undefined ? undefined : dateColumn(body.receivedOn),
    });
    await tx.partOrder.update({ where: { id: row.id }, data: { ...dates, version: { increment: 1 } } });
    if (body.receivedOn === undefined) return;
    const { count } = await tx.stock.updateMany({
      where: { partId: row.partId, technicianId: null },
      data: { onHand: { increment: row.quantity } },
    });
    if (count === 0)
      await tx.stock.create({ data: { shopId: actor.shopId, partId: row.partId, onHand: row.quantity } });
  },
};

export const PartsController = resourceController(parts);
export const PartOrdersController = resourceController(partOrders);
