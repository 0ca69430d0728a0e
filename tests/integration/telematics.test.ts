import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { promisify } from 'node:util';
import { secondsOf } from '@deckround/worker';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, PASSWORD, type SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  api = await runningApi(database, undefined, undefined, 0, { DELIVER_SECONDS: '0.1', WEBHOOK_PRIVATE: 'yes' });
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const machine = (serial: string, hours: string, at = '2026-06-05T11:58:00Z', label = '') =>
  `<Equipment><EquipmentHeader><OEMName>Greenline</OEMName><EquipmentID>${label}</EquipmentID><SerialNumber>${serial}</SerialNumber></EquipmentHeader><CumulativeOperatingHours datetime="${at}"><Hour>${hours}</Hour></CumulativeOperatingHours></Equipment>`;
const fleet = (...inside: string[]) =>
  `<Fleet xmlns="http://standards.iso.org/iso/15143/-3" snapshotTime="2026-06-05T12:00:00Z">${inside.join('')}</Fleet>`;
const push = (body: string, type = 'application/xml', client = manager) =>
  client.send('POST', '/v1/telematics/snapshots', body, { 'content-type': type });
const readingsOf = async (code: string) =>
  (await manager.get(`/v1/readings?machineId=${shop.machineIds.get(code)}&limit=500`)).body.items.filter(
    // The small shop's own readings, which a telematics sender gave as well, are older.
    (each: { source: string; readAt: string }) => each.source === 'telematics' && each.readAt > '2026-06-05T11',
  );
const units = async (query = '') => (await manager.get(`/v1/telematics/units${query}`)).body.items;

describe('a snapshot that is sent', () => {
  it('gives readings to machines known by serial number, once, and lists the others', async () => {
    const text = fleet(machine('sn1', '700.25'), machine('ZZ9', '12.5'), machine('SN2', '1e9'));
    const first = await push(text);
    expect([first.status, first.body]).toEqual([200, { units: 3, readings: 1, repeated: 0, unmatched: 1, faults: 1 }]);
    expect((await push(text)).body).toEqual({ units: 3, readings: 0, repeated: 1, unmatched: 1, faults: 1 });
    expect(await readingsOf('M1')).toEqual([
      expect.objectContaining({ hours: '700.25', readAt: '2026-06-05T11:58:00.000Z', source: 'telematics' }),
    ]);
    expect(await units('?matched=false')).toEqual([
      expect.objectContaining({ serial: 'ZZ9', maker: 'Greenline', machineId: null, lastHours: '12.5' }),
    ]);
    expect(await units('?matched=true')).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ machineCode: 'M1', matchedBy: 'serial', lastFault: null }),
        expect.objectContaining({ machineCode: 'M2', lastFault: expect.stringMatching(/cannot be hours/) }),
      ]),
    );
  });

  it('as JSON does the same, with another figure for a known instant left out and hours going back kept', async () => {
    const of = (Hour: number, datetime: string) => ({
      EquipmentHeader: { OEMName: 'Greenline', SerialNumber: 'SN1' },
      CumulativeOperatingHours: { datetime, Hour },
    });
    const Equipment = [of(701, '2026-06-05T11:58:00Z'), of(3.5, '2026-06-06T11:58:00Z')];
    const { body } = await push(JSON.stringify({ Fleet: { Equipment } }), 'application/json; charset=utf-8');
    expect(body).toEqual({ units: 1, readings: 1, repeated: 1, unmatched: 0, faults: 0 });
    const readings = await readingsOf('M1');
    expect(readings.map((each: { hours: string }) => each.hours)).toEqual(['700.25', '3.5']);
  });

  it('comes from a key that may only do that, whatever its size', async () => {
    const { key } = (await manager.post('/v1/integration-keys', { name: 'sender', scopes: ['telematics'] })).body;
    const sender = new ApiClient(api.client.address, key);
    expect((await sender.get('/v1/sites')).status).toBe(403);
    const large = fleet(`<!-- ${'x'.repeat(60_000)} -->`.repeat(100), machine('SN3', '650')); // beyond what other calls take
    const { status, body } = await push(large, 'text/xml', sender);
    expect([status, body]).toEqual([200, expect.objectContaining({ readings: 1 })]);
    const technician = await api.signIn('technician');
    expect((await push(fleet(), 'application/xml', technician)).status).toBe(403);
    expect((await push(fleet(), 'application/xml', api.client)).status).toBe(401);
  });

  it.each([
    ['a document type', `<!DOCTYPE Fleet [<!ENTITY a "1">]>${fleet()}`, 'application/xml', 422],
    ['tags that do not match', '<Fleet><Equipment></Fleet>', 'application/xml', 422],
    ['something else', '{"Invoice":[]}', 'application/json', 422],
    ['plain text', fleet(), 'text/plain', 422],
    ['another content type', fleet(), 'application/zip', 415],
  ])('is refused with %s', async (_, body, type, status) => {
    const answer = await push(body, type);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('content-type')).toMatch(/problem\+json/);
  });

  it('of the future says so', async () => {
    const ahead = new Date(Date.now() + 3_600_000).toISOString();
    expect((await push(fleet(machine('SN4', '5', ahead)))).body).toMatchObject({ readings: 0, faults: 1 });
  });

  it('leaves other calls as they were', async () => {
    const answer = await manager.send('POST', '/v1/readings', '<a/>', { 'content-type': 'application/xml' });
    expect(answer.status).toBe(422);
    expect((await manager.post('/v1/readings', { readings: 'x'.repeat(5_000_000) })).status).toBe(413);
  });
});

describe('a machine that is not known', () => {
  it('is matched by hand: its last reading enters, later ones follow, and the choice stays', async () => {
    const [unit] = await units('?matched=false');
    const path = `/v1/telematics/units/${unit.id}/machine`;
    const put = (body: object, etag: string) =>
      manager.send('PUT', path, JSON.stringify(body), {
        'if-match': etag,
        'content-type': 'application/json',
      });
    expect((await put({ machineId: shop.machineIds.get('M5') }, '"99"')).status).toBe(412);
    const matched = await put({ machineId: shop.machineIds.get('M5') }, `"${unit.version}"`);
    expect(matched.body).toMatchObject({ machineCode: 'M5', matchedBy: 'hand' });
    expect(await readingsOf('M5')).toHaveLength(1);
    await push(fleet(machine('ZZ9', '13', '2026-06-06T08:00:00Z')));
    expect(await readingsOf('M5')).toHaveLength(2);
    const aside = await put({ machineId: null }, `"${matched.body.version}"`);
    expect(aside.body).toMatchObject({ machineId: null, matchedBy: 'hand' });
    await push(fleet(machine('ZZ9', '14', '2026-06-07T08:00:00Z', 'M5')));
    expect(await units('?matched=false')).toEqual([]);
    expect(await readingsOf('M5')).toHaveLength(2);
    const audited = (await manager.get('/v1/audit-entries?limit=500')).body.items.map(
      (each: { action: string }) => each.action,
    );
    expect(audited).toContain('telematics.matched');
  });
});

describe('a source that is asked', () => {
  let sender: Server;
  let base: string;
  let answer: (request: IncomingMessage, response: ServerResponse) => void;
  const asked: string[] = [];

  beforeAll(async () => {
    sender = createServer((request, response) => {
      asked.push(`${request.url} ${request.headers.authorization ?? ''}`);
      answer(request, response);
    });
    await new Promise<void>((done) => sender.listen(0, '127.0.0.1', done));
    base = `http://127.0.0.1:${(sender.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    sender.closeAllConnections();
    sender.close();
  });

  const link = (rel: string, href: string) => `<Links><rel>${rel}</rel><href>${href}</href></Links>`;
  const xml = (response: ServerResponse, text: string) =>
    response.writeHead(200, { 'content-type': 'application/xml' }).end(text);
  const source = async (url: string) =>
    (await manager.post('/v1/telematics/sources', { name: 'Sender', url, authorization: 'Bearer s3cret' })).body;
  const looked = (id: string, times = 1) =>
    until(
      () => manager.get(`/v1/telematics/sources/${id}`),
      ({ body }) => body.lastPollAt !== null && (times === 1 || body.failures >= times || body.lastError === null),
    );
  const again = (id: string) =>
    database.store.asOwner((tx) =>
      tx.telematicsSource.update({ where: { id }, data: { nextPollAt: new Date(0), lastPollAt: null } }),
    );

  it('is read page by page to its end, which a sender may never mark', async () => {
    answer = (request, response) =>
      request.url === '/Fleet/1'
        ? xml(response, fleet(link('self', `${base}/Fleet/1`), link('next', '/Fleet/2'), machine('SN6', '800')))
        : xml(response, fleet(link('next', `${base}/Fleet/2`), machine('SN6', '801', '2026-06-06T00:00:00Z')));
    const made = await source(`${base}/Fleet/1`);
    expect(made).toMatchObject({ hasAuthorization: true, everySeconds: 3600 });
    expect(JSON.stringify(made)).not.toContain('s3cret');
    const { body } = await looked(made.id);
    expect(body).toMatchObject({ lastError: null, failures: 0 });
    expect(asked).toEqual(['/Fleet/1 Bearer s3cret', '/Fleet/2 Bearer s3cret']);
    expect((await readingsOf('M6')).map((each: { hours: string }) => each.hours)).toEqual(['800', '801']);
    const row = await database.store.asOwner((tx) => tx.telematicsSource.findUniqueOrThrow({ where: { id: made.id } }));
    expect(row.nextPollAt.getTime()).toBeGreaterThan(Date.now() + 3_000_000); // not before an hour is over
    await manager.delete(`/v1/telematics/sources/${made.id}`);
  });

  it('is left in peace when it says so, and the look goes on where it was', async () => {
    asked.length = 0;
    answer = (request, response) =>
      request.url === '/Fleet/1'
        ? xml(response, fleet(link('next', '/Fleet/2')))
        : response.writeHead(429, { 'retry-after': '86000' }).end();
    const { id } = await source(`${base}/Fleet/1`);
    const { body } = await looked(id);
    expect(body).toMatchObject({ lastError: expect.stringMatching(/429/), failures: 1 });
    const row = () => database.store.asOwner((tx) => tx.telematicsSource.findUniqueOrThrow({ where: { id } }));
    expect((await row()).nextPollAt.getTime()).toBeGreaterThan(Date.now() + 85_000_000);
    answer = (_, response) => xml(response, fleet(machine('SN6', '802', '2026-06-07T00:00:00Z')));
    await again(id);
    expect((await looked(id)).body).toMatchObject({ lastError: null, failures: 0 });
    expect(asked.map((each) => each.split(' ')[0])).toEqual(['/Fleet/1', '/Fleet/2', '/Fleet/2']);
    expect((await row()).nextPage).toBeNull();
    await manager.delete(`/v1/telematics/sources/${id}`);
  });

  it.each([
    [
      'sends elsewhere',
      (response: ServerResponse) => xml(response, fleet(link('next', 'http://elsewhere.example/2'))),
      /same sender/,
    ],
    ['redirects', (response: ServerResponse) => response.writeHead(302, { location: '/Fleet/2' }).end(), /302/],
    ['sends what cannot be read', (response: ServerResponse) => xml(response, '<Fleet><oops'), /Line 1/],
  ])('that %s is asked no further', async (_, give, why) => {
    asked.length = 0;
    answer = (_request, response) => give(response);
    const { id } = await source(`${base}/Fleet/1`);
    expect((await looked(id)).body).toMatchObject({ failures: 1, lastError: expect.stringMatching(why) });
    expect(asked).toHaveLength(1);
    await manager.delete(`/v1/telematics/sources/${id}`);
  });

  it('keeps its credentials to its own address', async () => {
    answer = (_request, response) => xml(response, fleet());
    const { id, version } = await source(`${base}/Fleet/1`);
    await looked(id);
    const moved = await manager.patch(
      `/v1/telematics/sources/${id}`,
      { url: 'https://other.example/Fleet' },
      `"${version}"`,
    );
    expect(moved.body).toMatchObject({ hasAuthorization: false });
    await manager.delete(`/v1/telematics/sources/${id}`);
  });
});

describe('the guide', () => {
  it('has commands that work as they stand there', async () => {
    const guide = readFileSync(new URL('../../apps/api/CONNECT-TELEMATICS.md', import.meta.url), 'utf8');
    const commands = [...guide.matchAll(/```sh\n([\s\S]*?)```/g)].map(([, command]) => command!);
    const session = { email: 'manager@small-shop.example', password: PASSWORD };
    const TOKEN = (await api.client.post('/v1/session', session)).body.token;
    const [makeKey, push_, addSource, match] = commands as [string, string, string, string];
    const run = async (script: string) => {
      const told = script.replace('BASE=http://127.0.0.1:4310\n', '');
      const { stdout } = await promisify(execFile)('sh', ['-c', told], {
        env: { ...process.env, BASE: api.client.address, TOKEN },
      });
      return stdout;
    };
    expect(JSON.parse(await run(`${makeKey}${push_}`))).toMatchObject({ units: 1, faults: 0 });
    const sources = (await run(addSource)).replace(/}{/, '}\n{').split('\n');
    const made = JSON.parse(sources[0]!);
    expect(made).toMatchObject({ name: 'Sender', everySeconds: 3600, hasAuthorization: true });
    expect(JSON.parse(sources[1]!).items).toHaveLength(1);
    await manager.delete(`/v1/telematics/sources/${made.id}`);

    const [unit] = await units('?matched=false');
    const named = match.replace('UNIT', unit.id).replace('MACHINE', shop.machineIds.get('M1')!);
    const answers = (await run(named)).replace(/}{/, '}\n{').split('\n');
    expect(JSON.parse(answers[1]!)).toMatchObject({ serial: '00123E45', machineCode: 'M1', matchedBy: 'hand' });
  });
});

describe('Retry-After', () => {
  const now = new Date('2026-06-05T12:00:00Z');
  // RFC 9110, 10.2.3: seconds or a date.
  it.each([
    ['120', 120],
    ['Fri, 05 Jun 2026 12:02:00 GMT', 120],
    ['Fri, 05 Jun 2026 11:00:00 GMT', 0],
    ['soon', null],
    [undefined, null],
  ])('%s is %s seconds', (header, seconds) => expect(secondsOf(header, now)).toBe(seconds));
});
