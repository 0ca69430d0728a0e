import { emitEvent, readReadings, type Tx, writeVerdicts } from '@deckround/store';
import { cleanReadings, type MeterChange } from '@deckround/usage';
import { dateColumn, dateText } from './local-time.js';

export interface SetAsideResult {
  readonly readings: number;
  readonly setAside: number;
  readonly changed: number;
  /** Drops to near zero that later readings confirm: a new meter nobody told of. */
  readonly foundMeterChanges: number;
}

/**
 * Looks at all readings of the machines again and sets aside those that cannot be true, with reason and suggestion;
 * earlier decisions are revisited, except those a person made. Nothing is ever dropped. Meter changes that nobody told
 * of are kept as proposals. With `now` other systems are told of what was set aside; an import tells nobody.
 */
export async function revisitReadings(
  tx: Tx,
  machineIds: readonly string[] | 'all',
  now: Date | null = null,
): Promise<SetAsideResult> {
  const rows = await readReadings(tx, machineIds);
  const known = await tx.meterChange.findMany({
    where: machineIds === 'all' ? {} : { machineId: { in: [...machineIds] } },
  });
  const metered = await tx.machine.findMany({
    where: { meterRolloverHours: { not: null }, ...(machineIds === 'all' ? {} : { id: { in: [...machineIds] } }) },
  });
  const told = known.filter((change) => change.origin === 'told');
  const isRefused = (row: (typeof rows)[number]) => row.decided && row.status === 'set-aside';
  const cleaned = cleanReadings(
    rows.filter((row) => !isRefused(row)).map((row) => ({ ...row, confirmed: row.decided })),
    told.map((change) => ({
      machineId: change.machineId,
      changedAt: dateText(change.changedOn),
      oldHours: Number(change.oldHours),
      newHours: Number(change.newHours),
    })),
    { machines: metered.map(({ id, meterRolloverHours }) => ({ id, meterRolloverHours: Number(meterRolloverHours) })) },
  );
  const verdicts = new Map(cleaned.setAside.map((each) => [each.readingId, each]));
  const differing = rows.filter((row) => !row.decided && (verdicts.get(row.id)?.code ?? null) !== row.reasonCode);
  if (differing.length > 0) {
    await writeVerdicts(
      tx,
      differing.map(({ id }) => {
        const verdict = verdicts.get(id);
        return {
          readingId: id,
          code: verdict?.code ?? null,
          reason: verdict?.reason ?? null,
          suggestedHours: verdict?.suggestedHours ?? null,
        };
      }),
    );
  }
  if (now) await tellSetAside(tx, differing, verdicts, now);
  await proposeMeterChanges(
    tx,
    known.filter((change) => change.origin === 'found'),
    cleaned.proposedMeterChanges,
  );
  const stands = rows.filter((row) => (row.decided ? row.status === 'set-aside' : verdicts.has(row.id)));
  return {
    readings: rows.length,
    setAside: stands.length,
    changed: differing.length,
    foundMeterChanges: cleaned.proposedMeterChanges.length,
  };
}

async function tellSetAside(
  tx: Tx,
  differing: readonly { readonly id: string; readonly machineId: string }[],
  verdicts: ReadonlyMap<string, { readonly code: string }>,
  now: Date,
): Promise<void> {
  for (const { id, machineId } of differing) {
    const verdict = verdicts.get(id);
    if (!verdict) continue;
    const { shopId } = await tx.machine.findUniqueOrThrow({ where: { id: machineId }, select: { shopId: true } });
    await emitEvent(tx, shopId, 'reading.set-aside', { readingId: id, machineId, reason: verdict.code }, now);
  }
}

interface FoundChange {
  readonly id: string;
  readonly machineId: string;
  readonly changedOn: Date;
  readonly oldHours: unknown;
  readonly newHours: unknown;
}

/** Proposals follow the readings: those that still stand keep their row, others go, new ones come. */
async function proposeMeterChanges(
  tx: Tx,
  present: readonly FoundChange[],
  proposed: readonly MeterChange[],
): Promise<void> {
  const key = (machineId: string, date: string, oldHours: unknown, newHours: unknown) =>
    [machineId, date, Number(oldHours).toFixed(2), Number(newHours).toFixed(2)].join(' ');
  const wanted = new Map(
    proposed.map((each) => [key(each.machineId, each.changedAt, each.oldHours, each.newHours), each]),
  );
  const gone: string[] = [];
  for (const row of present) {
    if (!wanted.delete(key(row.machineId, dateText(row.changedOn), row.oldHours, row.newHours))) gone.push(row.id);
  }
  if (gone.length > 0) await tx.meterChange.deleteMany({ where: { id: { in: gone } } });
  if (wanted.size === 0) return;
  const { id: shopId } = await tx.shop.findFirstOrThrow({ select: { id: true } });
  await tx.meterChange.createMany({
    skipDuplicates: true, // a change told for that very day stands
    data: [...wanted.values()].map((each) => ({
      shopId,
      machineId: each.machineId,
      changedOn: dateColumn(each.changedAt),
      oldHours: each.oldHours,
      newHours: each.newHours,
      origin: 'found',
    })),
  });
}
