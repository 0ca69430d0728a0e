import { Id, PageQuery, SiteContact, SiteContactChanges, SiteContactCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { siteScope } from '../access/actor.js';
import { type Resource, resourceController } from '../register/resource.js';
import { given } from '../register/values.js';

/** Whom a site wants told of what; a supervisor keeps the list of the own sites. */
const siteContacts: Resource<Prisma.SiteContactGetPayload<object>> = {
  path: 'site-contacts',
  name: 'SiteContact',
  view: SiteContact,
  query: PageQuery.extend({ siteId: Id.optional() }),
  create: SiteContactCreate,
  changes: SiteContactChanges,
  readers: ['manager', 'supervisor'],
  writers: ['manager', 'supervisor'],
  order: 'email',
  scope: (actor) => siteScope(actor),
  where: ({ siteId }) => given({ siteId }),
  table: (tx) => tx.siteContact,
  toView: (row) => row,
  insert: async (tx, actor, body: z.infer<typeof SiteContactCreate>) => {
    if (actor.siteIds !== null && !actor.siteIds.includes(body.siteId))
      throw new DomainError('not-allowed', 'It is not one of your sites.');
    const row = await tx.siteContact.create({ data: { shopId: actor.shopId, ...body } });
    return row.id;
  },
  update: async (tx, _actor, { id }, body: z.infer<typeof SiteContactChanges>) => {
    await tx.siteContact.update({ where: { id }, data: { ...body, version: { increment: 1 } } });
  },
  remove: async (tx, _actor, { id }) => {
    await tx.siteContact.delete({ where: { id } });
  },
};

export const SiteContactsController = resourceController(siteContacts);
