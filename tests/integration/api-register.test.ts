import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop, WEEK } from '../support/small-shop.js';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let shop: SmallShop;
let manager: ApiClient;
let technician: ApiClient;
let supervisor: ApiClient;

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  await createSmallShop(database.store, 'Other shop');
  api = await runningApi(database);
  manager = await api.signIn('manager');
  technician = await api.signIn('technician');
  supervisor = await api.signIn('supervisor');
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('signing in', () => {
  it('is refused in the same words for a wrong password and an unknown address', async () => {
    const wrong = await api.client.post('/v1/session', {
      email: 'manager@small-shop.example',
      password: 'not it, surely',
    });
    const unknown = await api.client.post('/v1/session', {
      email: 'nobody@small-shop.example',
      password: 'not it, surely',
    });
    expect(wrong.status).toBe(401);
    expect(wrong.headers.get('content-type')).toMatch(/application\/problem\+json/);
    expect({ ...unknown.body, correlationId: '' }).toEqual({ ...wrong.body, correlationId: '' });
  });

  it('has to wait after ten failures', async () => {
    const attempt = () => api.client.post('/v1/session', { email: 'guess@small-shop.example', password: 'a guess' });
    for (let i = 0; i < 10; i += 1) expect((await attempt()).status).toBe(401);
    const refused = await attempt();
    expect(refused.status).toBe(429);
    const wait = Number(refused.headers.get('retry-after'));
    expect(wait).toBeGreaterThan(0);
    expect(wait).toBeLessThanOrEqual(90); // one more each tenth of a quarter of an hour
  });

  it('ends when signed out', async () => {
    const client = await api.signIn('technician');
    expect((await client.get('/v1/session')).body).toMatchObject({ kind: 'person', role: 'technician' });
    expect((await client.delete('/v1/session')).status).toBe(204);
    expect((await client.get('/v1/session')).status).toBe(401);
  });

  it('is needed everywhere but for health and the document', async () => {
    for (const path of ['/v1/customers', '/v1/due', '/v1/plan-runs', '/v1/week?weekOf=2026-06-08'])
      expect((await api.client.get(path)).status).toBe(401);
    for (const path of ['/health', '/ready', '/openapi.json', '/docs'])
      expect((await api.client.get(path)).status).toBe(200);
  });
});

describe('who may what', () => {
  it('lets a technician read but not change the register', async () => {
    expect((await technician.get('/v1/customers')).status).toBe(200);
    expect((await technician.post('/v1/customers', { code: 'X', name: 'X' })).status).toBe(403);
    expect((await technician.get('/v1/people')).status).toBe(403);
  });

  it('shows a supervisor the own site alone', async () => {
    const sites = await supervisor.get('/v1/sites');
    expect(sites.body.items.map((site: { code: string }) => site.code)).toEqual(['S1']);
    const machines = await supervisor.get('/v1/machines');
    expect(machines.body.items.map((machine: { code: string }) => machine.code)).toEqual(['M1', 'M4']);
    expect((await supervisor.get(`/v1/sites/${shop.siteIds.get('S2')}`)).status).toBe(404);
    expect((await supervisor.get('/v1/customers')).status).toBe(403);
    const foreign = await supervisor.post('/v1/readings', {
      readings: [{ machineId: shop.machineIds.get('M2'), readAt: '2026-06-04T15:00:00-05:00', hours: '510' }],
    });
    expect(foreign.status).toBe(404);
  });

  it('gives an integration key its scopes and no more, until it is revoked', async () => {
    const made = await manager.post('/v1/integration-keys', { name: 'accounting', scopes: ['read'] });
    expect(made.status).toBe(201);
    const { ApiClient } = await import('../support/api-client.js');
    const key = new ApiClient(api.client.address, made.body.key);
    expect((await key.get('/v1/visits')).status).toBe(200);
    expect((await key.post('/v1/customers', { code: 'K', name: 'K' })).status).toBe(403);
    const listed = await manager.get('/v1/integration-keys');
    expect(JSON.stringify(listed.body)).not.toContain(made.body.key);
    expect((await manager.delete(`/v1/integration-keys/${made.body.id}`)).status).toBe(204);
    expect((await key.get('/v1/visits')).status).toBe(401);
  });

  it('never shows another shop’s rows', async () => {
    const other = await api.signIn('manager', 'other-shop');
    const mine = (await manager.get('/v1/machines')).body.items[0];
    expect((await other.get(`/v1/machines/${mine.id}`)).status).toBe(404);
    expect((await other.patch(`/v1/machines/${mine.id}`, { notes: 'taken' }, '*')).status).toBe(404);
    const completion = await other.post('/v1/completions', {
      machineId: mine.id,
      itemCode: 'sharpen-blades',
      doneOn: '2026-06-04',
    });
    expect(completion.status).toBe(404);
  });
});

describe('the register', () => {
  it('pages through a list without losing or repeating a row', async () => {
    const codes: string[] = [];
    let path: string | null = '/v1/machines?limit=2';
    while (path !== null) {
      const { body }: { body: { items: { code: string }[]; next: string | null } } = await manager.get(path);
      codes.push(...body.items.map((machine) => machine.code));
      path = body.next === null ? null : `/v1/machines?limit=2&cursor=${body.next}`;
    }
    expect(codes).toEqual(['M1', 'M2', 'M3', 'M4', 'M5', 'M6']);
    expect((await manager.get('/v1/machines?cursor=nonsense')).status).toBe(422);
  });

  it('creates once for one Idempotency-Key', async () => {
    const body = { code: 'C9', name: 'Orchard Trust' };
    const key = { 'idempotency-key': 'create-c9' };
    const [first, second] = await Promise.all([
      manager.post('/v1/customers', body, key),
      manager.post('/v1/customers', body, key),
    ]);
    expect([first.status, second.status]).toEqual([201, 201]);
    expect(second.body).toEqual(first.body);
    expect((await manager.post('/v1/customers', { ...body, name: 'Another' }, key)).body.type).toBe(
      'urn:deckround:problem:idempotency-key-reused',
    );
    const missing = await manager.send('POST', '/v1/customers', body, {});
    expect(missing.status).toBe(400);
    const again = await manager.post('/v1/customers', body);
    expect(again.status).toBe(409);
  });

  it('changes only the version that was read', async () => {
    const { body, headers } = await manager.get(`/v1/sites/${shop.siteIds.get('S2')}`);
    const etag = headers.get('etag');
    expect(etag).toBe(`"${body.version}"`);
    expect((await manager.patch(`/v1/sites/${body.id}`, { setupMinutes: 20 }, null)).status).toBe(428);
    const changed = await manager.patch(
      `/v1/sites/${body.id}`,
      { setupMinutes: 20, access: [{ weekday: 2, from: '08:00', to: '12:00' }] },
      etag,
    );
    expect(changed.body).toMatchObject({
      setupMinutes: 20,
      access: [{ weekday: 2, from: '08:00', to: '12:00' }],
      name: 'Site S2',
    });
    const stale = await manager.patch(`/v1/sites/${body.id}`, { setupMinutes: 25 }, etag);
    expect(stale.status).toBe(412);
    expect((await manager.get(`/v1/sites/${body.id}`, { 'if-none-match': changed.headers.get('etag')! })).status).toBe(
      304,
    );
  });

  it.each([
    ['an empty change', {}, ''],
    ['an unknown field', { colour: 'moss' }, ''],
    ['a NUL in a text', { name: 'a\u0000b' }, '/name'],
    [
      'overlapping hours',
      {
        access: [
          { weekday: 1, from: '08:00', to: '12:00' },
          { weekday: 1, from: '11:00', to: '13:00' },
        ],
      },
      '/access/1',
    ],
    ['an unknown time zone', { timeZone: 'Mars/Olympus' }, '/timeZone'],
    ['a latitude off the globe', { latitude: 412 }, '/latitude'],
  ])('refuses %s with a pointer to it', async (_, change, pointer) => {
    const { body, headers } = await manager.get(`/v1/sites/${shop.siteIds.get('S3')}`);
    const refused = await manager.patch(`/v1/sites/${body.id}`, change, headers.get('etag'));
    expect(refused.status).toBe(422);
    if (pointer !== '')
      expect(refused.body.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer);
    expect((await manager.get(`/v1/sites/${body.id}`)).body.version).toBe(body.version);
  });

  it('points to what does not fit together, where each value by itself would do', async () => {
    const first = async (path: string) => (await manager.get(`${path}?limit=1`)).body.items[0];
    const [technicianRow, customer, part, slot, machine] = await Promise.all(
      ['technicians', 'customers', 'parts', 'component-slots', 'machines'].map((path) => first(`/v1/${path}`)),
    );
    const items = (await manager.get('/v1/service-items?limit=500')).body.items as Record<string, unknown>[];
    const item = items.find((each) => each.intervalHours !== null && each.seasonEvent === null)!;
    const change = (path: string, row: { id?: unknown; version?: unknown }, body: object) =>
      manager.patch(`/v1/${path}/${row.id}`, body, `"${row.version}"`);
    const thrice = ['06:00', '12:00', '18:00'].map((from) => ({ weekday: 1, from, to: `${from.slice(0, 2)}:59` }));
    const never = { intervalHours: null, intervalDays: null, firstHours: null };
    const backwards = { startsOn: '2026-06-10', endsOn: '2026-06-09' };
    const life = { slotId: slot.id, fittedOn: '2026-06-10', removedOn: '2026-06-09', removalReason: 'failed' };
    const order = { partId: part.id, quantity: '1', orderedOn: '2026-06-10', expectedOn: '2026-06-09' };
    const refused = [
      [await change('technicians', technicianRow, { lunchEarliest: '13:31' }), '/lunchLatest'],
      [await change('technicians', technicianRow, { lunchLatest: '24:01' }), '/lunchLatest'],
      [await change('technicians', technicianRow, { shifts: thrice }), '/shifts/2'],
      [await change('service-items', item, never), '/intervalHours'],
      [await change('service-items', item, { intervalHours: '0.00' }), '/intervalHours'],
      [
        await manager.post('/v1/machine-overrides', { machineId: machine.id, itemId: item.id, intervalHours: '0' }),
        '/intervalHours',
      ],
      [await manager.post('/v1/agreements', { customerId: customer.id, name: 'Summer', ...backwards }), '/endsOn'],
      [await manager.post('/v1/component-lives', life), '/removedOn'],
      [await manager.post('/v1/absences', { technicianId: slot.id, from: WEEK, to: WEEK }), '/technicianId'],
      [await manager.post('/v1/part-orders', order), '/expectedOn'],
      [await manager.post('/v1/part-orders', { ...order, expectedOn: '2026-06-10', quantity: '0' }), '/quantity'],
    ] as const;
    expect(refused.map(([{ status, body }]) => [status, body.errors?.[0]?.pointer])).toEqual(
      refused.map(([, pointer]) => [422, pointer]),
    );
    const again = await manager.post('/v1/customers', { code: customer.code, name: 'Twice' });
    expect([again.status, again.body.errors]).toEqual([409, [{ pointer: '/code', detail: 'another has it already' }]]);
  });

  it('answers broken JSON and foreign methods as problems, not as crashes', async () => {
    const broken = await manager.send('POST', '/v1/customers', '{"code":', { 'idempotency-key': 'x' });
    expect(broken.status).toBe(400);
    expect(broken.body.type).toMatch(/^urn:deckround:problem:/);
    expect((await manager.get('/v1/customers/not-a-uuid')).status).toBe(422);
    expect((await manager.get('/v1/unheard-of')).status).toBe(404);
  });

  it('shows service items with torque in both units, cautions, sources, and that the manual comes first', async () => {
    const { body } = await manager.get('/v1/service-items?machineClass=zero-turn');
    const bearings = body.items.find((item: { code: string }) => item.code === 'replace-spindle-bearings');
    expect(bearings.torques).toContainEqual(
      expect.objectContaining({ what: 'spindle housing bolts', ftLb: [13, 18], nm: [17.6, 24.4] }),
    );
    expect(bearings.cautions.join(' ')).toMatch(/never work under a deck held only by a jack/);
    expect(bearings.manualFirst).toMatch(/manual/);
    expect(bearings.sources.interval).toBeTruthy();
  });

  it('puts a received order on the shelf, once', async () => {
    const part = (await manager.get('/v1/parts')).body.items.find(
      (each: { code: string }) => each.code === 'BRG-6205-2Z',
    );
    const order = await manager.post('/v1/part-orders', {
      partId: part.id,
      quantity: '4',
      orderedOn: '2026-06-01',
      expectedOn: '2026-06-05',
    });
    const received = await manager.patch(
      `/v1/part-orders/${order.body.id}`,
      { receivedOn: '2026-06-05' },
      order.headers.get('etag'),
    );
    expect(received.status).toBe(200);
    expect((await manager.get(`/v1/parts/${part.id}`)).body.onHand).toBe('14');
    expect(
      (
        await manager.patch(
          `/v1/part-orders/${order.body.id}`,
          { receivedOn: '2026-06-05' },
          received.headers.get('etag'),
        )
      ).status,
    ).toBe(409);
  });
});

describe('a machine of its own kind', () => {
  it('may differ from its class in one item, and only in items of its class', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const items = (await manager.get('/v1/service-items?limit=500')).body.items as {
      id: string;
      code: string;
      machineClass: string;
    }[];
    const find = (machineClass: string) =>
      items.find((item) => item.machineClass === machineClass && item.code === 'sharpen-blades')!.id;
    const made = await manager.post('/v1/machine-overrides', {
      machineId,
      itemId: find('zero-turn'),
      intervalHours: '25',
    });
    expect(made.body).toMatchObject({ intervalHours: '25', disabled: false });
    const foreign = await manager.post('/v1/machine-overrides', {
      machineId,
      itemId: find('wide-area'),
      intervalHours: '25',
    });
    expect(foreign.status).toBe(422);
    expect((await manager.delete(`/v1/machine-overrides/${made.body.id}`)).status).toBe(204);
    expect((await manager.get(`/v1/machine-overrides?machineId=${machineId}`)).body.items).toEqual([]);
  });

  it('has slots for its spindles, and keeps the lives of their parts', async () => {
    const slots = await manager.get(`/v1/component-slots?machineId=${shop.machineIds.get('M2')}`);
    expect(slots.body.items.map((slot: { name: string }) => slot.name)).toEqual([
      'spindle 1',
      'spindle 2',
      'spindle 3',
    ]);
    const slotId = slots.body.items[0].id;
    const failed = {
      slotId,
      fittedOn: '2025-04-01',
      removedOn: '2026-05-02',
      removedHours: '498',
      removalReason: 'failed',
    };
    expect((await manager.post('/v1/component-lives', failed)).status).toBe(201);
    expect((await manager.post('/v1/component-lives', { slotId, fittedOn: '2026-05-02' })).status).toBe(201);
    const second = await manager.post('/v1/component-lives', { slotId, fittedOn: '2026-05-03' });
    expect(second.status).toBe(409);
  });

  it('knows which imports changed the register', async () => {
    const imports = await manager.get('/v1/register-imports');
    expect(imports.body.items).toHaveLength(1);
    expect(imports.body.items[0].counts.machines).toMatchObject({ read: 6, added: 6 });
  });
});

describe('readings', () => {
  it('are taken one or many, the doubtful ones set aside with a suggestion, and decided by a person', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const taken = await manager.post('/v1/readings', {
      readings: [
        { machineId, readAt: '2026-06-08T15:00:00-05:00', hours: '512' },
        { machineId, readAt: '2026-06-09T15:00:00-05:00', hours: '5131' },
      ],
    });
    expect(taken.status).toBe(201);
    expect(taken.body).toMatchObject({ added: 2, repeated: 0 });
    const [good, slipped] = taken.body.readings;
    expect(good).toMatchObject({ status: 'accepted', hours: '512', source: 'manager' });
    expect(slipped).toMatchObject({ status: 'set-aside', reasonCode: 'slipped-decimal', suggestedHours: '513.1' });
    const etag = (await manager.get(`/v1/readings/${slipped.id}`)).headers.get('etag')!;
    const decided = await manager.post(
      `/v1/readings/${slipped.id}/decision`,
      { decision: 'correct', hours: '513.1' },
      { 'if-match': etag },
    );
    expect(decided.body).toMatchObject({ status: 'set-aside', reasonCode: 'by-hand' });
    const now = await manager.get(`/v1/readings?machineId=${machineId}&limit=500`);
    expect(now.body.items.filter((each: { hours: string }) => each.hours === '513.1')).toHaveLength(1);
    const repeated = await manager.post('/v1/readings', {
      readings: [{ machineId, readAt: '2026-06-08T15:00:00-05:00', hours: '512' }],
    });
    expect(repeated.body).toMatchObject({ added: 0, repeated: 1 });
  });

  it('from the future are refused whole', async () => {
    const machineId = shop.machineIds.get('M2')!;
    const refused = await manager.post('/v1/readings', {
      readings: [
        { machineId, readAt: '2026-06-08T15:00:00-05:00', hours: '600' },
        { machineId, readAt: '2099-06-08T15:00:00-05:00', hours: '601' },
      ],
    });
    expect(refused.status).toBe(422);
    expect(refused.body.errors[0].pointer).toBe('/readings/1/readAt');
    expect((await manager.get(`/v1/readings?machineId=${machineId}&limit=500`)).body.items).toHaveLength(52);
  });
});

describe('field work', () => {
  it('records a stopgap with the follow-up it owes', async () => {
    const machineId = shop.machineIds.get('M4')!;
    const endless = await technician.post('/v1/stopgaps', {
      machineId,
      description: 'spliced the idler bracket',
      madeOn: '2026-06-04',
      minutes: 30,
    });
    expect(endless.status).toBe(422);
    const made = await technician.post('/v1/stopgaps', {
      machineId,
      description: 'spliced the idler bracket',
      madeOn: '2026-06-04',
      limitHours: '20',
      minutes: 30,
    });
    expect(made.status).toBe(201);
    const owed = await technician.get(`/v1/follow-ups?machineId=${machineId}`);
    expect(owed.body.items).toMatchObject([{ stopgapId: made.body.id, closedOn: null }]);
  });

  it('takes findings and completions of items that the machine has', async () => {
    const machineId = shop.machineIds.get('M3')!;
    const finding = await technician.post('/v1/findings', {
      machineId,
      itemCode: 'replace-spindle-bearings',
      slot: 'spindle 2',
      foundOn: '2026-06-04',
      observation: 'rough to the hand',
      measures: { feel: 'rough' },
      dueWithinHours: '15',
    });
    expect(finding.status).toBe(201);
    const unknown = await technician.post('/v1/completions', {
      machineId,
      itemCode: 'polish-the-chrome',
      doneOn: '2026-06-04',
    });
    expect(unknown.status).toBe(422);
    const done = await technician.post('/v1/completions', {
      machineId,
      itemCode: 'grease-spindles',
      doneOn: '2026-06-04',
      meterHours: '612.5',
    });
    expect(done.body).toMatchObject({ itemCode: 'grease-spindles', meterHours: '612.5' });
    expect(
      (await technician.post('/v1/completions', { machineId, itemCode: 'grease-spindles', doneOn: '2026-06-04' }))
        .status,
    ).toBe(409);
  });

  it('takes a road call and marks the machine down', async () => {
    const machineId = shop.machineIds.get('M1')!;
    const call = await supervisor.post('/v1/road-calls', {
      machineId,
      calledAt: '2026-06-08T09:40:00-05:00',
      symptom: 'shed its deck belt',
      usable: false,
    });
    expect(call.status).toBe(201);
    expect((await manager.get(`/v1/machines/${machineId}`)).body.condition).toBe('down');
  });
});
