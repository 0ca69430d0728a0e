import { randomUUID } from 'node:crypto';
import { stoppedClock } from '@deckround/platform';
import type { Answer } from './api-client.js';
import { freshDatabase } from './database.js';
import { plannedShop } from './planned-shop.js';
import { runningApi } from './running-api.js';

/** Friday before the small shop's week. */
const FRIDAY = '2026-06-05T15:00:00Z';

/** The small shop, planned, on the Friday before its week; with its manager, and a technician who records from the field. */
export async function fieldShop() {
  const database = await freshDatabase();
  const clock = stoppedClock(FRIDAY);
  const api = await runningApi(database, undefined, clock);
  const shop = await plannedShop(database, api);
  const [manager, technician] = [await api.signIn('manager'), await api.signIn('technician')];
  const at = clock.now().toISOString();
  return {
    ...{ database, clock, shop, manager, technician, signIn: api.signIn },
    /** @param machineId null = it is about the visit alone */
    record: (fact: object, visitId: string | null, machineId: string | null): Promise<Answer> =>
      technician.post('/v1/field-records', {
        ...{ id: randomUUID(), deviceAt: at, sentAt: at },
        ...{ visitId, machineId, fact },
      }),
    accept: (recordId: string): Promise<Answer> =>
      manager.send('POST', `/v1/field-records/${recordId}/decision`, { decision: 'accept' }, { 'if-match': '"1"' }),
    stop: async () => {
      await api.service.stop();
      await database.drop();
    },
  };
}

export type FieldShop = Awaited<ReturnType<typeof fieldShop>>;

/** Titles of the work that a visit's document charges. */
export async function chargedWork({ database }: Pick<FieldShop, 'database'>, visitId: string): Promise<string[]> {
  const row = await database.store.asOwner((tx) => tx.chargeDocument.findFirstOrThrow({ where: { visitId } }));
  return (row.record as unknown as { record: { work: { title: string }[] } }).record.work.map((each) => each.title);
}
