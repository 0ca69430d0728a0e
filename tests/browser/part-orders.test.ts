import { expect, it } from '@jest/globals';
import { accessibilityFaults, DESKTOP, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 120_000;

browserStory('orders of parts at the desk', { now: '2026-06-05T15:00:00Z' }, (stage) => {
  it(
    'are received in part from the list of what is on order, and the rest is cancelled',
    async () => {
      const manager = await stage.api.signIn('manager');
      const { items } = (await manager.get('/v1/parts')).body;
      const part = items.find((each: { code: string }) => each.code === 'BRG-6205-2Z');
      const days = { orderedOn: '2026-06-01', expectedOn: '2026-06-04' };
      expect((await manager.post('/v1/part-orders', { partId: part.id, quantity: '9', ...days })).status).toBe(201);

      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, 'manager@small-shop.example', PASSWORD);
      await page.getByRole('link', { name: 'Orders', exact: true }).click();
      const row = page.getByRole('row').filter({ hasText: 'BRG-6205-2Z' }).filter({ hasText: 'overdue' });
      await row.getByRole('link', { name: 'Receive or cancel' }).click();
      await page.getByText('9 of 9 still to come.').waitFor();
      await page.getByLabel('How many came').fill('4');
      await page.getByRole('button', { name: 'Put on the shelf' }).dblclick();
      await page.getByText('5 of 9 still to come.').waitFor();
      // nothing is proposed for a second press
      expect(await page.getByRole('button', { name: 'Put on the shelf' }).isDisabled()).toBe(true);
      expect(await accessibilityFaults(page, 'light')).toEqual([]);
      await page.getByText('Take back what was received by mistake').click();
      await page.getByLabel('How many did not come').fill('5');
      await page.getByLabel('Why').fill('the box was of another order');
      await page.getByRole('button', { name: 'Take them off the shelf' }).click();
      await page.getByText('only 4 of the order have come').waitFor();
      await page.getByLabel('How many did not come').fill('1');
      await page.getByRole('button', { name: 'Take them off the shelf' }).click();
      await page.getByText('6 of 9 still to come.').waitFor();
      await page.getByText(/^1 taken back .*: the box was of another order/).waitFor();
      // the form beside it does not hold the order to what it was before
      await page.getByLabel('Expected on').fill('2026-06-12');
      await page.getByRole('button', { name: 'Save' }).click();
      await page.getByText('Saved').waitFor();

      await page.getByRole('button', { name: 'Cancel what is still to come' }).click();
      await page.getByRole('button', { name: 'Nothing more of it comes: cancel it' }).click();
      await page.getByText(/^Cancelled on .*: nothing more of it comes\.$/).waitFor();
      await page.getByRole('link', { name: 'Orders', exact: true }).click();
      await page.getByText('Nothing is on order.').waitFor();
      const shelf = (await manager.get(`/v1/parts/${part.id}`)).body.onHand;
      expect(Number(shelf)).toBe(Number(part.onHand) + 3);
      expect(faults.filter((fault) => !fault.includes('422'))).toEqual([]);
    },
    SLOW_MS,
  );
});
