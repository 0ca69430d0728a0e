import { beforeAll, expect, it } from '@jest/globals';
import { until } from '../support/api-client.js';
import { accessibilityFaults, DESKTOP, PHONE, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

const SLOW_MS = 120_000;
const PICTURE = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
  'base64',
);

browserStory('the grounds supervisor', { isPlanned: true }, (stage) => {
  /** The shop's own calendar stands at this day now. */
  async function liveOn(day: string): Promise<void> {
    const today = new Intl.DateTimeFormat('en-CA', { timeZone: 'America/Chicago' }).format(new Date());
    const clockShiftDays = Math.round((Date.parse(day) - Date.parse(today)) / 86_400_000);
    await stage.database.store.asOwner((tx) => tx.shop.updateMany({ data: { clockShiftDays } }));
  }

  beforeAll(() => liveOn('2026-06-07'));

  it(
    'sees what can mow, enters hours, reports trouble with a photo, blocks days',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
      const found: string[] = [];
      const look = async () => {
        for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));
      };
      await signInAt(page, 'supervisor@small-shop.example', PASSWORD);
      // S1 has two of the six machines; nothing of the others shows.
      await page.getByRole('heading', { name: /^2 of 2 can mow now and on Sat, Jun 13$/ }).waitFor();
      expect(await page.locator('a[href^="/grounds/"]').count()).toBe(2);
      await look();

      await page.getByRole('link', { name: /^M1 / }).click();
      await page.getByRole('heading', { name: /^M1 can mow now and on/ }).waitFor();
      await page.getByText(/^last 506\.0\sh/).waitFor();
      for (const key of '41') await page.getByRole('button', { name: key, exact: true }).click();
      await page.getByText(/h less than last time/).waitFor();
      await page.getByRole('button', { name: 'Delete the last figure' }).click();
      await page.getByRole('button', { name: 'Delete the last figure' }).click();
      for (const key of '540.5') await page.getByRole('button', { name: key, exact: true }).click();
      await page.getByRole('button', { name: 'Save the hours' }).click();
      await page.getByText('The hours are saved.').waitFor();
      await page.getByText(/^last 540.5\sh/).waitFor();

      await page.getByText('Report trouble').click();
      await page.getByLabel('What does it do?').selectOption('bearing-noise');
      await page.getByText(/never work under a deck held only by a jack/).waitFor();
      await page.getByLabel(/Left, middle or right/).fill('left');
      await page.setInputFiles('input[type="file"]', { name: 'a.png', mimeType: 'image/png', buffer: PICTURE });
      await look();
      await page.getByRole('button', { name: 'Report it to the shop' }).click();
      await page.getByText('The shop has it.').waitFor();
      await page.getByRole('heading', { name: 'M1 must not be used now' }).waitFor();
      await page.getByRole('link', { name: 'Back to the machines' }).click();
      await page.getByRole('heading', { name: /^1 of 2 can mow/ }).waitFor();

      await page.getByText('Block days', { exact: true }).click();
      await page.getByLabel('First day on which nobody may take machines').fill('2026-06-12');
      await page.getByLabel('Why').fill('tournament');
      await page.getByRole('button', { name: 'Block these days' }).click();
      await page.getByText(/tournament/).waitFor();
      await look();

      const manager = await stage.api.signIn('manager');
      const [call] = (await manager.get('/v1/road-calls')).body.items;
      expect(call).toMatchObject({ symptomCode: 'bearing-noise', usable: false, answers: { 'which-spindle': 'left' } });
      const photos = await until(
        () => manager.get(`/v1/photos?roadCallId=${call.id}`),
        ({ body }) => body.items.length > 0,
        5,
      );
      expect(photos.body.items).toHaveLength(1);
      expect((await manager.get('/v1/blackouts')).body.items).toMatchObject([{ from: '2026-06-12', to: '2026-06-12' }]);
      const readings = await stage.database.store.asOwner((tx) =>
        tx.reading.findMany({ where: { source: 'supervisor' } }),
      );
      expect(readings.map((reading) => String(reading.hours))).toEqual(['540.5']);
      expect(found).toEqual([]);
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'answers the planned visit and names an event; the shop sees it in the week and says no with a reason',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(page, 'supervisor@small-shop.example', PASSWORD);
      await page.getByRole('button', { name: 'This suits us' }).first().click();
      await page.getByText('You said that it suits.').waitFor();
      await page.getByRole('button', { name: 'Ask to move it' }).first().click();
      await page.getByLabel('Why it does not suit').fill('graduation');
      const days = page.getByRole('group', { name: 'Days that would suit' }).getByRole('checkbox');
      await days.nth(1).check();
      const found: string[] = [];
      for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));
      await page.getByRole('button', { name: 'Ask the shop' }).click();
      await page.getByText('The shop has not answered yet.').waitFor();

      await page.getByText('Events', { exact: true }).click();
      await page.getByLabel('What it is').fill('graduation');
      await page.getByLabel('Day', { exact: true }).fill('2026-06-12');
      await page.getByRole('button', { name: 'Tell the shop' }).click();
      await page.getByText(/graduation, Fri, Jun 12 15:00/).waitFor();
      for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));

      const shop = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(shop.page, 'manager@small-shop.example', PASSWORD);
      await shop.page.getByRole('button', { name: /the site asks for another day/ }).click();
      await shop.page.getByText(/The site asks for another day: graduation/).waitFor();
      await shop.page.getByLabel('What you say to it').fill('We are near only then.');
      found.push(...(await accessibilityFaults(shop.page, 'light')));
      await shop.page.getByRole('button', { name: 'It has to stay' }).click();
      await shop.page.getByText(/The site asks for another day: graduation/).waitFor({ state: 'detached' });

      await page.reload();
      await page.getByText('We are near only then.').waitFor();
      await page.getByText('Calendar address').click();
      await page.getByRole('button', { name: 'Make a new address' }).click();
      const address = await page.getByLabel('It is shown only this once:').inputValue();
      expect(await (await fetch(address)).text()).toMatch(/^BEGIN:VCALENDAR/);
      for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));
      await page.getByRole('button', { name: 'Revoke it' }).click();
      await page.getByLabel('It is shown only this once:').waitFor({ state: 'detached' });
      expect((await fetch(address)).status).toBe(404);

      const events = await stage.database.store.asOwner((tx) => tx.siteEvent.findMany());
      expect(events.map((event) => [event.name, event.fromMinute])).toEqual([['graduation', 15 * 60]]);
      expect(found).toEqual([]);
      expect([...faults, ...shop.faults]).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'scans the label of a machine and enters its hours without signing in, in a few presses; signed in, is led to it',
    async () => {
      const manager = await stage.api.signIn('manager');
      const machines = (await manager.get('/v1/machines')).body.items as { id: string; code: string }[];
      const machineId = machines.find((machine) => machine.code === 'M4')!.id;
      const label = (await manager.post('/v1/machine-labels', { machineId })).body.items[0];
      // As it stands in the code: all in capitals.
      const address = `/L/${label.id}`;

      const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
      let presses = 0;
      const press = async (name: string) => {
        presses += 1;
        await page.getByRole('button', { name, exact: true }).click();
      };
      await page.goto(address);
      await page.getByRole('heading', { name: 'What does the hour meter of M4 show?' }).waitFor();
      await page.getByText(/^last 659\.0\sh/).waitFor();
      const found: string[] = [];
      for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));
      for (const key of '663.2') await press(key);
      await press('Save the hours');
      await page.getByText('The hours are saved.').waitFor();
      await page.getByText(/^last 663\.2\sh/).waitFor();
      // Five keys and one button: at two seconds each, with the scan, under 15 s.
      expect(presses).toBe(6);

      await manager.delete(`/v1/machine-labels/${label.id}`);
      await page.reload();
      await page.getByRole('heading', { name: 'This label opens nothing any more' }).waitFor();
      await page.getByText(/Scan the machine’s new label, or tell the shop the hours/).waitFor();
      expect(await page.getByRole('button', { name: '7' }).count()).toBe(0);

      const anew = (await manager.post('/v1/machine-labels', { machineId })).body.items[0];
      const own = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(own.page, 'supervisor@small-shop.example', PASSWORD);
      await own.page.goto(`/L/${anew.id}`);
      await own.page.getByRole('heading', { name: /^M4 can mow now and on/ }).waitFor();

      const readings = await stage.database.store.asOwner((tx) => tx.reading.findMany({ where: { source: 'label' } }));
      expect(readings.map((reading) => [reading.machineId, String(reading.hours)])).toEqual([[machineId, '663.2']]);
      expect(found).toEqual([]);
      expect([...faults, ...own.faults].filter((fault) => !/410/.test(fault))).toEqual([]);
    },
    SLOW_MS,
  );

  it('counts until the Saturday to come by the shop’s calendar, however old its forecast is', async () => {
    await liveOn('2026-06-17');
    const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
    await signInAt(page, 'supervisor@small-shop.example', PASSWORD);
    await page.getByRole('heading', { name: /can mow now and on Sat, Jun 20$/ }).waitFor();
    await page.getByText('No visit is planned yet.').waitFor();
    expect(faults).toEqual([]);
  });
});
