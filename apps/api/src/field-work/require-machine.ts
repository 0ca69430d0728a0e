import { DomainError } from '@deckround/platform';
import type { Tx } from '@deckround/store';
import { type Actor, siteScope } from '../access/actor.js';

/** @throws DomainError not-found unless every machine is there and within what the actor may see */
export async function requireMachines(tx: Tx, actor: Actor, machineIds: readonly string[]): Promise<void> {
  const count = await tx.machine.count({ where: { id: { in: [...machineIds] }, ...siteScope(actor) } });
  if (count !== machineIds.length)
    throw new DomainError('not-found', 'There is no such machine, or it is not yours to see. Nothing was recorded.');
}

/** The slot of a machine by name, made when new. */
export async function slotId(tx: Tx, shopId: string, machineId: string, name: string | null): Promise<string | null> {
  if (name === null) return null;
  const found = await tx.componentSlot.findFirst({ where: { machineId, name } });
  return found?.id ?? (await tx.componentSlot.create({ data: { shopId, machineId, name, kind: 'other' } })).id;
}

/** @throws DomainError invalid-input when the machine's class has no such service item */
export async function requireItemCode(tx: Tx, machineId: string, code: string): Promise<void> {
  const machine = await tx.machine.findUniqueOrThrow({ where: { id: machineId } });
  const codes = await tx.serviceItem.findMany({
    where: { plan: { classId: machine.classId } },
    select: { code: true },
    orderBy: { code: 'asc' },
  });
  if (codes.some((each) => each.code === code)) return;
  throw new DomainError('invalid-input', 'The machine has no such service item.', [
    { pointer: '/itemCode', detail: `use one of ${codes.map((each) => each.code).join(', ')}` },
  ]);
}
