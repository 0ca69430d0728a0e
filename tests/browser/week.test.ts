import { expect, it } from '@jest/globals';
import type { Locator, Page } from 'playwright-core';
import { until } from '../support/api-client.js';
import { accessibilityFaults, DESKTOP, PHONE, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD, WEEK } from '../support/small-shop.js';

const SLOW_MS = 120_000;
const MANAGER = 'manager@small-shop.example';
const PRICED = /It stands here|Costs \$|Saves \$|it cannot go here/;

/** What an element of the page can do; the tests are compiled without its types. */
interface Matching {
  matches(selector: string): boolean;
}

/** The week from the first plan on, by one way of using the screen after the other; what one leaves behind the next finds. */
browserStory('the week', { now: '2026-06-08T10:00:00Z' }, (stage) => {
  const visits = (page: Page) => page.locator('button[aria-keyshortcuts="M"]');
  const slotOf = (label: string | null) => /promised ([\d:–\u2060]+)/.exec(label ?? '')?.[1];

  /** Tab until it has the focus, as somebody without a mouse does. */
  async function reach(page: Page, wanted: Locator, presses = 80): Promise<void> {
    for (let press = 0; press < presses; press += 1) {
      if (await wanted.evaluate((element) => (element as unknown as Matching).matches(':focus'))) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`The keyboard does not reach ${wanted}.`);
  }

  it(
    'is planned, changed and promised with the keyboard alone, from the sign-in on',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await page.goto(`/week?of=${WEEK}`);
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      await reach(page, page.getByLabel('E-mail address'));
      await page.keyboard.type(MANAGER);
      await page.keyboard.press('Tab');
      await page.keyboard.type(PASSWORD);
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: 'This week is not planned yet' }).waitFor();
      await reach(page, page.getByRole('button', { name: 'Plan this week' }));
      await page.keyboard.press('Enter');
      const stop = page.getByRole('button', { name: 'Stop, keep the best so far' });
      await page.getByText('Best so far').waitFor();
      await reach(page, stop);
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: 'Plan again' }).waitFor();

      const last = visits(page).last();
      await last.waitFor();
      await reach(page, last);
      await page.keyboard.press('m');
      await page.getByText('It stands here').waitFor();
      for (const key of ['ArrowUp', 'ArrowDown'])
        if ((await page.getByText('It stands here').count()) > 0) await page.keyboard.press(key);
      await page.getByText(/Costs \$|Saves \$/).waitFor();
      await page.keyboard.press('Enter');
      await page.getByText(/^Moved;/).waitFor();

      await reach(page, visits(page).first());
      await page.keyboard.press('Enter');
      const promise = page.getByRole('button', { name: /^Promise \d\d:\d\d–\u2060\d\d:\d\d$/ });
      await promise.waitFor();
      await reach(page, promise);
      await page.keyboard.press('Enter');
      await page.getByText(/^Promised \d\d:\d\d–\u2060\d\d:\d\d$/).waitFor();
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'is changed on a phone by a finger that rests on a visit and carries it; the promise outlives planning again',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(page, MANAGER, PASSWORD);
      await page.goto(`/week?of=${WEEK}`);
      const promised = page.locator('button[aria-label*="promised"]');
      const before = slotOf(await promised.first().getAttribute('aria-label'));
      const finger = await page.context().newCDPSession(page);
      const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
        finger.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
      const proposed = page.locator('button[aria-keyshortcuts="M"]:not([aria-label*="promised"])').first();
      await proposed.scrollIntoViewIfNeeded();
      const { x, y } = (await proposed.boundingBox())!;
      const scrolled = () => page.evaluate<number>('scrollY');

      // A finger that moves at once scrolls: nothing is lifted.
      const top = await scrolled();
      await touch('touchStart', { x: x + 6, y: y + 10 });
      for (let step = 1; step <= 5; step += 1) await touch('touchMove', { x: x + 6, y: y + 10 - 12 * step });
      await touch('touchEnd');
      expect(await page.getByText(PRICED).count()).toBe(0);
      await page.evaluate(`scrollTo(0, ${top})`);
      await page.waitForTimeout(500); // until the page has come to rest

      const at = (await proposed.boundingBox())!;
      const name = (await proposed.getAttribute('aria-label'))!;
      const isOwn = await page.locator('[data-technician]').first().locator(`button[aria-label="${name}"]`).count();
      const other = page.locator('[data-technician]').nth(isOwn > 0 ? 1 : 0);
      await touch('touchStart', { x: at.x + 6, y: at.y + 10 });
      await page
        .getByRole('status')
        .getByText(/Working out|It stands here/)
        .first()
        .waitFor();
      await page.getByText(PRICED).waitFor();
      const held = await scrolled();
      const to = (await other.boundingBox())!;
      for (let step = 1; step <= 8; step += 1)
        await touch('touchMove', {
          x: at.x + 6 + ((to.x + to.width / 2 - at.x - 6) * step) / 8,
          y: at.y + 10 + ((to.y + to.height / 2 - at.y - 10) * step) / 8,
        });
      await page.getByText(/Costs \$|Saves \$/).waitFor();
      // The page stood still under the finger, unless that came near an edge.
      if (to.y > 72 && to.y < PHONE.height - 118) expect(await scrolled()).toBe(held);
      await touch('touchEnd');
      await page.getByText(/^Moved;/).waitFor();

      await page.getByRole('button', { name: 'Plan again' }).click();
      await page.getByText('Best so far').waitFor();
      await page.getByRole('button', { name: 'Stop, keep the best so far' }).click();
      await page.getByRole('button', { name: 'Plan again' }).waitFor();
      expect(slotOf(await promised.first().getAttribute('aria-label'))).toBe(before);
      expect(before).toBeDefined();
      // What was moved has been planned anew: there is nothing to take back.
      await page.getByText(/^Moved;/).waitFor({ state: 'detached' });

      // Without carrying: taken up in its details, put elsewhere by single presses.
      const stood = await visits(page).last().getAttribute('aria-label');
      await visits(page).last().click();
      await page.getByRole('button', { name: /^Move\b/ }).click();
      const slip = page.getByRole('status').filter({ has: page.getByRole('button', { name: 'Put it here' }) });
      await slip.getByText('It stands here').waitFor();
      for (const press of ['To a day above', 'To a day below'])
        if ((await slip.getByText('It stands here').count()) > 0)
          await slip.getByRole('button', { name: press }).click();
      await slip.getByText(/Costs \$|Saves \$/).waitFor();
      await slip.getByRole('button', { name: 'Put it here' }).click();
      await page.locator(`button[aria-label="${stood}"]`).waitFor({ state: 'detached' });
      expect(await page.getByRole('alert').count()).toBe(0);
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'is planned with the week after it, which is followed from here and stands on its own page',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, MANAGER, PASSWORD);
      await page.route('**/v1/plan-runs', (route) => {
        const asked = route.request().postDataJSON() as object;
        return route.continue({ postData: JSON.stringify({ ...asked, seconds: 1 }) }); // the shortest choice is ten
      });
      await page.goto(`/week?of=${WEEK}`);
      await page.getByLabel('Weeks to plan').selectOption('and the week after');
      await page.getByRole('button', { name: 'Plan again' }).click();
      await page.getByText('Then the week after it.').waitFor();
      await page.getByText('Week of Mon, Jun 15: ').waitFor();
      await page.getByRole('heading', { name: /\d+ visits?, \d+ machines?/ }).waitFor();
      await page.getByRole('button', { name: 'Plan again' }).waitFor();
      await page.getByRole('link', { name: 'Week after' }).click();
      await page.getByRole('heading', { name: /^No visit this week; \d+ items wait for later$/ }).waitFor();
      await page.getByRole('button', { name: 'Plan again' }).waitFor();
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'draws visits that would lie over each other on the map as one mark that lists them',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, MANAGER, PASSWORD);
      await page.goto(`/week?of=${WEEK}`);
      const several = page.getByRole('button', { name: /visits close together/ });
      await page.locator('.maplibregl-marker').first().waitFor();
      const farther = page.getByRole('button', { name: 'Farther' });
      for (let press = 0; press < 8 && (await several.count()) === 0; press += 1) {
        await farther.click();
        await page.waitForTimeout(500); // until the map has come to rest
      }
      const marks = await page.locator('.maplibregl-marker').all();
      const boxes = await Promise.all(marks.map(async (mark) => (await mark.boundingBox())!));
      const over = boxes.filter((a, k) =>
        boxes
          .slice(0, k)
          .some((b) => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height),
      );
      expect(over).toEqual([]);
      expect(await accessibilityFaults(page, 'light')).toEqual([]);
      await reach(page, several.first());
      await page.keyboard.press('Enter');
      const listed = page.getByRole('list', { name: 'Visits close together' }).getByRole('button');
      await listed.first().waitFor();
      expect(await listed.count()).toBeGreaterThan(1);
      expect(await accessibilityFaults(page, 'light')).toEqual([]);
      // The keyboard stands on the first of them.
      await page.keyboard.press('Enter');
      await page.getByRole('button', { name: /^Move\b/ }).waitFor();
      await listed.first().waitFor({ state: 'detached' });
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'shows the visits of somebody who turns out ill, and lets one be moved to where it can be made',
    async () => {
      const manager = await stage.api.signIn('manager');
      const week = (await manager.get(`/v1/week?weekOf=${WEEK}`)).body;
      const route = week.routes.find(({ visits }: { visits: unknown[] }) => visits.length > 0);
      const { technicianId, technicianName, date } = route;
      const ill = { technicianId, from: date, to: date, reason: 'ill' };
      const { body: absence } = await manager.post('/v1/absences', ill);
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, MANAGER, PASSWORD);
      await page.goto(`/week?of=${WEEK}`);
      const note = page.getByRole('status').filter({ hasText: 'cannot be made where' });
      const those = note.getByRole('button');
      await note.getByText(`${technicianName} is away`).waitFor();
      const count = await those.count();
      expect(count).toBe(route.visits.length);
      await those.first().click();
      await page.getByText(`It cannot be made here: ${technicianName} is away.`).waitFor();
      expect(await page.getByRole('button', { name: /^Promise \d/ }).count()).toBe(0);
      expect(await accessibilityFaults(page, 'light')).toEqual([]);
      await page.getByRole('button', { name: /^Move\b/ }).click();
      await page.getByText('Against leaving its work undone').waitFor();
      await page.keyboard.press('Enter');
      await page.getByText(/^Moved;/).waitFor();
      if (count === 1) await note.waitFor({ state: 'detached' });
      else
        await until(
          () => those.count(),
          (left) => left === count - 1,
        );
      await page.getByRole('button', { name: /^Promise \d/ }).waitFor();
      expect(faults).toEqual([]);
      await manager.delete(`/v1/absences/${absence.id}`);
    },
    SLOW_MS,
  );

  it(
    'takes in a road call: its ways are seen with price and whom they move, one is chosen, those affected stay listed',
    async () => {
      // Nobody would come to the site this week anyway: whoever is sent there drives for the call.
      const manager = await stage.api.signIn('manager');
      const sites = (await manager.get('/v1/sites')).body.items as { id: string; code: string }[];
      const siteId = sites.find((site) => site.code === 'S2')!.id;
      for (const visit of (await manager.get(`/v1/visits?from=${WEEK}&siteId=${siteId}`)).body.items)
        await manager.patch(`/v1/visits/${visit.id}`, { state: 'cancelled' }, `"${visit.version}"`);
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      await signInAt(page, MANAGER, PASSWORD);
      await page.getByRole('link', { name: /^Road calls/ }).click();
      // Exact, because the visits of the week, which stand until the next page is there, speak of machines too.
      await page.getByLabel('Machine', { exact: true }).fill('M2 Site S2');
      await page.getByLabel('What does it do?').selectOption('bearing-noise');
      await page.getByRole('button', { name: 'Take the call' }).click();
      await page.getByRole('heading', { name: /^M2, Site S2$/ }).waitFor();
      const ways = page.getByRole('article');
      await ways.first().waitFor();
      expect(await ways.count()).toBeGreaterThanOrEqual(1);
      const sentences = await ways.allTextContents();
      for (const sentence of sentences) {
        expect(sentence).toMatch(/Technician T\d/);
        expect(sentence).toMatch(/Costs \$[\d.,]+ more\.|Saves \$[\d.,]+\./);
      }
      await page.getByText(/never work under a deck held only by a jack/).waitFor();
      const affected = await ways.first().getByRole('listitem').allTextContents();
      expect(affected.length).toBeGreaterThanOrEqual(1);
      await ways.first().getByRole('button', { name: 'Do it this way' }).click();
      const done = page.getByRole('status').filter({ hasText: 'The call is planned' });
      await done.waitFor();
      expect(await done.getByRole('listitem').allTextContents()).toEqual(affected);
      const [call] = (await manager.get('/v1/road-calls')).body.items;
      expect(call).toMatchObject({ state: 'planned' });
      const visit = (await manager.get(`/v1/visits/${call.visitId}`)).body;
      expect(visit.items.map((item: { code: string }) => item.code)).toContain('road-call');
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'does not take the page away from whoever presses a link at once after signing in',
    async () => {
      const { page, faults } = await visitor(stage.browser, stage.api.service.address, DESKTOP);
      // The shop answers late, and what it says decides where the day begins; the page of the link comes later still.
      await page.addInitScript('navigator.serviceWorker.register = () => new Promise(() => {})');
      const late = async (pattern: string) => {
        let answer: () => void = () => undefined;
        const held = new Promise<void>((done) => {
          answer = done;
        });
        await page.route(pattern, async (route) => {
          await held;
          await route.continue();
        });
        return () => answer();
      };
      const shopAnswers = await late('**/v1/shop');
      const pageComes = await late('**/assets/due-page*.js');
      await signInAt(page, MANAGER, PASSWORD);
      await page.getByRole('link', { name: 'Due', exact: true }).click();
      const answered = page.waitForResponse('**/v1/shop');
      shopAnswers();
      await answered;
      await page.waitForTimeout(300);
      pageComes();
      await page.getByRole('link', { name: /^To decide/ }).waitFor();
      await until(
        async () => new URL(page.url()).pathname,
        (path) => path === '/due',
        5,
      );
      await page.waitForTimeout(500);
      expect(new URL(page.url()).pathname).toBe('/due');
      expect(faults).toEqual([]);
    },
    SLOW_MS,
  );
});
