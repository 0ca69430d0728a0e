import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkDocument } from '@deckround/billing';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { draftOf, plannedVisit } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';

const RECEIVER = fileURLToPath(new URL('../support/sample-receiver.mjs', import.meta.url));

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const everything = ['labour', 'travel', 'parts', 'consumables', 'minimum'];
const patchSettings = async (body: object, path = '/v1/charge-settings') => {
  const { headers } = await manager.get(path);
  return manager.patch(path, body, headers.get('etag'));
};
const issue = (id: string) => manager.post(`/v1/charge-documents/${id}/issue`, {});

describe('a finished visit', () => {
  it('has its charges drafted at once, by the shop’s settings', async () => {
    const taxes = [{ jurisdiction: 'Iowa', level: 'state', percent: '6', on: everything, siteCodes: null }];
    expect((await patchSettings({ taxes })).body).toMatchObject({ version: 1, labour: { ratePerHour: '95.00' } });
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-08');
    expect(draft).toMatchObject({ state: 'draft', accounting: null, document: { number: null, currency: 'USD' } });
    expect(checkDocument(draft.document)).toEqual([]);
    // 65 min of work up to 75; visit fee 45.00.
    const labour = draft.document.lines.filter((line: { kind: string }) => line.kind === 'labour');
    const minutes = labour.map((line: { quantity: string; unitCode: string }) =>
      line.unitCode === 'HUR' ? Number(line.quantity) * 60 : Number(line.quantity),
    );
    expect(minutes.reduce((one: number, other: number) => one + other, 0)).toBe(75);
    expect(labour[0].machine).toMatchObject({ code: 'M1', serial: 'SN1' });
    expect(draft.document.charges).toMatchObject([{ kind: 'travel', amount: '45.00' }]);
  });

  it('has no charges when nothing was done, and none when finishing fails', async () => {
    const visit = await plannedVisit(database.store, shop, '2026-06-09');
    const body = { finishedAt: visit.endAt.toISOString(), done: [] };
    expect((await manager.post(`/v1/visits/${visit.id}/finish`, body)).status).toBe(201);
    expect((await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items).toEqual([]);
    const other = await plannedVisit(database.store, shop, '2026-06-09');
    const parts = [{ partId: other.id, quantity: '1' }];
    const wrong = { ...body, done: [other.visitItems[0]!.id], charges: { parts } };
    const failed = await manager.post(`/v1/visits/${other.id}/finish`, wrong);
    expect(failed.status).toBe(422);
    expect(failed.body.errors).toEqual([{ pointer: '/parts/0/partId', detail: 'no such part' }]);
    expect((await manager.get(`/v1/visits/${other.id}`)).body.state).toBe('confirmed');
  });

  it('charges the minutes and parts that were recorded, and warranty at nothing', async () => {
    const visit = await plannedVisit(database.store, shop, '2026-06-10');
    const [grease, sharpen] = visit.visitItems;
    const part = await database.store.inShop(shop.shopId, (tx) =>
      tx.part.findFirstOrThrow({ where: { code: 'BRG-6205-2Z' } }),
    );
    const finished = await manager.post(`/v1/visits/${visit.id}/finish`, {
      finishedAt: visit.endAt.toISOString(),
      done: [grease!.id, sharpen!.id],
      charges: {
        purchaseOrder: 'PO-7',
        work: [
          { itemId: grease!.id, coverage: { kind: 'warranty', reason: 'seal leaked again' } },
          { itemId: sharpen!.id, minutes: 60 },
        ],
        parts: [{ partId: part.id, itemId: sharpen!.id, quantity: '2' }],
      },
    });
    expect(finished.status).toBe(201);
    const draft = (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items[0];
    const lines = draft.document.lines.map((line: { itemCode: string; net: string; coverage: object | null }) => [
      line.itemCode,
      line.net,
      line.coverage,
    ]);
    expect(lines).toEqual([
      ['grease-spindles', '0.00', { kind: 'warranty', reason: 'seal leaked again' }],
      // 85 min up to 90, shared 25 : 60; the sharpening takes 64 of them.
      ['sharpen-blades', '101.33', null],
      [part.code, '29.00', null],
    ]);
    expect(draft.document.purchaseOrder).toBe('PO-7');
  });

  it('is charged by the customer’s own terms', async () => {
    const customer = (await manager.get('/v1/customers')).body.items[0];
    const path = `/v1/customers/${customer.id}/charge-settings`;
    const terms = { labour: { ratePerHour: '120.00' }, buyer: { purchaseOrder: 'STANDING-1' } };
    expect((await patchSettings(terms, path)).body).toMatchObject({ version: 1, terms });
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-11');
    expect(draft.document.lines[0].unitPrice).toBe('120.00');
    expect(draft.document.purchaseOrder).toBe('STANDING-1');
    const back = { labour: { ratePerHour: null, overtimePercent: '75' }, buyer: null };
    expect((await patchSettings(back, path)).body).toMatchObject({
      terms: { labour: { overtimePercent: '75' } },
    });
    expect((await manager.get(path)).body.terms).toEqual({ labour: { overtimePercent: '75' } });
    expect((await patchSettings({ labour: null }, path)).body.terms).toEqual({});
  });

  it('shares a day’s drive to the cent', async () => {
    await patchSettings({ travel: { rule: 'shared-drive', ratePerHour: '80.00' } });
    const visits = [];
    for (let each = 0; each < 3; each += 1) visits.push(await plannedVisit(database.store, shop, '2026-06-12'));
    for (const visit of visits) {
      const body = { finishedAt: visit.endAt.toISOString(), done: visit.visitItems.map((item) => item.id) };
      await manager.post(`/v1/visits/${visit.id}/finish`, body);
    }
    const documents = await Promise.all(
      visits.map(async (visit) => (await manager.get(`/v1/charge-documents?visitId=${visit.id}`)).body.items[0]),
    );
    // 60 minutes at 80.00 an hour, in three.
    expect(documents.map((each) => each.document.charges[0].amount).sort()).toEqual(['26.66', '26.67', '26.67']);
    await patchSettings({ travel: { rule: 'visit-fee', fee: '45.00' } });
  });
});

describe('a charge document', () => {
  it('is issued only when complete, then numbered and never changed', async () => {
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-15');
    const early = await issue(draft.id);
    expect(early.status).toBe(409);
    expect(early.body.errors).toContainEqual(expect.objectContaining({ pointer: '/seller/legalName' }));
    await patchSettings({ seller: { legalName: 'Small shop LLC' } });
    const path = `/v1/charge-documents/${draft.id}`;
    const redrafted = await manager.patch(path, { note: 'Thank you' }, '"1"');
    expect(redrafted.body).toMatchObject({ version: 2, document: { seller: { legalName: 'Small shop LLC' } } });
    const issued = await issue(draft.id);
    expect(issued.status).toBe(201);
    expect(issued.body).toMatchObject({
      state: 'issued',
      accounting: { state: 'waiting' },
      document: { number: '1', note: 'Thank you' },
    });
    expect((await issue(draft.id)).status).toBe(409);
    expect((await manager.patch(path, {}, '"3"')).status).toBe(409);
    for (const change of [
      () =>
        database.store.asOwner(
          (tx) => tx.$executeRaw`update charge_document set total_minor = 1 where id = ${draft.id}::uuid`,
        ),
      () => database.store.asOwner((tx) => tx.$executeRaw`delete from charge_document where id = ${draft.id}::uuid`),
    ]) {
      await expect(change()).rejects.toThrow(/is issued: it cannot be changed/);
    }
  });

  it('takes numbers without gaps, also from many at the same time', async () => {
    const drafts = [];
    for (let each = 0; each < 6; each += 1)
      drafts.push((await draftOf(database.store, shop, manager, '2026-06-16')).draft);
    const answers = await Promise.all(drafts.flatMap(({ id }) => [issue(id), issue(id)]));
    const numbers = answers.filter((each) => each.status === 201).map((each) => Number(each.body.document.number));
    expect(numbers.toSorted((a, b) => a - b)).toEqual([2, 3, 4, 5, 6, 7]);
    expect(answers.filter((each) => each.status === 409)).toHaveLength(6);
  });

  it('is not numbered past a gap, whoever writes', async () => {
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-16');
    await expect(
      database.store.asOwner(
        (tx) =>
          tx.$executeRaw`update charge_document set state = 'issued', number = 99, issued_on = now(), issued_at = now() where id = ${draft.id}::uuid`,
      ),
    ).rejects.toThrow(/the next charge document has the number 8/);
  });

  it('is amended by a credit and a new draft, to nothing more and nothing less', async () => {
    const { draft, visit } = await draftOf(database.store, shop, manager, '2026-06-17');
    const issued = (await issue(draft.id)).body;
    const work = [{ itemId: visit.visitItems[0]!.id, minutes: 5 }];
    const amended = await manager.post(`/v1/charge-documents/${draft.id}/amend`, {
      reason: 'too long',
      facts: { work },
    });
    expect(amended.body).toMatchObject({
      state: 'draft',
      replacesId: draft.id,
      document: { refersTo: { number: issued.document.number } },
    });
    expect(amended.body.totalCents).toBeLessThan(issued.totalCents);
    const before = (await manager.get(`/v1/charge-documents/${draft.id}`)).body;
    const credit = (await manager.get(`/v1/charge-documents/${before.creditedById}`)).body;
    expect(credit.document).toMatchObject({ kind: 'credit', totals: issued.document.totals, note: 'too long' });
    expect((await manager.post(`/v1/charge-documents/${draft.id}/credit`, { reason: 'again' })).status).toBe(409);
    expect((await issue(amended.body.id)).status).toBe(201);
  });

  it('keeps the customer of its first draft, whoever the site belongs to later', async () => {
    const siteId = shop.siteIds.get('S1')!;
    const { draft } = await draftOf(database.store, shop, manager, '2026-06-18');
    const other = await manager.post('/v1/customers', { code: 'C9', name: 'Later Owners', termsDays: 7 });
    expect(other.status).toBe(201);
    const agreement = { customerId: other.body.id, name: 'All greased', startsOn: '2026-01-01' };
    const items = [{ itemCode: 'grease-spindles', included: true, yearlyAllowance: null }];
    expect((await manager.post('/v1/agreements', { ...agreement, items })).status).toBe(201);
    await manager.patch(`/v1/sites/${siteId}`, { customerId: other.body.id }, '*');

    const path = `/v1/charge-documents/${draft.id}`;
    const redrafted = (await manager.patch(path, { note: 'again' }, '*')).body;
    const issued = (await issue(draft.id)).body;
    const body = { reason: 'note', facts: { note: 'third' } };
    const amended = (await manager.post(`${path}/amend`, body)).body;
    for (const each of [redrafted, issued, amended]) {
      expect(each).toMatchObject({ customerId: draft.customerId, totalCents: draft.totalCents });
      expect(each.document.buyer).toEqual(draft.document.buyer);
    }
    const days = Date.parse(issued.document.dueOn) - Date.parse(issued.document.issuedOn);
    expect(days / 86_400_000).toBe(30);
    await manager.patch(`/v1/sites/${siteId}`, { customerId: draft.customerId }, '*');
    expect((await issue(amended.id)).status).toBe(201);
  });

  it('counts what an agreement allows by whom each visit was made for, whoever has the site now', async () => {
    const siteId = shop.siteIds.get('S1')!;
    const { customerId } = (await manager.get(`/v1/sites/${siteId}`)).body;
    const other = (await manager.post('/v1/customers', { code: 'C10', name: 'Next Owners', termsDays: 7 })).body;
    const items = [{ itemCode: 'grease-spindles', included: true, yearlyAllowance: 1 }];
    const terms = { customerId: other.id, name: 'Greased once', startsOn: '2026-01-01', items };
    expect((await manager.post('/v1/agreements', terms)).status).toBe(201);
    const uses = async (day: string) => JSON.stringify((await draftOf(database.store, shop, manager, day)).draft);
    expect(await uses('2026-06-19')).not.toContain('Greased once');
    await manager.patch(`/v1/sites/${siteId}`, { customerId: other.id }, '*');
    expect(await uses('2026-06-22')).toContain('Greased once\\": 1 of 1 this year');
    expect(await uses('2026-06-23')).not.toContain('Greased once\\":');
    await manager.patch(`/v1/sites/${siteId}`, { customerId }, '*');
  });

  it('can be had as UBL and as PDF', async () => {
    const [{ id }] = (await manager.get('/v1/charge-documents?state=issued&limit=1')).body.items;
    const ubl = await manager.get(`/v1/charge-documents/${id}/ubl`);
    expect(ubl.headers.get('content-type')).toMatch(/application\/xml/);
    expect(ubl.body).toMatch(/<Invoice xmlns="urn:oasis[\s\S]*<cbc:ID>1<\/cbc:ID>/);
    const pdf = await manager.get(`/v1/charge-documents/${id}/pdf`);
    expect(pdf.body).toMatch(/^%PDF-1\./);
  });

  it('is not shown to supervisors unless the shop wants it, and then only issued ones of their sites', async () => {
    const supervisor = await api.signIn('supervisor');
    expect((await supervisor.get('/v1/charge-documents')).status).toBe(403);
    await patchSettings({ supervisorsSeeDocuments: true });
    const seen = (await supervisor.get('/v1/charge-documents')).body.items;
    expect(seen.length).toBeGreaterThan(0);
    for (const each of seen) expect(each).toMatchObject({ state: 'issued', siteId: shop.siteIds.get('S1') });
    expect((await (await api.signIn('technician')).get('/v1/charge-documents')).status).toBe(403);
  });
});

describe('accounting', () => {
  let key: ApiClient;
  beforeAll(async () => {
    const created = await manager.post('/v1/integration-keys', { name: 'ledger', scopes: ['accounting'] });
    key = new ApiClient(api.service.address, created.body.key);
  });

  const allChanges = async (limit = 3) => {
    const items = [];
    for (let after = 0, more = true; more; ) {
      const { body } = await key.get(`/v1/accounting/changes?after=${after}&limit=${limit}`);
      items.push(...body.items);
      ({ last: after, more } = body);
    }
    return items;
  };

  it('reads every change once, in order and without gaps', async () => {
    const items = await allChanges();
    expect(items.map((item) => item.sequence)).toEqual(items.map((_, index) => index + 1));
    const issued = await manager.get('/v1/charge-documents?state=issued&limit=500');
    expect(new Set(items.map((item) => item.documentId))).toEqual(
      new Set(issued.body.items.map((each: { id: string }) => each.id)),
    );
    const document = await key.get(`/v1/accounting/documents/${items[0].documentId}`);
    expect(checkDocument(document.body.document)).toEqual([]);
    expect((await key.get('/v1/machines')).status).toBe(403);
  });

  it('acknowledges, pays and refuses; the same again changes nothing', async () => {
    const [first, second] = await allChanges();
    const path = `/v1/accounting/documents/${first.documentId}`;
    expect((await key.post(`${path}/paid`, { paidOn: '2026-07-01' })).status).toBe(409);
    for (let each = 0; each < 2; each += 1) {
      const answer = await key.post(`${path}/acknowledge`, { receiverNumber: 'L-1' });
      expect(answer.body.accounting).toMatchObject({ state: 'acknowledged', receiverNumber: 'L-1' });
    }
    expect((await key.post(`${path}/acknowledge`, { receiverNumber: 'L-2' })).status).toBe(409);
    for (let each = 0; each < 2; each += 1) {
      const answer = await key.post(`${path}/paid`, { paidOn: '2026-07-01', reference: 'check 12' });
      expect(answer.body.accounting).toMatchObject({ state: 'paid', paidOn: '2026-07-01' });
    }
    const refused = await key.post(`/v1/accounting/documents/${second.documentId}/refuse`, { reason: 'no such order' });
    expect(refused.body.accounting).toMatchObject({ state: 'refused', refusedReason: 'no such order' });
    const tail = (await allChanges()).slice(-3).map((item) => item.what);
    expect(tail).toEqual(['acknowledged', 'paid', 'refused']);
    const trail = (await manager.get('/v1/audit-entries?limit=500')).body.items;
    expect(trail.slice(-3)).toMatchObject([
      { action: 'document.acknowledged', actorKind: 'integration', actorName: 'ledger' },
      { action: 'document.paid' },
      { action: 'document.refused' },
    ]);
    expect(trail.map((entry: { action: string }) => entry.action)).toContain('key.created');
  });

  it('exports the same journal again, byte for byte, whose debits equal its credits', async () => {
    for (const format of ['csv', 'jsonl']) {
      const path = `/v1/accounting/journal?from=2020-01-01&to=2099-12-31&format=${format}`;
      const first = await key.get(path);
      await patchSettings({ accounts: { receivable: `12${format.length}0` } });
      expect((await key.get(path)).body).toBe(first.body);
      expect(first.body.length).toBeGreaterThan(1000);
    }
    const { body } = await key.get('/v1/accounting/journal?from=2020-01-01&to=2099-12-31&format=jsonl');
    const rows = (typeof body === 'string' ? body : '')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    const cents = (side: 'debit' | 'credit') =>
      rows.reduce((total, row) => total + Math.round(Number(row[side] || 0) * 100), 0);
    expect(cents('debit')).toBe(cents('credit'));
    const csv = (await key.get('/v1/accounting/journal?from=2020-01-01&to=2099-12-31')).body as string;
    expect(csv.split('\r\n')[0]).toBe(
      'entryId,line,date,document,account,customer,item,quantity,unit,debit,credit,currency,taxCode,memo',
    );
  });

  it('finds out what the receiver lacks, has otherwise, or has too much', async () => {
    const issued = (await manager.get('/v1/charge-documents?state=issued&limit=500')).body.items;
    const [lacking, different, ...rest] = issued;
    const known = rest.map((each: { id: string; totalCents: number }) => ({
      documentId: each.id,
      totalCents: each.totalCents,
    }));
    known.push({ documentId: different.id, totalCents: 1 }, { documentId: shop.shopId, totalCents: 5 });
    const { body } = await key.post('/v1/accounting/reconcile', { from: '2020-01-01', to: '2099-12-31', known });
    expect(body).toMatchObject({ issued: issued.length, unknown: [shop.shopId] });
    expect(body.missing.map((each: { documentId: string }) => each.documentId)).toEqual([lacking.id]);
    expect(body.different.map((each: { documentId: string }) => each.documentId)).toEqual([different.id]);
  });

  it('is taken over exactly once by the sample receiver, however often that is killed', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'deckround-ledger-'));
    const path = join(folder, 'ledger.json');
    const created = await manager.post('/v1/integration-keys', { name: 'receiver', scopes: ['accounting'] });
    const run = (killAfterMs: number | null) =>
      new Promise<string>((done) => {
        const child = spawn(process.execPath, [RECEIVER, api.service.address, created.body.key, path]);
        const timer = killAfterMs === null ? undefined : setTimeout(() => child.kill('SIGKILL'), killAfterMs);
        let output = '';
        child.stdout.on('data', (chunk) => {
          output += chunk;
        });
        child.on('close', () => {
          clearTimeout(timer);
          done(output);
        });
      });
    for (const delay of [90, 110, 130, 150, 170]) await run(delay);
    const issued = (await manager.get('/v1/charge-documents?state=issued&limit=500')).body.items;
    expect(JSON.parse(await run(null))).toEqual({ entries: issued.length, missing: 0, different: 0 });
    const entries = () => JSON.parse(readFileSync(path, 'utf8')).entries as Record<string, { own: string }>;
    const before = entries();
    await run(null);
    expect(entries()).toEqual(before);
    const own = Object.values(before).map((entry) => entry.own);
    expect(new Set(own).size).toBe(issued.length);
    rmSync(folder, { recursive: true });
  });
});
