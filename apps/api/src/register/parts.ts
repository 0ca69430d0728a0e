import { Part, PartChanges, PartCreate } from '@deckround/contracts';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';

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

export const PartsController = resourceController(parts);
