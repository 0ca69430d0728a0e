import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Browser } from 'playwright-core';
import { until } from '../support/api-client.js';
import {
  accessibilityFaults,
  BROWSER_PATH,
  DESKTOP,
  openBrowser,
  PHONE,
  phoneFaults,
  signInAt,
  type Visitor,
  visitor,
} from '../support/browser.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { draftOf } from '../support/finished-visit.js';
import { runningApi } from '../support/running-api.js';
import { createSmallShop, PASSWORD, type SmallShop, WEEK } from '../support/small-shop.js';

/** Room for a busy machine; on an idle one each takes a fraction of it. */
const SLOW_MS = 180_000;

(BROWSER_PATH === '' ? describe.skip : describe)('every screen', () => {
  let database: TestDatabase;
  let shop: SmallShop;
  let api: Awaited<ReturnType<typeof runningApi>>;
  let browser: Browser;
  let desk: Visitor;
  let phone: Visitor;
  let draftId: string;

  beforeAll(async () => {
    database = await freshDatabase();
    shop = await createSmallShop(database.store);
    api = await runningApi(database);
    const manager = await api.signIn('manager');
    const machineId = shop.machineIds.get('M1');
    // One reading to look at: less than the one before it.
    await manager.post('/v1/readings', { readings: [{ machineId, readAt: '2026-06-02T15:00:00Z', hours: '12.5' }] });
    // One machine that nobody knows, and one that is known by its serial number.
    const unit = (SerialNumber: string) => ({
      EquipmentHeader: { OEMName: 'Greenline', Model: 'G2', SerialNumber },
      CumulativeOperatingHours: { datetime: '2026-06-02T15:00:00Z', Hour: 812.5 },
    });
    await manager.post('/v1/telematics/snapshots', { Fleet: { Equipment: [unit('QX-9'), unit('SN2')] } });
    const forecast = await manager.post('/v1/forecast-runs', { asOf: '2026-06-07', costFrom: WEEK, costDays: 14 });
    const plan = await manager.post('/v1/plan-runs', { weekOf: WEEK, iterations: 2000 });
    for (const path of [`forecast-runs/${forecast.body.id}`, `plan-runs/${plan.body.id}`])
      await until(
        () => manager.get(`/v1/${path}`),
        ({ body }) => body.status === 'done',
      );
    draftId = (await draftOf(database.store, shop, manager, '2026-06-02')).draft.id;
    browser = await openBrowser();
    desk = await visitor(browser, api.service.address, DESKTOP);
    phone = await visitor(browser, api.service.address, PHONE);
    for (const { page } of [desk, phone]) await signInAt(page, 'manager@small-shop.example', PASSWORD);
  });
  afterAll(async () => {
    await browser.close();
    await api.service.stop();
    await database.drop();
  });

  const screens = () => [
    `/week?of=${WEEK}`,
    '/decisions',
    '/road-calls',
    '/due?weeks=1',
    '/readings',
    '/heard-from',
    '/register/machines',
    `/register/machines/${shop.machineIds.get('M1')}`,
    `/register/sites/${shop.siteIds.get('S1')}`,
    '/register/people/new',
    '/register/absences',
    '/register/connections',
    '/register/import',
    '/register/shop',
    '/orders',
    '/charges',
    `/charges/${draftId}`,
    '/charges/settings',
    '/start',
    `/machines/${shop.machineIds.get('M1')}/forecast`,
    '/forecasts',
    '/looking-back',
    '/help',
  ];

  it(
    'has no fault against WCAG 2.2 AA, by day and in the dark',
    async () => {
      const { page } = desk;
      const found: string[] = [];
      for (const path of screens()) {
        await page.goto(path);
        await page.getByText(/^(One moment|Holding past forecasts)/).waitFor({ state: 'detached' });
        for (const light of ['light', 'dark'] as const)
          for (const fault of await accessibilityFaults(page, light)) found.push(`${path} ${fault}`);
      }
      expect(found).toEqual([]);
      expect(desk.faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'fits a phone without scrolling sideways, in both languages, and can be read and pressed there',
    async () => {
      const { page } = phone;
      const found: string[] = [];
      for (const language of ['en', 'es'] as const) {
        const look = JSON.stringify(JSON.stringify({ language, light: 'auto' }));
        await page.evaluate(`localStorage.setItem('deckround.preferences', ${look})`);
        for (const path of screens()) {
          await page.goto(path);
          await page.getByText(/^(One moment|Un momento|Holding past|Comparando)/).waitFor({ state: 'detached' });
          await page.locator('h1').first().waitFor();
          const over = await page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');
          if (over > 0) found.push(`${language} ${path} is ${over} px too wide`);
          // The words change no colour and no target: once is enough.
          if (language === 'en') for (const fault of await phoneFaults(page)) found.push(`${path} ${fault}`);
        }
      }
      expect(found).toEqual([]);
      expect(phone.faults).toEqual([]);
    },
    SLOW_MS,
  );

  it('has its sign-in page without fault too', async () => {
    const { page } = await visitor(browser, api.service.address, PHONE);
    await page.goto('/sign-in');
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    for (const light of ['light', 'dark'] as const) expect(await accessibilityFaults(page, light)).toEqual([]);
  });
});
