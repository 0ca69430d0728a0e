import { parseConfig, stoppedClock } from '@deckround/platform';
import { emitEvent } from '@deckround/store';
import { createProcessors } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedVisit } from '../support/finished-visit.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';
import { workerContext } from '../support/worker-context.js';

let database: TestDatabase;
let shop: SmallShop;
beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
});
afterAll(() => database.drop());

describe('a shop whose clock stands still in the past', () => {
  it('has what cannot be delivered tried once and put off, not tried without end', async () => {
    const { store } = database;
    const { shopId } = shop;
    const clock = stoppedClock('2026-06-05T12:00:00Z');
    const config = parseConfig({ SMTP_URL: 'smtp://127.0.0.1:1', WEBHOOK_PRIVATE: 'yes' }); // nobody is there
    const processors = createProcessors(workerContext(store, { config, clock }));
    const visit = await plannedVisit(store, shop, '2026-06-09');
    const endpointId = await store.inShop(shopId, async (tx) => {
      const { siteId } = visit;
      const person = { name: 'Sue', email: 'sue@green.example', notices: ['visit.promised'] };
      await tx.siteContact.create({ data: { shopId, siteId, ...person } });
      const secret = `whsec_${Buffer.alloc(24).toString('base64')}`;
      const { id } = await tx.webhookEndpoint.create({ data: { shopId, url: 'http://127.0.0.1:1/hook', secret } });
      await emitEvent(tx, shopId, 'visit.promised', { visitId: visit.id, siteId }, clock.now());
      return id;
    });
    await processors.notify({ shopId, runId: shopId });
    await processors.deliver({ shopId, runId: endpointId });
    const [notice, delivery] = await store.inShop(shopId, async (tx) => [
      await tx.notice.findFirstOrThrow(),
      await tx.webhookDelivery.findFirstOrThrow(),
    ]);
    expect(notice!.lastError).toBe('Nothing answers at this address.');
    expect(delivery!.lastError).toBe('Nothing answers at this address.');
    for (const row of [notice!, delivery!]) {
      expect(row).toMatchObject({ state: 'waiting', attempts: 1 });
      expect(row.nextAttemptAt.getTime()).toBeGreaterThan(Date.now());
    }
  });
});
