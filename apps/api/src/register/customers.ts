import { Customer, CustomerChanges, CustomerCreate } from '@deckround/contracts';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';

type Row = Prisma.CustomerGetPayload<object>;

const customers: Resource<Row> = {
  path: 'customers',
  name: 'Customer',
  view: Customer,
  create: CustomerCreate,
  changes: CustomerChanges,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'code',
  table: (tx) => tx.customer,
  toView: (row) => row,
  insert: async (tx, actor, body: z.infer<typeof CustomerCreate>) =>
    (await tx.customer.create({ data: { shopId: actor.shopId, ...body } })).id,
  update: async (tx, _actor, row, body: z.infer<typeof CustomerChanges>) => {
    await tx.customer.update({ where: { id: row.id }, data: { ...body, version: { increment: 1 } } });
  },
};

export const CustomersController = resourceController(customers);
