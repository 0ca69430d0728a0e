import type { Tx } from '@deckround/store';
import { cleanReadings } from '@deckround/usage';
import { dateText, wallClockOf } from './local-time.js';

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
export async function revisitReadings(
  tx: Tx,
  shopId: string,
  machineIds: readonly string[] | 'all',
): Promise<SetAsideResult> {
  const ofMachines = machineIds === 'all' ? {} : { machineId: { in: [...machineIds] } };
  const machines = await tx.machine.findMany({
    where: machineIds === 'all' ? {} : { id: { in: [...machineIds] } },
    select: { id: true, inServiceOn: true, site: { select: { timeZone: true } } },
  });
  const zones = new Map(machines.map((machine) => [machine.id, machine.site.timeZone]));
  const rows = await tx.reading.findMany({ where: ofMachines, orderBy: [{ machineId: 'asc' }, { readAt: 'asc' }] });
  const changes = await tx.meterChange.findMany({ where: { ...ofMachines, origin: 'told' } });
  const judged = rows.filter((row) => row.decidedAt === null);
  const refused = new Set(
    rows.filter((row) => row.decidedAt !== null && row.status === 'set-aside').map((row) => row.id),
  );
  const cleaned = cleanReadings(
    rows
      .filter((row) => !refused.has(row.id))
      .map((row) => ({
        id: row.id,
        machineId: row.machineId,
        readAt: wallClockOf(row.readAt, zones.get(row.machineId)!),
        hours: Number(row.hours),
        source: row.source,
      })),
    changes.map((change) => ({
      machineId: change.machineId,
      changedAt: dateText(change.changedOn),
      oldHours: Number(change.oldHours),
      newHours: Number(change.newHours),
    })),
  );
  const verdicts = new Map(cleaned.setAside.map((each) => [each.readingId, each]));
  const differing = judged.filter((row) => (verdicts.get(row.id)?.code ?? null) !== row.reasonCode);
  if (differing.length > 0) {
    const verdictOf = (id: string) => verdicts.get(id) ?? null;
    await tx.$executeRaw`
      update reading set
        status = case when new.code is null then 'accepted' else 'set-aside' end,
        reason_code = new.code, reason = new.reason, suggested_hours = new.suggested, version = reading.version + 1
      from unnest(
        ${differing.map((row) => row.id)}::uuid[],
        ${differing.map((row) => verdictOf(row.id)?.code ?? null)}::text[],
        ${differing.map((row) => verdictOf(row.id)?.reason ?? null)}::text[],
        ${differing.map((row) => verdictOf(row.id)?.suggestedHours ?? null)}::numeric[]
      ) as new (id, code, reason, suggested)
      where reading.id = new.id and reading.shop_id = ${shopId}::uuid`;
  }
  return {
    readings: rows.length,
    setAside: verdicts.size + refused.size,
    changed: differing.length,
    foundMeterChanges: cleaned.proposedMeterChanges.length,
  };
}
