import { MeterChange, MeterChangeCreate, MeterChangeQuery } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText, revisitReadings, shopNow } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { z } from 'zod';
import { machineScope } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import type { Resource } from '../register/resource.js';
import { given } from '../register/values.js';
import { refuseFutureDay } from './refuse-future.js';
import { requireMachines } from './require-machine.js';

type Row = Prisma.MeterChangeGetPayload<object>;

/** New hour meters: those told by a person, and those that the readings alone suggest. */
export const meterChanges: Resource<Row> = {
  path: 'meter-changes',
  name: 'MeterChange',
  view: MeterChange,
  query: MeterChangeQuery,
  create: MeterChangeCreate,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'changedOn',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ({ machineId, origin }) => given({ machineId, origin }),
  table: (tx) => tx.meterChange,
  toView: (row) => ({
    ...row,
    changedOn: dateText(row.changedOn),
    oldHours: String(row.oldHours),
    newHours: String(row.newHours),
    sentence: sentenceOf(row),
  }),
  insert: async (tx, actor, { machineId, ...body }: z.infer<typeof MeterChangeCreate>, now) => {
    await requireMachines(tx, actor, [machineId]);
    await refuseFutureDay(tx, machineId, '/changedOn', body.changedOn, now);
    const changedOn = dateColumn(body.changedOn);
    await tx.meterChange.deleteMany({ where: { machineId, changedOn, origin: 'found' } });
    const row = await tx.meterChange.create({ data: { shopId: actor.shopId, machineId, ...body, changedOn } });
    await revisitReadings(tx, [machineId]);
    await audit(tx, actor, { ...act(row, 'told'), detail: toldOf(row) }, await shopNow(tx, now));
    return row.id;
  },
  remove: async (tx, actor, row, now) => {
    if (row.origin === 'found') {
      throw new DomainError(
        'conflict',
        'The readings themselves suggest this change: set aside those that are wrong, and it goes with them.',
      );
    }
    await tx.meterChange.delete({ where: { id: row.id } });
    await revisitReadings(tx, [row.machineId]);
    await audit(tx, actor, { ...act(row, 'taken-back'), detail: toldOf(row) }, await shopNow(tx, now));
  },
};

const act = ({ id, machineId }: Row, what: string) => ({
  action: `meter-change.${what}`,
  ...{ subjectKind: 'meter-change', subjectId: id, machineId },
});

const toldOf = ({ changedOn, oldHours, newHours }: Row) => ({
  on: dateText(changedOn),
  ...{ oldHours: String(oldHours), newHours: String(newHours) },
});

function sentenceOf({ changedOn, oldHours, newHours, origin }: Row): string {
  const day = dateText(changedOn);
  return origin === 'told'
    ? `The meter was changed on ${day}: the old one had come to ${oldHours} h, the new one began at ${newHours} h.`
    : `What was read on ${day} does not follow the ${oldHours} h before it, yet later readings go on from there: probably a new meter that began at ${newHours} h. Nobody has told of it.`;
}
