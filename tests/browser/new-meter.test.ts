import { expect, it } from '@jest/globals';
import { DESKTOP, PHONE, phoneFaults, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 120_000;

browserStory('a new hour meter', { now: '2026-06-07T15:00:00Z' }, (stage) => {
  it(
    'is told on the machine’s page, each fault at its field, stands in its history, and is taken back',
    async () => {
      const path = `/machines/${stage.shop.machineIds.get('M2')}/forecast`;
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, 'manager@small-shop.example', PASSWORD);
      await page.goto(path);
      await page.getByText('It has the meter that it came with').waitFor();
      // work is told by its name beside, not by its code
      const recorded = page.locator('section').filter({ has: page.getByRole('heading', { name: 'Work recorded' }) });
      await recorded.getByRole('rowheader', { name: 'Sharpen and balance blades' }).first().waitFor();
      await page.locator('summary').filter({ hasText: 'New hour meter fitted' }).click();
      await page.getByLabel('Fitted on').fill('2026-06-09');
      await page.getByLabel('Last hours of the old meter').fill('557,5 h');
      await page.getByRole('button', { name: 'Record the new meter' }).click();
      await page.getByText('hours as a decimal string').waitFor();
      await page.getByLabel('Last hours of the old meter').fill('557,5');
      await page.getByRole('button', { name: 'Record the new meter' }).click();
      await page.getByText('it lies in the future').waitFor();
      expect(await page.getByLabel('Fitted on').getAttribute('aria-invalid')).toBe('true');
      await page.getByLabel('Fitted on').fill('2026-06-05');
      await page.getByRole('button', { name: 'Record the new meter' }).click();
      await page.getByText(/^New meter Fri, Jun 5, 2026: .*557\.5.*0\.0/).waitFor();
      await page.getByText(/^New hour meter fitted Fri, Jun 5, 2026: /).waitFor();

      const phone = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(phone.page, 'manager@small-shop.example', PASSWORD);
      await phone.page.goto(path);
      await phone.page.locator('summary').filter({ hasText: 'New hour meter fitted' }).click();
      expect(await phoneFaults(phone.page)).toEqual([]);
      const meter = phone.page.getByRole('listitem').filter({ hasText: 'New meter' });
      await meter.getByRole('button', { name: 'Take back' }).click();
      await phone.page.getByRole('button', { name: 'No new meter was fitted then: take it back' }).click();
      await phone.page.getByText('It has the meter that it came with').waitFor();
      expect([...faults, ...phone.faults].filter((fault) => !/422|404/.test(fault))).toEqual([]);
    },
    SLOW_MS,
  );
});
