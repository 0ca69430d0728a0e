import { beforeAll, expect, it } from '@jest/globals';
import {
  accessibilityFaults,
  DESKTOP,
  PHONE,
  phoneFaults,
  signInAt,
  type Visitor,
  visitor,
} from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { draftOf } from '../support/finished-visit.js';
import { planWeek } from '../support/planned-shop.js';
import { PASSWORD, WEEK } from '../support/small-shop.js';

/** Room for a busy machine; on an idle one each takes a fraction of it. */
const SLOW_MS = 180_000;

browserStory('every screen', {}, (stage) => {
  let desk: Visitor;
  let phone: Visitor;
  let draftId: string;

  beforeAll(async () => {
    const manager = await stage.api.signIn('manager');
    const machineId = stage.shop.machineIds.get('M1');
    // One reading to look at: less than the one before it.
    await manager.post('/v1/readings', { readings: [{ machineId, readAt: '2026-06-02T15:00:00Z', hours: '12.5' }] });
    // One machine that nobody knows, and one that is known by its serial number.
    const unit = (SerialNumber: string) => ({
      EquipmentHeader: { OEMName: 'Greenline', Model: 'G2', SerialNumber },
      CumulativeOperatingHours: { datetime: '2026-06-02T15:00:00Z', Hour: 812.5 },
    });
    await manager.post('/v1/telematics/snapshots', { Fleet: { Equipment: [unit('QX-9'), unit('SN2')] } });
    await planWeek(stage.api);
    draftId = (await draftOf(stage.database.store, stage.shop, manager, '2026-06-02')).draft.id;
    desk = await visitor(stage.browser, stage.api.service.address, DESKTOP);
    phone = await visitor(stage.browser, stage.api.service.address, PHONE);
    for (const { page } of [desk, phone]) await signInAt(page, 'manager@small-shop.example', PASSWORD);
  });

  const screens = () => [
    `/week?of=${WEEK}`,
    '/decisions',
    '/road-calls',
    '/due?weeks=1',
    '/readings',
    '/heard-from',
    '/register/machines',
    `/register/machines/${stage.shop.machineIds.get('M1')}`,
    `/register/sites/${stage.shop.siteIds.get('S1')}`,
    '/register/service-items',
    '/register/people/new',
    '/register/agreements/new',
    '/register/absences',
    '/register/connections',
    '/register/import',
    '/register/shop',
    '/orders',
    '/charges',
    `/charges/${draftId}`,
    '/charges/settings',
    '/start',
    `/machines/${stage.shop.machineIds.get('M1')}/forecast`,
    '/forecasts',
    '/looking-back',
    `/looking-back/machines/${stage.shop.machineIds.get('M1')}`,
    '/help',
  ];

  /** Forms that open in place are looked at too. */
  const openAll = (page: Visitor['page']) =>
    page.evaluate(`for (const each of document.querySelectorAll('main details')) each.open = true`);

  it(
    'has no fault against WCAG 2.2 AA, by day and in the dark',
    async () => {
      const { page } = desk;
      const found: string[] = [];
      for (const path of screens()) {
        await page.goto(path);
        await page.getByText(/^(One moment|Holding past forecasts)/).waitFor({ state: 'detached' });
        await openAll(page);
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
          await openAll(page);
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

  it('closes its menu and its forms by Escape, and leads back to what opened them', async () => {
    const { page } = phone;
    const focused = () => page.evaluate<string>('document.activeElement.textContent');
    const look = JSON.stringify(JSON.stringify({ language: 'en', light: 'auto' }));
    await page.evaluate(`localStorage.setItem('deckround.preferences', ${look})`);
    await page.goto('/register/connections');
    const menu = page.getByRole('button', { name: 'Menu' });
    await menu.click();
    await page.getByRole('link', { name: 'Help' }).focus();
    await page.keyboard.press('Escape');
    expect(await menu.getAttribute('aria-expanded')).toBe('false');
    expect(await focused()).toBe('Menu');
    await page.getByText('Let another program in').click();
    await page.getByLabel('What it is for').fill('books');
    await page.keyboard.press('Escape');
    expect(await page.getByLabel('What it is for').isVisible()).toBe(false);
    expect(await focused()).toBe('Let another program in');
    await page.keyboard.press('Enter');
    expect(await page.getByLabel('What it is for').inputValue()).toBe('books');
  });

  it('has its sign-in page without fault too', async () => {
    const { page } = await visitor(stage.browser, stage.api.service.address, PHONE);
    await page.goto('/sign-in');
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    for (const light of ['light', 'dark'] as const) expect(await accessibilityFaults(page, light)).toEqual([]);
  });
});
