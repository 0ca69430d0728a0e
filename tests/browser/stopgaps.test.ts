import { expect, it } from '@jest/globals';
import { accessibilityFaults, DESKTOP, PHONE, phoneFaults, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 120_000;

browserStory('temporary repairs at the desk', { now: '2026-06-07T15:00:00Z', isPlanned: true }, (stage) => {
  it(
    'are renewed where their limit is near, and closed on the machine’s page, with who did it and why',
    async () => {
      const machineId = stage.shop.machineIds.get('M2')!;
      const manager = await stage.api.signIn('manager');
      const made = await manager.post('/v1/stopgaps', {
        ...{ machineId, description: 'hose bound with tape', madeOn: '2026-06-05', limitOn: '2026-06-09', minutes: 30 },
      });
      expect(made.status).toBe(201);

      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, 'manager@small-shop.example', PASSWORD);
      await page.getByRole('link', { name: 'To decide' }).click();
      const alert = page.getByRole('listitem').filter({ hasText: 'hose bound with tape' });
      await alert.getByText('Renew: it holds longer').click();
      await alert.getByLabel('Good until').fill('2026-06-08');
      await alert.getByLabel('Why').first().fill('taped again');
      await alert.getByRole('button', { name: 'Renew the stopgap' }).click();
      await alert.getByText(/^That is about .* it is good until about .* as it is$/).waitFor();
      expect(await accessibilityFaults(page, 'light')).toEqual([]);
      await alert.getByLabel('Good until').fill('2026-06-20');
      await alert.getByRole('button', { name: 'Renew the stopgap' }).click();
      await alert.waitFor({ state: 'detached' });

      const phone = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(phone.page, 'manager@small-shop.example', PASSWORD);
      await phone.page.goto(`/machines/${machineId}/forecast`);
      await phone.page.getByText(/^Stopgap “hose bound with tape” renewed: .*taped again/).waitFor();
      await phone.page.getByText('Close: its return is not owed any more').click();
      expect(await phoneFaults(phone.page)).toEqual([]);
      await phone.page.getByLabel('What became of it').selectOption('not-needed');
      await phone.page.getByLabel('Why').last().fill('the machine is sold');
      await phone.page.getByRole('button', { name: 'Close the stopgap' }).click();
      await phone.page.getByText(/^Stopgap “hose bound with tape” closed .*the machine is sold/).waitFor();
      await phone.page.getByText('Held by a temporary repair').waitFor({ state: 'detached' });
      // A refusal is no fault of the page.
      expect([...faults, ...phone.faults].filter((fault) => !fault.includes('422'))).toEqual([]);
    },
    SLOW_MS,
  );
});
