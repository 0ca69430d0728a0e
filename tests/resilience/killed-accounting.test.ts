import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient, until } from '../support/api-client.js';
import { ChildService } from '../support/child-service.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { draftOf } from '../support/finished-visit.js';
import { createSmallShop, PASSWORD, type SmallShop } from '../support/small-shop.js';

const RECEIVER = fileURLToPath(new URL('../support/sample-receiver.mjs', import.meta.url));
/** Every step takes minutes; the tests take the ones that differ most. `npm run bench:killed` takes all. */
const EVERY_STEP = process.env.DECKROUND_EVERY_STEP === 'yes';
const steps = (tables: readonly string[], few: readonly string[]) => (EVERY_STEP ? tables : few);
const JOURNAL = '/v1/accounting/journal?from=2020-01-01&to=2099-12-31';

let database: TestDatabase;
let shop: SmallShop;
let api: ChildService;
let manager: ApiClient;
let key: string;
let folder: string;
let ledger: string;
let day = 7;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await ChildService.start('api', { DATABASE_URL: database.url });
  manager = await new ApiClient(api.address).signIn('manager@small-shop.example', PASSWORD);
  const settings = await manager.get('/v1/charge-settings');
  const seller = { legalName: 'Small shop LLC' };
  await manager.patch('/v1/charge-settings', { seller }, settings.headers.get('etag'));
  key = (await manager.post('/v1/integration-keys', { name: 'ledger', scopes: ['accounting'] })).body.key;
  // Someone listens, so that every step has an event to write as well.
  await manager.post('/v1/webhook-endpoints', { url: 'https://receiver.example/hook' });
  folder = mkdtempSync(join(tmpdir(), 'deckround-killed-'));
  ledger = join(folder, 'ledger.json');
});
afterAll(async () => {
  await api.kill();
  await database.drop();
  rmSync(folder, { recursive: true, force: true });
});

/** Holds every write to a table back while `work` runs; reading goes on, unless `readsToo`. */
function heldBack<T>(table: string, work: () => Promise<T>, readsToo = false): Promise<T> {
  return database.store.asOwner(async (tx) => {
    await tx.$executeRawUnsafe(`lock table ${table} in ${readsToo ? 'access exclusive' : 'share row exclusive'} mode`);
    return work();
  });
}

/** Somebody waits for a lock: the API stands at that step. */
const waits = () =>
  until(
    () =>
      database.store.asOwner(
        (tx) => tx.$queryRaw<{ n: number }[]>`
          select count(*)::integer as n from pg_stat_activity
          where datname = current_database() and wait_event_type = 'Lock'`,
      ),
    ([row]) => row!.n > 0,
  );

async function restart(): Promise<void> {
  api.spawn();
  await api.ready();
}

const newDraft = async () => {
  day += 1;
  return (await draftOf(database.store, shop, manager, `2026-06-${String(day).padStart(2, '0')}`)).draft;
};

/** What must be true at every moment. */
async function expectWhole(): Promise<void> {
  const { documents, changes, states, events } = await database.store.inShop(shop.shopId, async (tx) => ({
    documents: await tx.chargeDocument.findMany({ where: { state: 'issued' }, orderBy: { number: 'asc' } }),
    changes: await tx.accountingChange.findMany({ orderBy: { sequence: 'asc' } }),
    states: await tx.accountingState.findMany(),
    events: await tx.outboxEvent.findMany({ where: { type: { in: ['document.issued', 'document.credited'] } } }),
  }));
  const ids = documents.map((row) => row.id);
  expect(documents.map((row) => row.number)).toEqual(ids.map((_, index) => index + 1));
  expect(changes.map((row) => row.sequence)).toEqual(changes.map((_, index) => index + 1));
  const born = changes.filter((row) => row.what === 'issued' || row.what === 'credited');
  expect(born.map((row) => row.documentId)).toEqual(ids); // in the order of their numbers, each once
  expect(states.map((row) => row.documentId).sort()).toEqual([...ids].sort());
  expect(events.map((row) => JSON.parse(row.body).data.documentId).sort()).toEqual([...ids].sort());
  const acknowledged = changes.filter((row) => row.what === 'acknowledged').map((row) => row.documentId);
  expect(new Set(acknowledged).size).toBe(acknowledged.length);
}

describe('issuing, killed', () => {
  it.each(
    steps(
      [
        'idempotent_request',
        'shop_sequence',
        'charge_document',
        'accounting_state',
        'accounting_change',
        'audit_entry',
        'outbox_event',
        'webhook_delivery',
      ],
      ['accounting_change'],
    ),
  )('while it writes to %s, leaves a draft; asked again it is issued, once', async (table) => {
    const draft = await newDraft();
    const before = await database.store.inShop(shop.shopId, (tx) =>
      tx.chargeDocument.count({ where: { number: { not: null } } }),
    );
    const idempotencyKey = randomUUID();
    const issue = () =>
      manager.post(`/v1/charge-documents/${draft.id}/issue`, {}, { 'idempotency-key': idempotencyKey });
    await heldBack(table, async () => {
      const lost = issue().then(
        () => 'answered',
        () => 'lost',
      );
      await waits();
      await api.kill();
      expect(await lost).toBe('lost');
    });
    const row = await database.store.inShop(shop.shopId, (tx) =>
      tx.chargeDocument.findUniqueOrThrow({ where: { id: draft.id } }),
    );
    expect([row.state, row.number]).toEqual(['draft', null]);
    await restart();
    for (let each = 0; each < 2; each += 1) {
      const answer = await issue();
      expect([answer.status, answer.body.document.number]).toEqual([201, String(before + 1)]);
    }
    await expectWhole();
  });

  it('just after it was done, before the answer, is not done again', async () => {
    const draft = await newDraft();
    const idempotencyKey = randomUUID();
    const issue = () =>
      manager.post(`/v1/charge-documents/${draft.id}/issue`, {}, { 'idempotency-key': idempotencyKey });
    const answer = issue().then(
      () => undefined,
      () => undefined,
    );
    await until(
      () =>
        database.store.inShop(shop.shopId, (tx) => tx.chargeDocument.findUniqueOrThrow({ where: { id: draft.id } })),
      (row) => row.state === 'issued',
    );
    await api.kill();
    await answer;
    await restart();
    expect((await issue()).status).toBe(201);
    await expectWhole();
  });
});

describe('crediting, killed', () => {
  it.each(steps(['charge_document', 'accounting_change', 'outbox_event'], ['accounting_change']))(
    'while it writes to %s, takes nothing back; asked again it does, once',
    async (table) => {
      const draft = await newDraft();
      expect((await manager.post(`/v1/charge-documents/${draft.id}/issue`, {})).status).toBe(201);
      const idempotencyKey = randomUUID();
      const credit = () =>
        manager.post(
          `/v1/charge-documents/${draft.id}/credit`,
          { reason: 'wrong' },
          { 'idempotency-key': idempotencyKey },
        );
      await heldBack(table, async () => {
        const lost = credit().catch(() => null);
        await waits();
        await api.kill();
        await lost;
      });
      await restart();
      const [first, second] = [await credit(), await credit()];
      expect([first.status, second.status, second.body.id]).toEqual([201, 201, first.body.id]);
      await expectWhole();
    },
  );
});

describe('the nightly export, killed', () => {
  const export_ = async () => (await new ApiClient(api.address, key).get(JOURNAL)).body as string;

  it('while it reads, gives the same bytes when it is run again', async () => {
    const before = await export_();
    expect(before.split('\n').length).toBeGreaterThan(10);
    await heldBack(
      'charge_document',
      async () => {
        const lost = export_().catch(() => null);
        await waits();
        await api.kill();
        expect(await lost).toBeNull();
      },
      true,
    );
    await restart();
    expect(await export_()).toBe(before);
    expect(await export_()).toBe(before);
  });

  it('takes every document over exactly once, with receiver and service killed at each acknowledgement', async () => {
    const total = await database.store.inShop(shop.shopId, (tx) =>
      tx.chargeDocument.count({ where: { state: 'issued' } }),
    );
    let receiver: ChildProcess;
    const run = () => {
      receiver = spawn(process.execPath, [RECEIVER, api.address, key, ledger], { stdio: ['ignore', 'pipe', 'ignore'] });
      let output = '';
      receiver.stdout!.on('data', (chunk) => {
        output += chunk;
      });
      return new Promise<string>((done) => receiver.on('close', () => done(output)));
    };
    for (const table of steps(['accounting_state', 'accounting_change', 'audit_entry'], ['accounting_change'])) {
      for (const victim of ['receiver', 'service'] as const) {
        await heldBack(table, async () => {
          const output = run();
          await waits();
          if (victim === 'receiver') receiver.kill('SIGKILL');
          else await api.kill();
          await output;
        });
        if (victim === 'service') await restart();
        await expectWhole();
      }
    }
    expect(existsSync(ledger)).toBe(true);
    const [line] = (await run()).trim().split('\n').slice(-1);
    expect(JSON.parse(line!)).toEqual({ entries: total, missing: 0, different: 0 });
    const { entries } = JSON.parse(readFileSync(ledger, 'utf8'));
    const own = Object.values<{ own: string }>(entries).map((entry) => entry.own);
    expect(new Set(own).size).toBe(total);
    const states = await database.store.inShop(shop.shopId, (tx) => tx.accountingState.findMany());
    expect(states.map((row) => row.receiverNumber).sort()).toEqual([...own].sort());
    await expectWhole();
  });
});
