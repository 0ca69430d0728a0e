import { Id, Machine, MachineChanges, MachineClass, MachineCreate, PageQuery } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, revisitReadings, shopNow, wallClockOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import { siteScope } from '../access/actor.js';
import { type Resource, resourceController } from './resource.js';
import { columnOrNull, dateOrNull, given, hoursText } from './values.js';

type Row = Prisma.MachineGetPayload<{ include: { class: true } }>;

const machines: Resource<Row> = {
  path: 'machines',
  name: 'Machine',
  view: Machine,
  query: PageQuery.extend({ siteId: Id.optional() }),
  create: MachineCreate,
  changes: MachineChanges,
  readers: ['manager', 'technician', 'supervisor'],
  writers: ['manager'],
  order: 'code',
  scope: (actor) => siteScope(actor),
  where: ({ siteId }) => (siteId === undefined ? {} : { siteId }),
  table: (tx) => tx.machine,
  include: { class: true },
  toView: (row) => ({
    ...row,
    machineClass: row.class.code,
    inServiceOn: dateOrNull(row.inServiceOn),
    retiredOn: dateOrNull(row.retiredOn),
    meterRolloverHours: hoursText(row.meterRolloverHours),
  }),
  insert: async (tx, actor, body: z.infer<typeof MachineCreate>) => {
    const { machineClass, inServiceOn, retiredOn, ...fields } = body;
    requireServedFirst({ inServiceOn, retiredOn }, true);
    const { id } = await tx.machine.create({
      data: {
        shopId: actor.shopId,
        ...fields,
        classId: await classId(tx, machineClass),
        inServiceOn: columnOrNull(inServiceOn),
        retiredOn: columnOrNull(retiredOn),
      },
    });
    await writeSpindleSlots(tx, actor.shopId, id, fields.spindles);
    return id;
  },
  update: async (tx, actor, row, body: z.infer<typeof MachineChanges>, now) => {
    const { machineClass, inServiceOn, retiredOn, ...fields } = body;
    const days = { inServiceOn: dateOrNull(row.inServiceOn), retiredOn: dateOrNull(row.retiredOn) };
    requireServedFirst({ ...days, ...given({ inServiceOn, retiredOn }) }, retiredOn !== undefined);
    if (fields.siteId !== undefined && fields.siteId !== row.siteId) await recordMove(tx, actor.shopId, row, now);
    await tx.machine.update({
      where: { id: row.id },
      data: {
        ...fields,
        ...(machineClass === undefined ? {} : { classId: await classId(tx, machineClass) }),
        ...(inServiceOn === undefined ? {} : { inServiceOn: columnOrNull(inServiceOn) }),
        ...(retiredOn === undefined ? {} : { retiredOn: columnOrNull(retiredOn) }),
        version: { increment: 1 },
      },
    });
    if (fields.meterRolloverHours !== undefined) await revisitReadings(tx, [row.id]);
    if (fields.spindles !== undefined) await writeSpindleSlots(tx, actor.shopId, row.id, fields.spindles);
  },
};

interface ServiceDays {
  readonly inServiceOn: string | null;
  readonly retiredOn: string | null;
}

/**
 * @param isOfRetirement whether the day of retirement is told now
 * @throws DomainError invalid-input where a machine would be retired before it came into service
 */
function requireServedFirst({ inServiceOn, retiredOn }: ServiceDays, isOfRetirement: boolean): void {
  if (inServiceOn === null || retiredOn === null || inServiceOn <= retiredOn) return;
  throw new DomainError(
    'invalid-input',
    'A machine is not retired before it comes into service. Nothing was changed.',
    [
      isOfRetirement
        ? { pointer: '/retiredOn', detail: 'it lies before the day on which the machine came into service' }
        : { pointer: '/inServiceOn', detail: 'it lies after the day on which the machine was retired' },
    ],
  );
}

/** What it ran so far was run there: the forecast must not take it for the new site's doing. */
async function recordMove(tx: Tx, shopId: string, { id, siteId }: { id: string; siteId: string }, now: Date) {
  const { timeZone } = await tx.site.findUniqueOrThrow({ where: { id: siteId } });
  const untilDate = dateColumn(wallClockOf(await shopNow(tx, now), timeZone).slice(0, 10));
  await tx.machineMove.createMany({
    skipDuplicates: true,
    data: [{ shopId, machineId: id, fromSiteId: siteId, untilDate }],
  });
}

/** Slots are never taken away: their component lives are history. */
async function writeSpindleSlots(tx: Tx, shopId: string, machineId: string, spindles: number): Promise<void> {
  await tx.componentSlot.createMany({
    skipDuplicates: true,
    data: Array.from({ length: spindles }, (_, index) => ({
      shopId,
      machineId,
      name: `spindle ${index + 1}`,
      kind: 'spindle',
    })),
  });
}

async function classId(tx: Tx, code: string): Promise<string> {
  const found = await tx.machineClass.findFirst({ where: { code } });
  if (found) return found.id;
  const known = (await tx.machineClass.findMany({ orderBy: { code: 'asc' } })).map((each) => each.code);
  throw new DomainError('invalid-input', 'The machine class is not known.', [
    { pointer: '/machineClass', detail: `use one of ${known.join(', ')}` },
  ]);
}

const machineClasses: Resource<Prisma.MachineClassGetPayload<{ include: { preparationStates: true } }>> = {
  path: 'machine-classes',
  name: 'MachineClass',
  view: MachineClass,
  readers: ['manager', 'technician', 'supervisor'],
  writers: [],
  order: 'code',
  table: (tx) => tx.machineClass,
  include: { preparationStates: { orderBy: { code: 'asc' } } },
  toView: ({ preparationStates, ...row }) => ({ ...row, preparations: preparationStates }),
};

export const MachinesController = resourceController(machines);
export const MachineClassesController = resourceController(machineClasses);
