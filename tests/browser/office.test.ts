import { randomUUID } from 'node:crypto';
import { beforeAll, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { DESKTOP, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { draftOf } from '../support/finished-visit.js';
import { PASSWORD, WEEK } from '../support/small-shop.js';

const SLOW_MS = 120_000;

browserStory('the manager at the desk', { now: '2026-06-07T15:00:00Z', isPlanned: true }, (stage) => {
  let manager: ApiClient;

  beforeAll(async () => {
    manager = await stage.api.signIn('manager');
  });

  async function desk() {
    const opened = await visitor(stage.browser, stage.api.service.address, DESKTOP);
    await signInAt(opened.page, 'manager@small-shop.example', PASSWORD);
    // A press before the first page has opened would lose against it.
    await opened.page.waitForURL(/\/week/);
    return opened;
  }

  it(
    'answers a site’s wish with the offered day, lets a late record count, orders what lacks',
    async () => {
      const bearing = (await manager.get('/v1/parts')).body.items.find(
        (part: { code: string }) => part.code === 'BRG-6205-2Z',
      );
      await manager.post('/v1/stopgaps', {
        ...{
          machineId: stage.shop.machineIds.get('M2')!,
          code: 'bearing',
          description: 'old bearing greased and left in',
        },
        ...{ madeOn: '2026-06-05', limitOn: '2026-06-12', partId: bearing.id, partQuantity: '2', minutes: 45 },
        partExpectedOn: '2026-06-09',
      });
      const run = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 1000 });
      await until(
        () => manager.get(`/v1/plan-runs/${run.body.id}`),
        ({ body }) => body.status === 'done',
      );
      const { items } = (await manager.get(`/v1/visits?from=${WEEK}&siteId=${stage.shop.siteIds.get('S1')}`)).body;
      const supervisor = await stage.api.signIn('supervisor');
      await supervisor.post(`/v1/visits/${items[0].id}/answers`, { kind: 'move', reason: 'tournament' });
      // A record for a visit that is done already waits in review.
      const { visit } = await draftOf(stage.database.store, stage.shop, manager, '2026-06-02');
      const technician = await stage.api.signIn('technician');
      await technician.post('/v1/field-records', {
        ...{ id: randomUUID(), visitId: visit.id, machineId: stage.shop.machineIds.get('M1') },
        ...{ deviceAt: '2026-06-07T14:00:00Z', sentAt: '2026-06-07T15:00:00Z' },
        fact: { kind: 'part-used', partId: null, name: 'shim', quantity: '2' },
      });
      const { page, faults } = await desk();
      await page.getByRole('link', { name: 'To decide' }).click();
      await page.getByRole('link', { name: /^To decide\s*2$/ }).waitFor();
      const wish = page.getByRole('listitem').filter({ hasText: 'A site asks for another day: Site S1' });
      await wish.getByRole('button', { name: /^Move it to / }).click();
      await wish.waitFor({ state: 'detached' });
      const late = page.getByRole('listitem').filter({ hasText: 'M1: used: 2 shim' });
      await late.getByRole('button', { name: 'It counts' }).click();
      await late.waitFor({ state: 'detached' });
      expect((await manager.get(`/v1/visits/${items[0].id}`)).body).toMatchObject({ answer: { state: 'met' } });
      expect((await manager.get('/v1/field-records?state=accepted')).body.items).toHaveLength(1);

      await stage.database.store.inShop(stage.shop.shopId, (tx) => tx.stock.updateMany({ data: { onHand: 0 } }));
      // Lead times come late: whoever is quick waits for the day that they make.
      await page.route(/\/v1\/parts\b/, async (route) => {
        await new Promise((resolve) => setTimeout(resolve, 1000));
        await route.continue();
      });
      await page.getByRole('link', { name: 'Orders' }).click();
      await page.getByRole('heading', { name: /^\d+ parts? (have|has) to be ordered/ }).waitFor();
      await page.getByRole('button', { name: 'BRG-6205-2Z is ordered' }).click();
      const orders = await until(
        () => manager.get('/v1/part-orders'),
        ({ body }) => body.items.length > 0,
        10,
      );
      expect(orders.body.items).toMatchObject([{ orderedOn: '2026-06-07', expectedOn: '2026-06-10' }]);

      await page.goto(`/week?of=${WEEK}`);
      await page.getByText('What would a little more time be worth?').click();
      await page
        .getByText(/would be saved by 15 min more|No day would gain from it/)
        .first()
        .waitFor();
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'issues a draft, takes it back, and changes the hourly rate',
    async () => {
      await manager.patch('/v1/charge-settings', { seller: { legalName: 'Small Shop LLC' } }, '"0"');
      const { draft } = await draftOf(stage.database.store, stage.shop, manager, '2026-06-03');
      const { page, faults } = await desk();
      await page.goto(`/charges/${draft.id}`);
      await page.getByRole('heading', { name: /^Draft, Site S1: / }).waitFor();
      await page.getByLabel('Purchase order of the customer').fill('PO 7');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByRole('button', { name: 'Reckon it again' }).waitFor();
      await page.getByRole('button', { name: 'Issue it' }).click();
      await page.getByRole('heading', { name: /^Invoice .*, Site S1: / }).waitFor();
      const file = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Fetch as PDF' }).click();
      expect((await file).suggestedFilename()).toMatch(/^invoice-.*\.pdf$/);
      await page.getByLabel('Why', { exact: true }).fill('wrong site');
      await page.getByRole('button', { name: 'Take it back', exact: true }).click();
      await page.getByRole('heading', { name: /^Credit .*, Site S1: / }).waitFor();
      const kinds = (await manager.get('/v1/charge-documents?state=issued')).body.items.map(
        (each: { document: { kind: string; purchaseOrder: string } }) =>
          `${each.document.kind} ${each.document.purchaseOrder}`,
      );
      expect(kinds).toEqual(['invoice PO 7', 'credit PO 7']);

      await page.goto('/charges/settings');
      await page.getByRole('group', { name: 'Labour' }).getByLabel('Rate an hour').fill('101.50');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByText('Saved.').waitFor();
      expect((await manager.get('/v1/charge-settings')).body.labour.ratePerHour).toBe('101.50');
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'connects other systems, and says whose days a person drives',
    async () => {
      const { page, faults } = await desk();
      await page.goto('/register/connections');
      await page.getByText('Tell another system').click();
      await page.getByLabel('Address (https)').fill('https://books.example/events');
      await page.getByLabel('document issued').check();
      await page.getByRole('button', { name: 'Add the address' }).click();
      expect(await page.getByLabel(/shown only this once/).inputValue()).toMatch(/^whsec_/);
      await page.getByRole('button', { name: 'Send a trial event' }).click();
      await page.getByText('1 event is on its way.').waitFor();
      await page.getByText('What was sent').click();
      await page.getByRole('rowheader', { name: 'trial' }).waitFor();
      await page.getByRole('button', { name: 'Switch off' }).click();
      await page.getByText('Switched off:').waitFor();

      await page.getByText('Let another program in').click();
      await page.getByLabel('What it is for').fill('books');
      await page.getByLabel('take over charges').check();
      await page.getByRole('button', { name: 'Make the key' }).click();
      const key = page.locator('input[readonly][value^="drk_"]');
      await key.waitFor();
      const asKey = await fetch(`${stage.api.service.address}/v1/accounting/changes`, {
        headers: { authorization: `Bearer ${await key.inputValue()}` },
      });
      expect(asKey.status).toBe(200);
      await page.getByRole('button', { name: 'Revoke books' }).click();
      await page.getByRole('button', { name: 'Yes, lock books out' }).click();
      await page.getByRole('heading', { name: /no key lets one in/ }).waitFor();

      await page.goto('/register/people/new');
      await page.getByLabel('Name').fill('Alder');
      await page.getByLabel('E-mail address').fill('alder@small-shop.example');
      // Sites are asked of a grounds supervisor alone: what is ticked waits, and is not sent for another role.
      const sites = page.getByRole('group', { name: 'Sites that the person looks after' });
      expect(await sites.count()).toBe(0);
      await page.getByLabel('Role').selectOption('supervisor');
      expect(await page.getByLabel(/^Technician/).count()).toBe(0);
      await sites.getByRole('checkbox').first().check();
      await page.getByLabel('Role').selectOption('technician');
      expect(await sites.count()).toBe(0);
      await page.getByLabel('Role').selectOption('supervisor');
      expect(await sites.getByRole('checkbox').first().isChecked()).toBe(true);
      await page.getByLabel('Role').selectOption('technician');
      await page.getByLabel(/First password/).fill('a long enough password');
      await page.getByLabel(/^Technician/).selectOption({ label: 'Technician T2' });
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByRole('link', { name: 'Alder' }).waitFor();
      const people = (await manager.get('/v1/people')).body.items as {
        name: string;
        technicianId: string | null;
        siteIds: string[];
      }[];
      const alder = people.find((person) => person.name === 'Alder');
      expect(alder?.technicianId).not.toBeNull();
      expect(alder?.siteIds).toEqual([]);

      await page.getByRole('link', { name: 'Alder' }).click();
      await page.getByLabel(/^New password/).fill('forgotten no more');
      // A password that was not saved is not kept on the device.
      await page.getByLabel('Name').fill('Alder Reed');
      expect(await page.evaluate('JSON.stringify(localStorage)')).not.toContain('forgotten no more');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByText('Saved').waitFor();
      await stage.api.client.signIn('alder@small-shop.example', 'forgotten no more');

      await page.goto('/register/absences/new');
      await page.getByLabel('Technician').selectOption({ label: 'Technician T1' });
      await page.getByLabel('From').fill('2026-06-15');
      await page.getByLabel('To', { exact: true }).fill('2026-06-19');
      await page.getByLabel('Why').fill('holiday');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByText('holiday').waitFor();
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );
});
