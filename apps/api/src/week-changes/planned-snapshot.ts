import type { PlanningSnapshot } from '@deckround/planning';
import type { Tx } from '@deckround/store';

/** Kept snapshots have so many items together, at most: nearly a kilobyte of text each. The newest stays whatever its size. */
const MOST_ITEMS = 100_000;
const kept = new Map<string, PlanningSnapshot>();

/**
 * What a plan was made of. That of a large shop is tens of megabytes, longer to read than a move is to price, and never
 * changes: the last ones looked at are kept, by the hash of what is in them.
 */
export async function plannedSnapshot(tx: Tx, runId: string): Promise<PlanningSnapshot> {
  const where = { id: runId };
  const { snapshotHash } = await tx.planRun.findUniqueOrThrow({ where, select: { snapshotHash: true } });
  const known = kept.get(snapshotHash!);
  const planned = known ?? (await readSnapshot(tx, runId));
  // Set anew, so that what was looked at lately is forgotten last.
  kept.delete(snapshotHash!);
  kept.set(snapshotHash!, planned);
  if (!known) forget();
  return planned;
}

async function readSnapshot(tx: Tx, runId: string): Promise<PlanningSnapshot> {
  const { snapshot } = await tx.planRun.findUniqueOrThrow({ where: { id: runId }, select: { snapshot: true } });
  return snapshot as unknown as PlanningSnapshot;
}

function forget(): void {
  let items = [...kept.values()].reduce((sum, each) => sum + each.items.length, 0);
  for (const [hash, oldest] of kept) {
    if (items <= MOST_ITEMS || kept.size === 1) return;
    kept.delete(hash);
    items -= oldest.items.length;
  }
}
