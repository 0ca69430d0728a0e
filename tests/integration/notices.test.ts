import { emitEvent } from '@deckround/store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import ICAL from 'ical.js';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { plannedVisit } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, type SmallShop } from '../support/small-shop.js';
import { type Mail, smtpSink } from '../support/smtp-sink.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let sink: Awaited<ReturnType<typeof smtpSink>>;
const tries: Mail[] = [];

beforeAll(async () => {
  database = await freshDatabase();
  shop = await createSmallShop(database.store);
  // The first two messages fail for the moment; one person's mailbox does not exist.
  sink = await smtpSink((mail) => {
    tries.push(mail);
    if (tries.length <= 2) return '451 try again later';
    return mail.recipients[0] === 'nobody@green.example' ? '550 no such mailbox' : '250 taken';
  });
  api = await runningApi(database, undefined, undefined, 0, {
    SMTP_URL: sink.url,
    MAIL_FROM: 'visits@shop.example',
    MAIL_PAUSE_SECONDS: '0.01',
    DELIVER_SECONDS: '0.1',
  });
  manager = await api.signIn('manager');
});
afterAll(async () => {
  await api.service.stop();
  await sink.close();
  await database.drop();
});

const contact = async (body: object) =>
  (await manager.post('/v1/site-contacts', { siteId: shop.siteIds.get('S1'), ...body })).body as { id: string };
const mailsTo = (address: string) => sink.mails.filter((mail) => mail.recipients.includes(address));
const notices = async (query = '') => (await manager.get(`/v1/notices${query}`)).body.items;
const settled = () =>
  until(
    () => notices('?state=waiting'),
    (items) => items.length === 0,
  );
const promise = async (id: string, body: object) => {
  const { version } = (await manager.get(`/v1/visits/${id}`)).body;
  const answer = await manager.patch(`/v1/visits/${id}`, body, `"${version}"`);
  expect(answer.status).toBe(200);
};

describe('a notice', () => {
  it('comes to those who want it, in their language, under one Message-ID however often it is tried', async () => {
    await contact({ name: 'Ana Luz', email: 'ana@green.example', language: 'es', notices: ['visit.promised'] });
    await contact({ name: 'Quiet', email: 'quiet@green.example', notices: ['visit.done'] });
    const visit = await plannedVisit(database.store, shop, '2031-06-09');
    await promise(visit.id, { state: 'confirmed' });
    await settled();
    const ids = tries.map((mail) => mail.headers['message-id']);
    expect(ids).toHaveLength(3);
    expect(new Set(ids).size).toBe(1);
    expect(ids[0]).toMatch(/^<[0-9a-f-]{36}@shop\.example>$/);
    const [mail, ...others] = sink.mails;
    expect(others).toEqual([]);
    expect(mail!.recipients).toEqual(['ana@green.example']);
    expect(mail!.headers).toMatchObject({
      from: 'Small shop <visits@shop.example>',
      to: 'Ana Luz <ana@green.example>',
      subject: 'Small shop: visita a Site S1 el lunes, 9 de junio',
      'auto-submitted': 'auto-generated',
    });
    expect(mail!.parts[0]!.text.replace(/[\u00a0\u202f]/g, ' ')).toContain(
      'Small shop va a Site S1 el lunes, 9 de junio, entre las 8:30 a.m. y las 9:30 a.m.',
    );
    expect(mail!.parts[0]!.text).toContain('- M1: Afilar y balancear cuchillas');
    const calendar = new ICAL.Component(ICAL.parse(mail!.parts[1]!.text));
    expect(mail!.parts[1]!.type).toMatch(/^text\/calendar/);
    const event = new ICAL.Event(calendar.getFirstSubcomponent('vevent')!);
    expect(event.startDate.toJSDate()).toEqual(visit.startAt);
    expect(event.uid).toContain(visit.id);
    expect(await notices()).toEqual([
      expect.objectContaining({ state: 'sent', attempts: 3, email: 'ana@green.example', type: 'visit.promised' }),
    ]);
  });

  it('that a server refuses is not tried again, and says why', async () => {
    await contact({ name: 'Nobody', email: 'nobody@green.example', notices: ['visit.done'] });
    const visit = await plannedVisit(database.store, shop, '2031-06-10');
    const [done] = visit.visitItems;
    const finish = { finishedAt: '2026-06-10T16:00:00Z', done: [done!.id] };
    expect((await manager.post(`/v1/visits/${visit.id}/finish`, finish)).status).toBe(201);
    await settled();
    const [refused] = await notices('?state=refused');
    expect(refused).toMatchObject({
      email: 'nobody@green.example',
      attempts: 1,
      lastError: expect.stringMatching(/550/),
    });
    const [mail] = mailsTo('quiet@green.example');
    expect(mail!.headers.subject).toBe('Small shop: visit to Site S1 on Wednesday, June 10 is done');
    expect(mail!.parts[0]!.text).toMatch(/Done:\r?\n- M1: Grease spindles\r?\n/);
    expect(mail!.parts[0]!.text).toMatch(/Left for later:\r?\n- M1: Sharpen and balance blades\r?\n/);
  });

  it('tells of a promise given up, with a calendar that cancels it', async () => {
    await contact({ name: 'Kim', email: 'kim@green.example', notices: ['visit.cancelled', 'visit.moved'] });
    const visit = await plannedVisit(database.store, shop, '2031-06-11');
    await promise(visit.id, { state: 'cancelled' });
    await settled();
    const [mail] = mailsTo('kim@green.example');
    expect(mail!.headers.subject).toBe('Small shop: visit to Site S1 on Wednesday, June 11 cancelled');
    expect(mail!.parts[1]!.text).toContain('STATUS:CANCELLED');
  });

  it('says of a visit whose work another one does with which, and when', async () => {
    const told = ['visit.cancelled'];
    await contact({ name: 'Jo', email: 'jo@green.example', notices: told });
    await contact({ name: 'Eva', email: 'eva@green.example', language: 'es', notices: told });
    const [visit, other] = [
      await plannedVisit(database.store, shop, '2031-06-13'),
      await plannedVisit(database.store, shop, '2031-06-16'),
    ];
    await database.store.inShop(shop.shopId, (tx) => {
      const data = { visitId: visit.id, siteId: visit.siteId, workTo: [other.id] };
      return emitEvent(tx, shop.shopId, 'visit.cancelled', data, new Date());
    });
    await settled();
    const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
    const [[english], [spanish]] = [mailsTo('jo@green.example'), mailsTo('eva@green.example')];
    expect(english!.headers.subject).toBe(
      'Small shop: visit to Site S1 on Friday, June 13 joins that on Monday, June 16',
    );
    expect(plain(english!.parts[0]!.text)).toContain('That visit is planned for Monday, June 16, at about 9:00 AM.');
    expect(english!.parts[0]!.text).not.toContain('plans the work anew');
    expect(plain(spanish!.parts[0]!.text)).toContain(
      'Esa visita está prevista para el lunes, 16 de junio, hacia las 9:00',
    );
    await promise(other.id, { state: 'cancelled' });
    await settled();
    expect(mailsTo('jo@green.example').at(-1)!.parts[0]!.text).toContain('plans the work anew');
  });

  it('warns once before a stopgap reaches its limit', async () => {
    await contact({ name: 'Lee', email: 'lee@green.example', notices: ['stopgap.limit-near'] });
    const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
    const stopgap = (limitOn: string) =>
      manager.post('/v1/stopgaps', {
        ...{
          machineId: shop.machineIds.get('M1'),
          code: 'weld',
          description: 'welded bracket',
          madeOn: day(-3),
          limitOn,
        },
        ...{ minutes: 60, failureCents: 30_000, skill: 'mechanical' },
      });
    expect((await stopgap(day(3))).status).toBe(201);
    expect((await stopgap(day(30))).status).toBe(201);
    await until(
      async () => mailsTo('lee@green.example'),
      (mails) => mails.length > 0,
    );
    await settled();
    const [mail, ...others] = mailsTo('lee@green.example');
    expect(others).toEqual([]);
    expect(mail!.headers.subject).toMatch(/^Temporary repair on M1 is good until /);
    expect(mail!.parts[0]!.text).toMatch(/Do not run the machine beyond that/);
    expect(mail!.parts).toHaveLength(1);
  });

  it('gives way to newer news of the same visit while it waits', async () => {
    const visit = await plannedVisit(database.store, shop, '2031-06-12');
    const { id } = await contact({
      name: 'Pat',
      email: 'pat@green.example',
      notices: ['visit.promised', 'visit.moved'],
    });
    await database.store.inShop(shop.shopId, async (tx) => {
      await emitEvent(tx, shop.shopId, 'visit.promised', { visitId: visit.id, siteId: visit.siteId }, new Date());
      await emitEvent(tx, shop.shopId, 'visit.moved', { visitId: visit.id, siteId: visit.siteId }, new Date());
    });
    await settled();
    expect(mailsTo('pat@green.example')).toHaveLength(1);
    const states = (await notices()).filter((each: { contactId: string }) => each.contactId === id);
    expect(states.map((each: { type: string; state: string }) => `${each.type} ${each.state}`).sort()).toEqual([
      'visit.moved sent',
      'visit.promised superseded',
    ]);
  });
});

describe('contacts', () => {
  it('are kept by the shop, and by a supervisor for the own sites', async () => {
    const supervisor = await api.signIn('supervisor');
    const add = (who: ApiClient, site: string) =>
      who.post('/v1/site-contacts', {
        ...{ siteId: shop.siteIds.get(site), name: 'Sam', email: 'sam@green.example', notices: [] },
      });
    expect((await add(supervisor, 'S2')).status).toBe(403);
    const made = await add(supervisor, 'S1');
    expect(made.body).toMatchObject({ language: 'en', notices: [] });
    expect((await add(manager, 'S1')).status).toBe(409);
    const path = `/v1/site-contacts/${made.body.id}`;
    const changed = await supervisor.patch(path, { notices: ['visit.done'] }, made.headers.get('etag'));
    expect(changed.body.notices).toEqual(['visit.done']);
    expect((await supervisor.patch(path, { notices: ['visit.done'] }, made.headers.get('etag'))).status).toBe(412);
    expect((await supervisor.delete(path)).status).toBe(204);
    expect((await (await api.signIn('technician')).get('/v1/site-contacts')).status).toBe(403);
  });
});
