import { MachineQuery, Stopgap, StopgapChanges, StopgapCreate } from '@deckround/contracts';
import { dateColumn, dateText } from '@deckround/register-store';
import { emitEvent, type Prisma } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import type { Resource } from '../register/resource.js';
import { columnOrNull, dateOrNull, given, hoursText } from '../register/values.js';
import { refuseFutureDay } from './refuse-future.js';
import { requireMachines } from './require-machine.js';

export type StopgapRow = Prisma.StopgapGetPayload<object>;

/** Temporary repairs: how each is renewed and closed stands in a file of its own. */
export const stopgaps: Resource<StopgapRow> = {
  path: 'stopgaps',
  name: 'Stopgap',
  view: Stopgap,
  query: MachineQuery,
  create: StopgapCreate,
  changes: StopgapChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager', 'technician'],
  order: 'madeOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ({ machineId }) => given({ machineId }),
  table: (tx) => tx.stopgap,
  toView: (row) => ({
    ...row,
    madeOn: dateText(row.madeOn),
    limitHours: hoursText(row.limitHours),
    limitOn: dateOrNull(row.limitOn),
    partQuantity: String(row.partQuantity),
    partExpectedOn: dateOrNull(row.partExpectedOn),
    renewedOn: dateOrNull(row.renewedOn),
    closedOn: dateOrNull(row.closedOn),
  }),
  insert: async (tx, actor, body: z.infer<typeof StopgapCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    await refuseFutureDay(tx, body.machineId, '/madeOn', body.madeOn, now);
    const { madeOn, limitOn, partExpectedOn, ...fields } = body;
    const row = await tx.stopgap.create({
      data: {
        shopId: actor.shopId,
        ...fields,
        madeOn: dateColumn(madeOn),
        limitOn: columnOrNull(limitOn),
        partExpectedOn: columnOrNull(partExpectedOn),
        recordedBy: actor.kind === 'person' ? actor.id : null,
      },
    });
    await tx.followUp.create({
      data: {
        shopId: actor.shopId,
        machineId: body.machineId,
        stopgapId: row.id,
        owed: body.description,
        dueOn: columnOrNull(limitOn),
      },
    });
    const told = { stopgapId: row.id, machineId: body.machineId, limitHours: body.limitHours, limitOn };
    await emitEvent(tx, actor.shopId, 'stopgap.recorded', told, row.recordedAt);
    return row.id;
  },
  update: async (tx, _actor, row, { partExpectedOn }: z.infer<typeof StopgapChanges>) => {
    await tx.stopgap.update({
      where: { id: row.id },
      data: { partExpectedOn: columnOrNull(partExpectedOn!), version: { increment: 1 } },
    });
  },
};
