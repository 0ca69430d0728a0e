import { FailureCause, FailureCauseCreate, MachineQuery } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import { refuseFutureDay } from '../field-work/refuse-future.js';
import { requireMachines } from '../field-work/require-machine.js';
import { type Resource, resourceController } from '../register/resource.js';

/** One event behind several failures, recorded once: their lives then count as one failure. */
const failureCauses: Resource<Prisma.FailureCauseGetPayload<object>> = {
  path: 'failure-causes',
  name: 'FailureCause',
  view: FailureCause,
  query: MachineQuery,
  create: FailureCauseCreate,
  readers: ['manager', 'technician'],
  writers: ['manager', 'technician'],
  order: 'happenedOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ({ machineId }) => (machineId === undefined ? {} : { machineId }),
  table: (tx) => tx.failureCause,
  toView: (row) => ({ ...row, happenedOn: dateText(row.happenedOn) }),
  insert: async (tx, actor, body: z.infer<typeof FailureCauseCreate>, now) => {
    await requireMachines(tx, actor, [body.machineId]);
    await refuseFutureDay(tx, body.machineId, '/happenedOn', body.happenedOn, now);
    const { completionIds, happenedOn, ...fields } = body;
    const row = await tx.failureCause.create({
      data: { shopId: actor.shopId, ...fields, happenedOn: dateColumn(happenedOn) },
    });
    const { count } = await tx.completion.updateMany({
      where: { id: { in: completionIds }, machineId: body.machineId, outcome: 'failed' },
      data: { causeId: row.id },
    });
    if (count !== new Set(completionIds).size)
      throw new DomainError('invalid-input', 'Not all of these are failures of that machine. Nothing was recorded.', [
        { pointer: '/completionIds', detail: 'use completions of the machine with outcome failed' },
      ]);
    return row.id;
  },
};

export const FailureCausesController = resourceController(failureCauses as unknown as Resource<{ id: string }>);
