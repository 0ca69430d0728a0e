import { Agreement, AgreementCreate, Id, PageQuery } from '@deckround/contracts';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';
import { columnOrNull, dateOrNull } from './values.js';

const agreements: Resource<Prisma.ServiceAgreementGetPayload<{ include: { serviceAgreementItems: true } }>> = {
  path: 'agreements',
  name: 'Agreement',
  view: Agreement,
  query: PageQuery.extend({ customerId: Id.optional() }),
  create: AgreementCreate,
  readers: ['manager'],
  writers: ['manager'],
  order: 'startsOn',
  orderValue: (key) => new Date(key),
  where: ({ customerId }) => (customerId === undefined ? {} : { customerId }),
  table: (tx) => tx.serviceAgreement,
  include: { serviceAgreementItems: true },
  toView: ({ serviceAgreementItems, ...row }) => ({
    ...row,
    startsOn: dateText(row.startsOn),
    endsOn: dateOrNull(row.endsOn),
    items: serviceAgreementItems,
  }),
  insert: async (tx, actor, body: z.infer<typeof AgreementCreate>) => {
    const { items, startsOn, endsOn, ...fields } = body;
    const { id } = await tx.serviceAgreement.create({
      data: { shopId: actor.shopId, ...fields, startsOn: dateColumn(startsOn), endsOn: columnOrNull(endsOn) },
    });
    await tx.serviceAgreementItem.createMany({
      data: items.map((item) => ({ shopId: actor.shopId, agreementId: id, ...item })),
    });
    return id;
  },
  remove: async (tx, _actor, row) => {
    await tx.serviceAgreement.delete({ where: { id: row.id } });
  },
};

export const AgreementsController = resourceController(agreements);
