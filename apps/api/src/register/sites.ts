import { Blackout, BlackoutCreate, Id, PageQuery, Site, SiteChanges, SiteCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { siteScope } from '../access/actor.js';
import { type Resource, resourceController } from './resource.js';
import { requireTimeZone } from './values.js';
import { checkWindows, toWireWindow, type WireWindow } from './weekly-windows.js';

type Row = Prisma.SiteGetPayload<{ include: { siteAccessWindows: true } }>;

const sites: Resource<Row> = {
  path: 'sites',
  name: 'Site',
  view: Site,
  query: PageQuery.extend({ customerId: Id.optional() }),
  create: SiteCreate,
  changes: SiteChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager'],
  order: 'code',
  scope: (actor) => siteScope(actor, 'id'),
  where: ({ customerId }) => (customerId === undefined ? {} : { customerId }),
  table: (tx) => tx.site,
  include: { siteAccessWindows: true },
  toView: ({ siteAccessWindows, ...row }) => ({
    ...row,
    access: siteAccessWindows
      .map((each) => toWireWindow(each.weekday, each.openMinute, each.closeMinute))
      .sort((a, b) => a.weekday - b.weekday || (a.from < b.from ? -1 : 1)),
  }),
  insert: async (tx, actor, body: z.infer<typeof SiteCreate>) => {
    const { access, ...fields } = body;
    requireTimeZone(fields.timeZone);
    const { id } = await tx.site.create({ data: { shopId: actor.shopId, ...fields } });
    await writeAccess(tx, actor.shopId, id, access);
    return id;
  },
  update: async (tx, actor, row, body: z.infer<typeof SiteChanges>) => {
    const { access, ...fields } = body;
    if (fields.timeZone !== undefined) requireTimeZone(fields.timeZone);
    await tx.site.update({ where: { id: row.id }, data: { ...fields, version: { increment: 1 } } });
    if (access !== undefined) await writeAccess(tx, actor.shopId, row.id, access);
  },
};

async function writeAccess(tx: Tx, shopId: string, siteId: string, access: readonly WireWindow[]): Promise<void> {
  const windows = checkWindows(access, '/access');
  await tx.siteAccessWindow.deleteMany({ where: { siteId } });
  await tx.siteAccessWindow.createMany({
    data: windows.map(({ weekday, startMinute, endMinute }) => ({
      shopId,
      siteId,
      weekday,
      openMinute: startMinute,
      closeMinute: endMinute,
    })),
  });
}

const blackouts: Resource<Prisma.SiteBlackoutGetPayload<object>> = {
  path: 'blackouts',
  name: 'Blackout',
  view: Blackout,
  query: PageQuery.extend({ siteId: Id.optional() }),
  create: BlackoutCreate,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'supervisor'],
  order: 'fromDate',
  orderValue: (key) => new Date(key),
  scope: (actor) => siteScope(actor),
  where: ({ siteId }) => (siteId === undefined ? {} : { siteId }),
  table: (tx) => tx.siteBlackout,
  toView: (row) => ({
    id: row.id,
    siteId: row.siteId,
    from: dateText(row.fromDate),
    to: dateText(row.toDate),
    reason: row.reason,
  }),
  insert: async (tx, actor, body: z.infer<typeof BlackoutCreate>) => {
    if (actor.siteIds !== null && !actor.siteIds.includes(body.siteId)) {
      throw new DomainError('not-allowed', 'It is not one of your sites.');
    }
    const { from, to, ...rest } = body;
    const row = await tx.siteBlackout.create({
      data: { shopId: actor.shopId, ...rest, fromDate: dateColumn(from), toDate: dateColumn(to) },
    });
    return row.id;
  },
  remove: async (tx, _actor, row) => {
    await tx.siteBlackout.delete({ where: { id: row.id } });
  },
};

export const SitesController = resourceController(sites);
export const BlackoutsController = resourceController(blackouts);
