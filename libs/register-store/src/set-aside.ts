import { readReadings, type Tx, writeVerdicts } from '@deckround/store';
import { cleanReadings } from '@deckround/usage';
import { dateText } from './local-time.js';

export interface SetAsideResult {
  readonly readings: number;
  readonly setAside: number;
  readonly changed: number;
  /** Drops to near zero that later readings confirm: a new meter nobody told of. */
  readonly foundMeterChanges: number;
}

/**
 * Looks at all readings of the machines again and sets aside those that cannot be true, with reason and suggestion;
 * earlier decisions are revisited, except those a person made. Nothing is ever dropped.
 */
export async function revisitReadings(tx: Tx, machineIds: readonly string[] | 'all'): Promise<SetAsideResult> {
  const rows = await readReadings(tx, machineIds);
  const changes = await tx.meterChange.findMany({
    where: machineIds === 'all' ? {} : { machineId: { in: [...machineIds] } },
  });
  const isRefused = (row: (typeof rows)[number]) => row.decided && row.status === 'set-aside';
  const cleaned = cleanReadings(
    rows.filter((row) => !isRefused(row)),
    changes.map((change) => ({
      machineId: change.machineId,
      changedAt: dateText(change.changedOn),
      oldHours: Number(change.oldHours),
      newHours: Number(change.newHours),
    })),
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
  const stands = rows.filter((row) => (row.decided ? row.status === 'set-aside' : verdicts.has(row.id)));
  return {
    readings: rows.length,
    setAside: stands.length,
    changed: differing.length,
    foundMeterChanges: cleaned.proposedMeterChanges.length,
  };
}
