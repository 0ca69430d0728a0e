import { expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { until } from '../support/api-client.js';
import { accessibilityFaults, PHONE, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

/** Room for a busy machine. */
const SLOW_MS = 120_000;
const PICTURE = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
  'base64',
);

browserStory('the technician', { isPlanned: true }, (stage) => {
  it(
    'does a full day without a network, with a reload in between: everything arrives exactly once',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
      const context = page.context();
      await signInAt(page, 'technician@small-shop.example', PASSWORD);
      await page.getByRole('heading', { name: /^Next: Site/ }).waitFor();
      // The app itself has to be on the device, the day too.
      await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
      await page.waitForFunction('navigator.serviceWorker.controller !== null');
      const found: string[] = [];
      const look = async () => {
        for (const light of ['light', 'dark'] as const) found.push(...(await accessibilityFaults(page, light)));
      };
      await look();
      expect(await page.getByRole('link', { name: 'Show the way' }).first().getAttribute('href')).toMatch(
        /^geo:41\.\d{6},-93\.\d{6}$/,
      );

      await context.setOffline(true);
      await page.locator('ol a[href*="/day/"]').first().click();
      await page.getByRole('button', { name: 'Start the time' }).click();
      await look();
      const visitUrl = page.url();
      const machines = await page
        .locator('ul a[href*="/day/"]')
        .evaluateAll((links) => links.map((link) => (link as unknown as { pathname: string }).pathname));
      let records = 0;
      for (const [index, path] of machines.entries()) {
        await page.locator(`a[href="${path}"]`).click();
        records += await workOnMachine(page, index);
        if (index === 0) {
          await look();
          // Everything is read from the device alone.
          await page.reload();
          await page.getByText('Cautions, confirmed').waitFor();
          await page.getByText(`${records} records kept here`).waitFor();
        }
        await page.getByRole('link', { name: 'Back to the site' }).click();
        await page.getByRole('heading', { name: 'Finish the visit' }).waitFor();
      }
      // The clock still runs: it ends with the visit.
      await page.getByRole('button', { name: /^Stop the time/ }).waitFor();
      await page.getByLabel('Name of whoever signs').fill('Sorrel Ashby');
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByText('This visit is finished.').waitFor();
      expect(await page.getByRole('button', { name: /^(Start|Stop) the time/ }).count()).toBe(0);
      records += 2;
      expect(records).toBeGreaterThanOrEqual(23);
      await page.getByText(`${records} records kept here`).click();
      await page.getByRole('heading', { name: `${records} records are not sent yet` }).waitFor();
      await look();

      // The answers to the first record and the first photo are lost on the way: both are sent again.
      const lost = new Set<string>();
      await context.route(/\/v1\/(field-records|photos\/.*)$|\/v1\/photos\//, async (route) => {
        const kind = route.request().method();
        if (kind === 'GET' || lost.has(kind)) return route.continue();
        lost.add(kind);
        await route.fetch();
        await route.abort();
      });
      await context.setOffline(false);
      await page.getByText(`All ${records} records sent`).waitFor({ timeout: 60_000 });
      expect([...lost].sort()).toEqual(['POST', 'PUT']);

      const manager = await stage.api.signIn('manager');
      const visitId = visitUrl.split('/').at(-1)!;
      const kept = await manager.get(`/v1/field-records?visitId=${visitId}&limit=500`);
      const photos = await manager.get(`/v1/photos?visitId=${visitId}`);
      expect(photos.body.items).toHaveLength(3);
      expect(kept.body.items).toHaveLength(records - 3);
      expect(new Set(kept.body.items.map((each: { state: string }) => each.state))).toEqual(new Set(['applied']));
      const ofKind = (kind: string) => kept.body.items.filter((each: { kind: string }) => each.kind === kind).length;
      const visit = (await manager.get(`/v1/visits/${visitId}`)).body;
      expect(visit.state).toBe('done');
      expect(visit.items.filter((each: { state: string }) => each.state === 'done')).toHaveLength(
        ofKind('item-done') + 1, // and the work found on the spot
      );
      const readings = await stage.database.store.asOwner((tx) =>
        tx.reading.count({ where: { source: 'technician' } }),
      );
      expect(readings).toBe(ofKind('reading'));
      const [times, uses, stopgaps] = await stage.database.store.asOwner(async (tx) => [
        await tx.workTime.count(),
        await tx.partUse.count(),
        await tx.stopgap.count(),
      ]);
      expect([times, uses, stopgaps]).toEqual([1, ofKind('part-used'), 1]);
      expect(found).toEqual([]);
      // Without a network the browser itself writes what it could not fetch.
      expect(faults.filter((fault) => !/ERR_INTERNET_DISCONNECTED|ERR_FAILED/.test(fault))).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'keeps the time of a visit that the shop has cancelled meanwhile',
    async () => {
      await stage.database.store.asOwner((tx) => tx.visit.updateMany({ data: { state: 'confirmed' } }));
      const { page } = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(page, 'technician@small-shop.example', PASSWORD);
      await page.getByRole('heading', { name: /^Next: Site/ }).waitFor();
      await page.locator('ol li:not([data-done="true"]) a[href*="/day/"]').first().click();
      await page.getByRole('button', { name: 'Start the time' }).click();
      await page.getByRole('button', { name: /^Stop the time/ }).waitFor();
      // Planning again replaces a visit by one of its own: the clock runs on there.
      const visitId = await stage.database.store.asOwner(async (tx) => {
        const row = await tx.visit.findUniqueOrThrow({ where: { id: page.url().split('/').at(-1)! } });
        const { id: old, statedCharges: _, ...visit } = row;
        const { id } = await tx.visit.create({ data: visit });
        await tx.visitItem.updateMany({ where: { visitId: old, state: 'planned' }, data: { visitId: id } });
        await tx.visit.update({ where: { id: old }, data: { state: 'cancelled' } });
        return id;
      });
      await page.reload();
      await page.getByRole('heading', { name: 'This visit is no longer in your plan' }).waitFor();
      await page.goto(page.url().replace(/[^/]+$/, visitId));
      await page.getByRole('button', { name: /^Stop the time/ }).waitFor();
      const manager = await stage.api.signIn('manager');
      expect((await manager.patch(`/v1/visits/${visitId}`, { state: 'cancelled' }, '*')).status).toBe(200);
      await page.reload();
      await page.getByRole('heading', { name: 'This visit is no longer in your plan' }).waitFor();
      await page.getByText('1 record sent').waitFor();
      const { items } = (await manager.get(`/v1/field-records?visitId=${visitId}`)).body;
      expect(items).toMatchObject([{ kind: 'work-time', state: 'review' }]);
    },
    SLOW_MS,
  );

  /** @returns how many records it made */
  async function workOnMachine(page: Page, index: number): Promise<number> {
    const bar = page.locator('a[href="/unsent"]');
    const countNow = async () => Number(/^(\d+) record/.exec((await bar.textContent()) ?? '')?.[1] ?? 0);
    const before = await countNow();
    let made = 0;
    const recorded = async () => {
      made += 1;
      await until(countNow, (count) => count === before + made, 15);
    };
    const press = async (name: string | RegExp) => {
      await page.getByRole('button', { name }).first().click();
      await recorded();
    };
    const steps = page.getByRole('button', { name: /^Done: / });
    expect(await steps.count()).toBe(0); // no step before the cautions
    await press('Read, and done first');
    await page.getByLabel('Hour meter').fill('4');
    await page.getByText(/h less than last time/).waitFor();
    await page.getByLabel('Hour meter').fill(String(900 + index * 300));
    await press('Save the hours');
    while ((await steps.count()) > 0) await press(/^Done: /);
    if (index > 0) return made;
    for (let shot = 0; shot < 3; shot += 1) {
      await page.setInputFiles('input[type="file"]', { name: 'a.png', mimeType: 'image/png', buffer: PICTURE });
      await recorded();
    }
    await page.getByText('Measured and felt').click();
    await page.getByRole('slider', { name: 'Blade thickness' }).fill('5.1');
    for (const group of ['Blade thickness', 'Bearing, turned by hand', 'Deck belt']) {
      const box = page.getByRole('group', { name: group });
      if (group.startsWith('Bearing')) await box.getByLabel('rough').check();
      if (group.startsWith('Deck')) await box.getByLabel('cracked').check();
      await box.getByRole('button', { name: 'Record it' }).click();
      await recorded();
    }
    await page.getByText('Other part used').click();
    for (let part = 0; part < 3; part += 1) {
      await page.getByRole('combobox', { name: 'Part', exact: true }).selectOption({ index: 1 });
      await press('Record the part');
    }
    await page.getByText('Work found on the spot').click();
    await page.getByLabel('What it is').fill('tightened a loose guard');
    await press('Done now');
    await page.getByLabel('What it is').fill('seat torn');
    await press('Still owed');
    await page.getByText('Record a stopgap').click();
    await page.getByLabel('What you did, and what is owed').fill('spliced the idler bracket; new one on order');
    await page.getByLabel('Good for so many hours').fill('20');
    await press('Record the stopgap');
    return made;
  }
});
