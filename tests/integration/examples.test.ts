import { randomUUID } from 'node:crypto';
import { EXAMPLES, SAMPLE_IDS } from '@deckround/api';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { ApiClient } from '../support/api-client.js';
import { contractOf } from '../support/contract.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { draftOf, plannedVisit } from '../support/finished-visit.js';
import { plannedShop } from '../support/planned-shop.js';
import { runningApi } from '../support/running-api.js';
import type { SmallShop } from '../support/small-shop.js';

let database: TestDatabase;
let shop: SmallShop;
let api: Awaited<ReturnType<typeof runningApi>>;
let manager: ApiClient;
let contract: ReturnType<typeof contractOf>;
/** What stands for the ids of the examples, and in paths. */
const real = new Map<string, string>();

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database);
  shop = await plannedShop(database, api);
  manager = await api.signIn('manager');
  contract = contractOf((await api.client.get('/openapi.json')).body);
  const one = async (path: string) => (await manager.get(path)).body.items[0].id as string;
  const stand = (sample: string, id: string) => real.set(sample, id);
  stand(SAMPLE_IDS.machine, shop.machineIds.get('M1')!);
  stand(SAMPLE_IDS.site, shop.siteIds.get('S1')!);
  stand(SAMPLE_IDS.otherSite, shop.siteIds.get('S2')!);
  stand(SAMPLE_IDS.customer, await one('/v1/customers'));
  stand(SAMPLE_IDS.technician, await one('/v1/technicians'));
  stand(SAMPLE_IDS.serviceItem, await one('/v1/service-items?machineClass=zero-turn'));
  stand(SAMPLE_IDS.part, await one('/v1/parts'));
  stand(SAMPLE_IDS.slot, await one('/v1/component-slots'));
  const failure = { machineId: shop.machineIds.get('M1')!, itemCode: 'replace-spindle-bearings', slot: 'spindle 1' };
  const failed = await manager.post('/v1/completions', { ...failure, doneOn: '2026-05-20', outcome: 'failed' });
  stand(SAMPLE_IDS.completion, failed.body.id);
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

const filled = (value: unknown): unknown => {
  let text = JSON.stringify(value);
  for (const [sample, id] of real) text = text.replaceAll(sample, id);
  return JSON.parse(text);
};

describe('the examples of the document', () => {
  it('are there for every body, and are as declared', () => {
    const named = contract.operations.filter((operation) => operation.body !== null);
    expect(named.filter(({ id }) => !(id in EXAMPLES)).map(({ id }) => id)).toEqual([]);
    expect(Object.keys(EXAMPLES).filter((id) => !named.some((operation) => operation.id === id))).toEqual([]);
    const faults = named.flatMap(({ id, body }) => {
      const fault = contract.faultOf(body!, EXAMPLES[id]);
      return fault === null ? [] : [`${id}: ${fault}`];
    });
    expect(faults).toEqual([]);
  });

  it('work: each is sent as it stands, in the order of a shop’s life', async () => {
    const sent = new Set<string>();
    const faults: string[] = [];
    /** Sends an example as it stands; `id` fills the path, `more` is what only this run can know. */
    const send = async (name: string, id = '', more: object = {}, as = manager) => {
      const operation = contract.operations.find((each) => each.id === name)!;
      sent.add(name);
      const path = operation.path.replace(/\{\w+\}/, id);
      const headers: Record<string, string> = { 'idempotency-key': randomUUID() };
      if (operation.parameters.some((each) => /if-match/i.test(each.name))) {
        const row = path.replace(
          /\/(accept|refuse|reverse|issue|credit|amend|decision|reply|machine|rotate-secret)$/,
          '',
        );
        headers['if-match'] = (await manager.get(row)).headers.get('etag') ?? '"1"';
      }
      const answer = await as.send(operation.method, path, { ...(filled(EXAMPLES[name]) as object), ...more }, headers);
      if (answer.status >= 300) faults.push(`${name}: ${answer.status} ${JSON.stringify(answer.body)}`);
      return answer.body;
    };
    const change = async (kind: string, more: object = {}) => {
      const made = await send(`${kind}_add`, '', more);
      await send(`${kind}_change`, made.id);
      return made;
    };
    const { store } = database;

    await send('Access_signIn');
    const person = await send('People_addPerson');
    await send('People_changePerson', person.id);
    await send('People_addKey');
    await send('Shop_change');
    for (const kind of ['Customer', 'Site', 'Machine', 'Technician', 'Part']) await change(kind);
    const order = await change('PartOrder');
    await send('Deliveries_takeBack', order.id);
    await send('ServiceItem_change', real.get(SAMPLE_IDS.serviceItem));
    await send('Import_check');
    await send('Import_import');
    for (const kind of ['Blackout', 'MachineOverride', 'ComponentLife', 'Absence', 'MachineMove', 'Agreement'])
      await send(`${kind}_add`);
    await send('Travel_learn');
    await send('Weather_keep');

    await send('Readings_record');
    const { items: readings } = (await manager.get(`/v1/readings?machineId=${shop.machineIds.get('M1')}`)).body;
    await send('Readings_decide', readings[0].id);
    const { items: labels } = await send('MachineLabels_make');
    await send('Labels_record', labels[0].id, {}, api.client);
    await send('MeterChange_add');
    await send('Completion_add');
    await send('Finding_add');
    const stopgap = await change('Stopgap');
    await send('StopgapDecisions_renew', stopgap.id);
    await send('StopgapDecisions_close', stopgap.id);
    await send('Bearings_check');
    await send('FailureCause_add');
    await send('SiteEvent_add');
    await send('VisitBar_add');
    await change('SiteContact');
    await send('CalendarAddresses_create');

    await send('Due_askForecast');
    await send('Week_confirm');
    const { items: visits } = (await manager.get('/v1/visits?limit=500')).body;
    // Visits to the site that a technician is barred from by now may be nobody's to make: ids are drawn, so any can be first.
    const free = visits.find((visit: { siteId: string }) => visit.siteId !== real.get(SAMPLE_IDS.site));
    const prices = await manager.get(`/v1/visits/${free.id}/move-prices`);
    expect(prices).toMatchObject({ status: 200 });
    const other = prices.body.places.find((place: { isWhereItStands: boolean }) => !place.isWhereItStands);
    await send('Moves_move', free.id, { technicianId: other.technicianId, date: other.date });
    await send('Visits_change', free.id);
    const supervisor = await api.signIn('supervisor');
    const { items: seen } = (await supervisor.get('/v1/visits?limit=500')).body;
    const answered = await send('VisitAnswers_say', seen[0].id, {}, supervisor);
    await send('VisitAnswers_reply', answered.id);

    const call = await change('RoadCall', { calledAt: new Date().toISOString() });
    expect(call.state).toBe('open');
    const proposal = await proposalOf(store, shop.shopId);
    await send('Proposals_accept', await proposal());
    await send(
      'Proposals_reverse',
      (await manager.get('/v1/reliability/interval-proposals?state=accepted')).body.items[0].id,
    );
    await send('Proposals_refuse', await proposal());

    await send('ChargeSettings_change');
    await send('ChargeSettings_changeCustomer', real.get(SAMPLE_IDS.customer));
    const { visit, documents } = await draftsOf(store, shop, manager);
    real.set(SAMPLE_IDS.visitItem, visit.visitItems[0]!.id);
    await send('Visits_finish', visit.id);
    await send('ChargeDocuments_change', documents[0]);
    for (const each of documents) await send('ChargeDocuments_issue', each);
    await send('ChargeDocuments_credit', documents[0]);
    await send('ChargeDocuments_amend', documents[1]);
    const key = await manager.post('/v1/integration-keys', { name: 'ledger', scopes: ['accounting'] });
    const ledger = new ApiClient(api.client.address, key.body.key);
    await send('Accounting_refuse', documents[2], {}, ledger);
    await send('Accounting_acknowledge', documents[2], {}, ledger);
    await send('Accounting_paid', documents[2], {}, ledger);
    real.set(SAMPLE_IDS.document, documents[2]!);
    await send('Accounting_reconcile', '', {}, ledger);

    const hook = await send('Webhooks_create');
    await send('Webhooks_change', hook.id);
    await send('Webhooks_rotate', hook.id);
    await send('Snapshots_take');
    const { items: units } = (await manager.get('/v1/telematics/units?matched=false')).body;
    await send('TelematicsUnits_match', units[0].id);
    const source = await send('TelematicsSources_create');
    await send('TelematicsSources_change', source.id);
    await send('FieldRecords_record');
    await send('Plans_ask');

    expect(faults).toEqual([]);
    // What needs more than a shop's first week stands in tests of its own, by name.
    const elsewhere = [
      'PartsTakenBack_takeBack',
      'FieldRecords_decide',
      'RoadCallAnswers_options',
      'RoadCallAnswers_choose',
      'ChargeDocuments_leave',
    ];
    expect(Object.keys(EXAMPLES).filter((name) => !sent.has(name))).toEqual(elsewhere);
  });
});

/** Makes proposals to decide, one after the other. */
async function proposalOf(store: TestDatabase['store'], shopId: string) {
  return () =>
    store.asOwner(async (tx) => {
      const item = await tx.serviceItem.findFirstOrThrow({ where: { shopId, code: 'replace-deck-belt' } });
      const date = new Date('2026-06-08T00:00:00Z');
      const run = await tx.lifeRun.create({ data: { shopId, asOf: date, askedAt: date, status: 'done' } });
      const figures = { currentHours: item.intervalHours, proposedHours: 333, savesCentsPerThousandHours: 100 };
      const words = { evidence: {}, sentence: 'test', proposedOn: date };
      const made = await tx.intervalProposal.create({
        data: { shopId, serviceItemId: item.id, runId: run.id, ...figures, ...words },
      });
      return made.id;
    });
}

/** Three drafts of finished visits, and a visit that is still to be finished. */
async function draftsOf(store: TestDatabase['store'], shop: SmallShop, manager: ApiClient) {
  const documents: string[] = [];
  for (const day of ['2026-05-26', '2026-05-27', '2026-05-28'])
    documents.push((await draftOf(store, shop, manager, day)).draft.id);
  return { documents, visit: await plannedVisit(store, shop, '2026-06-08') };
}
