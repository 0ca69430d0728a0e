import { beforeAll, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import type { ApiClient } from '../support/api-client.js';
import { DESKTOP, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 60_000;

browserStory('the manager agrees terms and asks another system', { now: '2026-06-07T15:00:00Z' }, (stage) => {
  let manager: ApiClient;
  let page: Page;

  beforeAll(async () => {
    manager = await stage.api.signIn('manager');
    ({ page } = await visitor(stage.browser, stage.api.service.address, DESKTOP));
    await signInAt(page, 'manager@small-shop.example', PASSWORD);
    await page.waitForURL(/\/week/);
  });

  it(
    'gives a customer a rate of its own, is told of an amount that is none, and takes the rate back',
    async () => {
      const [customer] = (await manager.get('/v1/customers')).body.items;
      const terms = async () => (await manager.get(`/v1/customers/${customer.id}/charge-settings`)).body.terms;
      await page.goto(`/register/customers/${customer.id}`);
      const tick = page.getByLabel(/Other labour rates \(now as the shop: \$95\.00 an hour\)/);
      await tick.check();
      const rate = page.getByLabel('Rate an hour');
      const save = page.getByRole('button', { name: 'Save how it is charged' });
      await rate.fill('dear');
      await save.click();
      await page.getByText('An amount, like 95.00').waitFor();
      expect(await terms()).toEqual({});
      await rate.fill('120,50');
      await page.getByLabel('Standing order number').fill('PO 9');
      await save.click();
      await page.getByText('Saved. It holds for documents').waitFor();
      expect(await terms()).toEqual({ labour: { ratePerHour: '120.50' }, buyer: { purchaseOrder: 'PO 9' } });

      await page.reload();
      await page.getByLabel('Other labour rates').uncheck();
      await page.getByText('now as the shop: $95.00').waitFor();
      await save.click();
      await page.getByText('Saved. It holds for documents').waitFor();
      expect(await terms()).toEqual({ buyer: { purchaseOrder: 'PO 9' } });
    },
    SLOW_MS,
  );

  it(
    'has a system asked for what machines report, and no longer',
    async () => {
      await page.goto('/register/connections');
      await page.getByText('Ask another system').click();
      await page.getByLabel('Whose machines it tells of').fill('Fleet box');
      await page.getByLabel('Address of its fleet snapshot').fill('https://fleet.example/snapshot');
      await page
        .getByLabel(/^Value of the Authorization header/)
        .last()
        .fill('Bearer 12345');
      await page.getByLabel('Minutes between two looks').fill('30');
      await page.getByRole('button', { name: 'Ask it' }).click();
      await page.getByRole('heading', { name: /^Fleet box/ }).waitFor();
      await page.getByText('Asked every 30 min:').waitFor();
      await page.getByText('Its credentials are kept and never shown.').waitFor();
      expect(await page.getByText('Bearer 12345').count()).toBe(0);
      await page.getByRole('button', { name: 'Stop asking Fleet box' }).click();
      await page.getByText('Not asked any more').waitFor();
      const { items } = (await manager.get('/v1/telematics/sources')).body;
      expect(items).toMatchObject([{ name: 'Fleet box', everySeconds: 1800, state: 'disabled' }]);
      // A double click asks, and does no more.
      await page.getByRole('button', { name: 'Remove Fleet box' }).dblclick();
      await page.getByRole('button', { name: 'Yes, remove Fleet box' }).click();
      await page.getByRole('heading', { name: /^Fleet box/ }).waitFor({ state: 'detached' });
    },
    SLOW_MS,
  );
});
