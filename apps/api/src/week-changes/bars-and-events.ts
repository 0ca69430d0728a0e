import { Id, PageQuery, SiteEvent, SiteEventCreate, VisitBar, VisitBarCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { clockOf } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { siteScope } from '../access/actor.js';
import { type Resource, resourceController } from '../register/resource.js';
import { columnOrNull, dateOrNull } from '../register/values.js';

const SiteQuery = PageQuery.extend({ siteId: Id.optional() });
const ofSite = ({ siteId }: Record<string, unknown>) => (siteId === undefined ? {} : { siteId });

const bars: Resource<Prisma.VisitBarGetPayload<object>> = {
  path: 'visit-bars',
  name: 'VisitBar',
  view: VisitBar,
  query: SiteQuery,
  create: VisitBarCreate,
  readers: ['manager'],
  writers: ['manager'],
  order: 'siteId',
  where: ofSite,
  table: (tx) => tx.visitBar,
  toView: ({ barDate, ...row }) => ({ ...row, date: dateOrNull(barDate) }),
  insert: async (tx, actor, body: z.infer<typeof VisitBarCreate>) => {
    const { date, ...rest } = body;
    const row = await tx.visitBar.create({ data: { shopId: actor.shopId, ...rest, barDate: columnOrNull(date) } });
    return row.id;
  },
  remove: async (tx, _actor, row) => {
    await tx.visitBar.delete({ where: { id: row.id } });
  },
};

const events: Resource<Prisma.SiteEventGetPayload<object>> = {
  path: 'site-events',
  name: 'SiteEvent',
  view: SiteEvent,
  query: SiteQuery,
  create: SiteEventCreate,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'supervisor'],
  order: 'eventDate',
  orderValue: (key) => new Date(key),
  scope: (actor) => siteScope(actor),
  where: ofSite,
  table: (tx) => tx.siteEvent,
  toView: (row) => ({
    id: row.id,
    siteId: row.siteId,
    date: dateText(row.eventDate),
    from: clockOf(row.fromMinute),
    name: row.name,
  }),
  insert: async (tx, actor, body: z.infer<typeof SiteEventCreate>) => {
    if (actor.siteIds !== null && !actor.siteIds.includes(body.siteId)) {
      throw new DomainError('not-allowed', 'It is not one of your sites.');
    }
    const [hour, minute] = body.from.split(':').map(Number) as [number, number];
    const row = await tx.siteEvent.create({
      data: {
        shopId: actor.shopId,
        siteId: body.siteId,
        eventDate: dateColumn(body.date),
        fromMinute: hour * 60 + minute,
        name: body.name,
      },
    });
    return row.id;
  },
  remove: async (tx, _actor, row) => {
    await tx.siteEvent.delete({ where: { id: row.id } });
  },
};

export const VisitBarsController = resourceController(bars);
export const SiteEventsController = resourceController(events);
