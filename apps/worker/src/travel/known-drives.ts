import { createHash } from 'node:crypto';
import type { KnownDrives } from '@deckround/planning';
import type { Register } from '@deckround/register';
import type { Tx } from '@deckround/store';
import type { WorkerContext } from '../context.js';
import { askRoadServer, type Drives } from './road-server.js';

/** A table so old is asked for again; until the answer comes, or if none does, the old one serves. */
const FRESH_DAYS = 30;
/** Planning waits no longer than this, milliseconds. */
const PATIENCE = 8000;

/**
 * Drives between all sites and bases of the shop from the road server, where one is set: kept in the database, asked for
 * again when places have changed or the answer is old. Never stops planning: without an answer drives are estimated.
 *
 * @returns null drives = to be estimated; `warning` says why, when that was not wanted
 */
export async function knownDrives(
  { config, store, clock, logger }: WorkerContext,
  shopId: string,
  register: Register,
): Promise<{ drives: KnownDrives | null; warning: string | null }> {
  const root = config.TRAVEL_TABLE_URL;
  if (root === undefined) return { drives: null, warning: null };
  const places = [...register.sites, ...register.technicians].map(({ id, latitude, longitude }) => ({
    ...{ id, latitude, longitude },
  }));
  const positionsHash = createHash('sha256')
    .update(JSON.stringify([root, places]))
    .digest('hex');
  const withPlaces = (drives: Drives): KnownDrives => ({ places: places.map((place) => place.id), ...drives });
  const kept = await store.inShop(shopId, (tx) => tx.driveTable.findFirst({ where: { positionsHash } }));
  const now = clock.now();
  if (kept && now.getTime() - kept.fetchedAt.getTime() < FRESH_DAYS * 86_400_000)
    return { drives: withPlaces(kept.drives as unknown as Drives), warning: null };
  try {
    const drives = await askRoadServer(root, places, AbortSignal.timeout(PATIENCE));
    await store.inShop(shopId, (tx) => keep(tx, shopId, positionsHash, drives, now));
    return { drives: withPlaces(drives), warning: null };
  } catch (error) {
    logger.warn('travel.no-table', { reason: String(error) });
    if (kept) {
      const warning = 'The road server gave no answer: its drive times of more than a month ago were used.';
      return { drives: withPlaces(kept.drives as unknown as Drives), warning };
    }
    return { drives: null, warning: 'The road server gave no answer: drive times were estimated from distances.' };
  }
}

async function keep(tx: Tx, shopId: string, positionsHash: string, drives: Drives, fetchedAt: Date): Promise<void> {
  const data = { drives: { ...drives }, fetchedAt };
  await tx.driveTable.upsert({
    where: { shopId_positionsHash: { shopId, positionsHash } },
    create: { shopId, positionsHash, ...data },
    update: data,
  });
}
