import { WAITING_CENTS_PER_DAY } from '@deckround/register';
import type { Prisma, Tx } from '@deckround/store';

/** Service work that is owed falls due within so many days. Own choice. */
const OWED_WITHIN_DAYS = 7;

interface OwedWork {
  readonly title: string;
  /** The shop's code of the service item; null = it is none of them. */
  readonly itemCode: string | null;
  /** Which of several places; null = it has one, or all are meant. */
  readonly slot: string | null;
  readonly minutes: number;
}

interface FoundPlace {
  readonly machineId: string;
  readonly code: string;
  readonly slot: string | null;
}

/** Code of work that is none of the shop's service items. */
export const FOUND = 'found';

/**
 * Work seen at a machine that somebody has to come back for. A service item falls due soon, as after any finding; what the
 * catalogue does not know waits as a call of its own, which the next plan takes up. The call has the finding's id, so that
 * answering it closes what is owed.
 */
export async function oweWork(
  tx: Tx,
  found: Pick<Prisma.FindingUncheckedCreateInput, 'shopId' | 'machineId' | 'visitId' | 'foundOn' | 'recordedBy'>,
  { title, itemCode, slot, minutes }: OwedWork,
  seenAt: Date,
): Promise<void> {
  const { shopId, machineId } = found;
  const due = itemCode === null ? {} : { dueWithinDays: OWED_WITHIN_DAYS };
  const { id } = await tx.finding.create({
    data: { ...found, itemCode: itemCode ?? FOUND, slot, observation: title, ...due },
  });
  await tx.followUp.create({ data: { shopId, machineId, findingId: id, owed: title } });
  if (itemCode !== null) return;
  await tx.roadCall.create({
    data: {
      ...{ id, shopId, machineId, minutes, calledAt: seenAt, symptom: title, usable: true },
      downCentsPerDay: WAITING_CENTS_PER_DAY.usable,
    },
  });
}

/** The service item was done: what findings of it owed is owed no more. */
export async function settleFindings(tx: Tx, work: FoundPlace, closedOn: Date, visitId: string | null): Promise<void> {
  await close(tx, await findingsOf(tx, work), closedOn, visitId);
}

/** The service item was not done after all: what was closed by it is owed as before. */
export async function unsettleFindings(tx: Tx, work: FoundPlace, closedOn: Date): Promise<void> {
  await tx.followUp.updateMany({
    where: { findingId: { in: await findingsOf(tx, work) }, closedOn },
    data: { closedOn: null, visitId: null, version: { increment: 1 } },
  });
}

async function findingsOf(tx: Tx, { machineId, code, slot }: FoundPlace): Promise<string[]> {
  const rows = await tx.finding.findMany({
    where: { machineId, itemCode: code, ...(slot !== null && { OR: [{ slot }, { slot: null }] }) },
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

/** The call was answered: so is the finding that it stood for, if any. */
export async function settleCall(tx: Tx, callId: string, closedOn: Date, visitId: string | null): Promise<void> {
  await close(tx, [callId], closedOn, visitId);
}

async function close(tx: Tx, findingIds: string[], closedOn: Date, visitId: string | null): Promise<void> {
  await tx.followUp.updateMany({
    where: { findingId: { in: findingIds }, closedOn: null },
    data: { closedOn, visitId, version: { increment: 1 } },
  });
}
