import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ApiClient } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop } from '../support/small-shop.js';

const EMAIL = 'alder@small-shop.example';
const FIRST = 'the first password';

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let technicianId: string;

beforeAll(async () => {
  database = await freshDatabase();
  await createSmallShop(database.store);
  api = await runningApi(database);
  manager = await api.signIn('manager');
  const { items } = (await manager.get('/v1/technicians')).body;
  technicianId = items.find((each: { code: string }) => each.code === 'T2').id;
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const add = (more: object) =>
  manager.post('/v1/people', { name: 'Alder', email: EMAIL, role: 'technician', password: FIRST, ...more });
const audited = async () =>
  (await manager.get('/v1/audit-entries?limit=500')).body.items.filter(
    (entry: { subjectKind: string }) => entry.subjectKind === 'person',
  );

describe('a person who left', () => {
  it('leaves the technician to whoever comes after', async () => {
    const alder = (await add({ technicianId })).body;
    expect((await manager.delete(`/v1/people/${alder.id}`)).status).toBe(204);
    const successor = await add({ name: 'Birch', email: 'birch@small-shop.example', technicianId });
    expect(successor.body).toMatchObject({ technicianId });
    const left = (await manager.get('/v1/people')).body.items.find((each: { id: string }) => each.id === alder.id);
    expect(left).toMatchObject({ active: false, technicianId: null });
    expect((await manager.delete(`/v1/people/${successor.body.id}`)).status).toBe(204);
  });

  it('leaves it too where the removal dates from before, when it was not freed', async () => {
    const alder = (await manager.get('/v1/people')).body.items.find((each: { email: string }) => each.email === EMAIL);
    await database.store.asOwner((tx) =>
      tx.technician.update({ where: { id: technicianId }, data: { personId: alder.id } }),
    );
    const cedar = await add({ name: 'Cedar', email: 'cedar@small-shop.example', technicianId });
    expect(cedar.status).toBe(201);
    await manager.delete(`/v1/people/${cedar.body.id}`);
  });

  it('comes back under the same address as who is given now, and nothing of before lets anybody in', async () => {
    const second = { name: 'Alder Reed', role: 'manager', password: 'the second password' };
    const back = await add({ ...second, email: EMAIL.toUpperCase(), technicianId });
    expect(back.status).toBe(201);
    const { name, role } = second;
    expect(back.body).toMatchObject({ name, role, email: EMAIL, active: true, technicianId });
    expect((await api.client.post('/v1/session', { email: EMAIL, password: FIRST })).status).toBe(401);
    const alder = await api.client.signIn(EMAIL, second.password);
    expect((await alder.get('/v1/people')).status).toBe(200);
    expect((await audited()).at(-1)).toMatchObject({ action: 'person.returned', subjectId: back.body.id });
    expect((await add({})).status).toBe(409);
  });
});

describe('a password that was forgotten', () => {
  it('is set anew by a manager, ends the sign-ins of the person, and lets in whoever tried too often', async () => {
    const person = (await add({ name: 'Dill', email: 'dill@small-shop.example' })).body;
    const dill = await api.client.signIn(person.email, FIRST);
    const wrong = { email: person.email, password: 'something else' };
    let status = 0;
    while (status !== 429) ({ status } = await api.client.post('/v1/session', wrong));
    const change = (body: object) => manager.patch(`/v1/people/${person.id}`, body, '*');
    expect((await change({ password: 'short' })).status).toBe(422);
    expect((await dill.get('/v1/session')).status).toBe(200);
    const password = 'another password';
    const changed = await change({ password });
    expect(changed.status).toBe(200);
    expect(JSON.stringify(changed.body)).not.toContain(password);
    expect((await dill.get('/v1/session')).status).toBe(401);
    expect((await api.client.post('/v1/session', { email: person.email, password: FIRST })).status).toBe(401);
    expect((await api.client.signIn(person.email, password)).address).toBe(api.client.address);
    expect((await audited()).at(-1)).toMatchObject({ action: 'person.password-set', subjectId: person.id });
  });

  it('leaves a manager who sets the own one at work', async () => {
    const people = (await manager.get('/v1/people')).body.items;
    const own = people.find((each: { email: string }) => each.email === 'manager@small-shop.example');
    const elsewhere = await api.signIn('manager');
    const changed = await manager.patch(`/v1/people/${own.id}`, { password: 'a new one of my own' }, '*');
    expect(changed.status).toBe(200);
    expect((await manager.get('/v1/session')).status).toBe(200);
    expect((await elsewhere.get('/v1/session')).status).toBe(401);
  });
});
