import {
  ComponentLife,
  ComponentLifeCreate,
  ComponentSlot,
  Id,
  MachineOverride,
  MachineOverrideCreate,
  MachineQuery,
  PageQuery,
  RegisterImport,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import { requireMachines } from '../field-work/require-machine.js';
import { type Resource, resourceController } from './resource.js';
import { columnOrNull, dateOrNull, hoursText } from './values.js';

const ofMachine = ({ machineId }: Record<string, unknown>) => (machineId === undefined ? {} : { machineId });

const overrides: Resource<Prisma.MachineItemOverrideGetPayload<object>> = {
  path: 'machine-overrides',
  name: 'MachineOverride',
  view: MachineOverride,
  query: MachineQuery,
  create: MachineOverrideCreate,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'id',
  where: ofMachine,
  table: (tx) => tx.machineItemOverride,
  toView: (row) => ({ ...row, intervalHours: hoursText(row.intervalHours) }),
  insert: async (tx, actor, body: z.infer<typeof MachineOverrideCreate>) => {
    await requireMachines(tx, actor, [body.machineId]);
    const machine = await tx.machine.findUniqueOrThrow({ where: { id: body.machineId } });
    const item = await tx.serviceItem.findFirst({ where: { id: body.itemId, plan: { classId: machine.classId } } });
    if (!item) {
      throw new DomainError('invalid-input', 'The machine’s class has no such service item.', [
        { pointer: '/itemId', detail: 'use an item of GET /v1/service-items?machineClass=…' },
      ]);
    }
    return (await tx.machineItemOverride.create({ data: { shopId: actor.shopId, ...body } })).id;
  },
  remove: async (tx, _actor, row) => {
    await tx.machineItemOverride.delete({ where: { id: row.id } });
  },
};

const componentSlots: Resource<Prisma.ComponentSlotGetPayload<object>> = {
  path: 'component-slots',
  name: 'ComponentSlot',
  view: ComponentSlot,
  query: MachineQuery,
  readers: ['manager', 'technician', 'supervisor'],
  writers: [],
  order: 'name',
  scope: machineScope,
  where: ofMachine,
  table: (tx) => tx.componentSlot,
  toView: (row) => row,
};

const componentLives: Resource<Prisma.ComponentLifeGetPayload<object>> = {
  path: 'component-lives',
  name: 'ComponentLife',
  view: ComponentLife,
  query: PageQuery.extend({ slotId: Id.optional() }),
  create: ComponentLifeCreate,
  readers: ['manager', 'technician'],
  writers: ['manager', 'technician'],
  order: 'id',
  where: ({ slotId }) => (slotId === undefined ? {} : { slotId }),
  table: (tx) => tx.componentLife,
  toView: (row) => ({
    ...row,
    fittedOn: dateOrNull(row.fittedOn),
    fittedHours: hoursText(row.fittedHours),
    removedOn: dateOrNull(row.removedOn),
    removedHours: hoursText(row.removedHours),
  }),
  insert: async (tx, actor, body: z.infer<typeof ComponentLifeCreate>) => {
    const row = await tx.componentLife.create({
      data: {
        shopId: actor.shopId,
        ...body,
        fittedOn: columnOrNull(body.fittedOn),
        removedOn: columnOrNull(body.removedOn),
      },
    });
    return row.id;
  },
};

const registerImports: Resource<Prisma.RegisterImportGetPayload<object>> = {
  path: 'register-imports',
  name: 'RegisterImport',
  view: RegisterImport,
  readers: ['manager'],
  writers: [],
  order: 'importedAt',
  orderValue: (key) => new Date(key),
  table: (tx) => tx.registerImport,
  toView: (row) => ({ ...row, importedAt: row.importedAt.toISOString() }),
};

export const MACHINE_DETAIL_CONTROLLERS = [overrides, componentSlots, componentLives, registerImports].map((each) =>
  resourceController(each as Resource<{ id: string }>),
);
