import { type CatalogueTorque, MANUAL_FIRST } from '@deckround/catalogue';
import { Code, PageQuery, ServiceItem, ServiceItemChanges } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { type Resource, resourceController } from './resource.js';
import { hoursText } from './values.js';

// International foot and pound: 1 ft·lbf = 1.3558179483314004 N·m, to the digits that a number holds.
const NM_PER_FT_LB = 1.3558179483314;

type Row = Prisma.ServiceItemGetPayload<{
  include: { plan: { include: { class: true } }; serviceItemParts: { include: { part: true } } };
}>;

const serviceItems: Resource<Row> = {
  path: 'service-items',
  name: 'ServiceItem',
  view: ServiceItem,
  query: PageQuery.extend({ machineClass: Code.optional() }),
  changes: ServiceItemChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager'],
  order: 'code',
  where: ({ machineClass }) => (machineClass === undefined ? {} : { plan: { class: { code: machineClass } } }),
  table: (tx) => tx.serviceItem,
  include: { plan: { include: { class: true } }, serviceItemParts: { include: { part: true } } },
  toView: ({ plan, serviceItemParts, ...row }) => ({
    ...row,
    machineClass: plan.class.code,
    intervalHours: hoursText(row.intervalHours),
    firstHours: hoursText(row.firstHours),
    toleranceHours: String(row.toleranceHours),
    parts: serviceItemParts.map((each) => ({
      partId: each.partId,
      code: each.part.code,
      quantity: String(each.quantity),
      perSpindle: each.perSpindle,
    })),
    torques: torquesOf(row.torques),
    manualFirst: MANUAL_FIRST,
  }),
  update: async (tx, _actor, row, body: z.infer<typeof ServiceItemChanges>) => {
    const { intervalHours, intervalDays, firstHours, seasonEvent } = { ...row, ...body };
    if (intervalHours === null && intervalDays === null && firstHours === null && seasonEvent === null)
      throw new DomainError('invalid-input', 'The work would never fall due.', [
        { pointer: '/intervalHours', detail: 'keep an interval in hours or days, or switch the item off' },
      ]);
    await tx.serviceItem.update({ where: { id: row.id }, data: { ...body, version: { increment: 1 } } });
  },
};

/** Torques in both units. */
export function torquesOf(stored: Prisma.JsonValue) {
  return (stored as unknown as CatalogueTorque[]).map((torque) => ({
    ...torque,
    nm: torque.ftLb === null ? null : torque.ftLb.map((value) => Math.round(value * NM_PER_FT_LB * 10) / 10),
  }));
}

export const ServiceItemsController = resourceController(serviceItems);
