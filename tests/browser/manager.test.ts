import { beforeAll, expect, it } from '@jest/globals';
import { until } from '../support/api-client.js';
import { DESKTOP, PHONE, phoneFaults, signInAt, type Visitor, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { runningApi } from '../support/running-api.js';
import { PASSWORD, WEEK } from '../support/small-shop.js';

const MANAGER = 'manager@small-shop.example';

browserStory('the shop manager', {}, (stage) => {
  let desk: Visitor;

  beforeAll(async () => {
    desk = await visitor(stage.browser, stage.api.service.address, DESKTOP);
  });

  const visits = () => desk.page.locator('button[aria-keyshortcuts="M"]');
  const plan = async (name: string) => {
    await desk.page.getByRole('button', { name }).click();
    await desk.page.getByText('Best so far').waitFor();
    await desk.page.getByRole('button', { name: 'Stop, keep the best so far' }).click();
    await desk.page.getByRole('button', { name: 'Plan again' }).waitFor();
  };

  it('signs in, plans the week, sees why a visit is made, and promises it', async () => {
    const { page } = desk;
    await signInAt(page, MANAGER, PASSWORD);
    await page.goto(`/week?of=${WEEK}`);
    await page.getByRole('heading', { name: 'This week is not planned yet' }).waitFor();
    await plan('Plan this week');
    await page.getByRole('heading', { name: /\d+ visits?, \d+ machines?/ }).waitFor();
    await visits().first().click();
    await page.getByText(/Paid for by|Needed for/).waitFor();
    await page.getByRole('button', { name: /^Promise \d\d:\d\d–\u2060\d\d:\d\d$/ }).click();
    await page.getByText(/^Promised \d\d:\d\d–\u2060\d\d:\d\d$/).waitFor();
    expect(await visits().first().getAttribute('aria-label')).toContain('promised');
  });

  it('moves a visit with the keys, at a price, and takes it back', async () => {
    const { page } = desk;
    const last = visits().last();
    const before = await last.getAttribute('aria-label');
    await last.press('m');
    await page.getByText('It stands here').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.getByText(/Costs \$[\d.,]+ more\.|Saves \$[\d.,]+\./).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).waitFor({ state: 'detached' });
    await page.locator(`button[aria-label="${before}"]`).waitFor();
  });

  it('drags a visit with the price at the pointer; Escape leaves it where it was', async () => {
    const { page } = desk;
    const priced = /It stands here|Costs \$|Saves \$|it cannot go here/;
    await visits().last().scrollIntoViewIfNeeded();
    const from = (await visits().last().boundingBox())!;
    await page.mouse.move(from.x + 8, from.y + 8);
    await page.mouse.down();
    await page.mouse.move(from.x + 30, from.y + 12, { steps: 3 });
    // Said also when the hand holds still until the prices are there.
    await page.getByText(priced).waitFor();
    const day = (await page.locator('[data-technician]').first().boundingBox())!;
    await page.mouse.move(day.x + day.width / 2, day.y + day.height / 2, { steps: 4 });
    await page.getByText(priced).waitFor();
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await page.getByText(/It stands here|Costs \$/).count()).toBe(0);
  });

  it('plans again without breaking the promise, and compares with the plan before', async () => {
    const { page } = desk;
    const promised = page.locator('button[aria-label*="promised"]');
    const before = await promised.first().getAttribute('aria-label');
    await plan('Plan again');
    const after = (await promised.first().getAttribute('aria-label'))!;
    const slotOf = (label: string | null) => /promised ([\d:–\u2060]+)/.exec(label ?? '')?.[1];
    expect(slotOf(after)).toBe(slotOf(before));
    await page.getByRole('button', { name: 'Compare with the plan before' }).click();
    await expect(page.locator('[title^="Before: "]').count()).resolves.toBeGreaterThan(0);
    // What the outlines show is said too.
    await page.getByText(/^(Against the plan before: |Every visit stands where it stood\.)/).waitFor();
    expect(page.url()).toContain('compare=true');
  });

  it('forbids a day and a technician at a site, holds a visit fast, and takes each back', async () => {
    const { page } = desk;
    const manager = await stage.api.signIn('manager');
    const barsNow = async () => (await manager.get('/v1/visit-bars')).body.items.length;
    const heldNow = async () =>
      (await manager.get(`/v1/visits?from=${WEEK}`)).body.items.filter((visit: { pinned: boolean }) => visit.pinned)
        .length;
    await page.goto(`/week?of=${WEEK}`);
    await visits().first().click();
    await page.getByRole('button', { name: /^Not on / }).click();
    await page.getByRole('button', { name: 'Not with this technician' }).click();
    const standing = page.getByRole('button', { name: /^Take it back: / });
    await standing.nth(1).waitFor();
    expect(await barsNow()).toBe(2);
    await page.getByRole('button', { name: /^Take it back: not with / }).click();
    await standing.nth(1).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /^Take it back: Not on / }).click();
    await standing.first().waitFor({ state: 'detached' });
    expect(await barsNow()).toBe(0);

    const held = page.getByLabel('hold fast when planning again');
    const [before, other] = [await heldNow(), (await held.isChecked()) ? -1 : 1];
    for (const expected of [before + other, before]) {
      await held.click();
      await until(heldNow, (count) => count === expected, 10);
    }
    await page.getByRole('button', { name: 'Close', exact: true }).click();
  });

  it('says which promises planning again could not keep', async () => {
    const { page } = desk;
    const manager = await stage.api.signIn('manager');
    const kept = (await manager.get(`/v1/visits?from=${WEEK}`)).body.items.find(
      (visit: { state: string }) => visit.state === 'confirmed',
    );
    await page.goto(`/week?of=${WEEK}`);
    await visits().first().waitFor();
    expect(await page.getByText(/will not be made/).count()).toBe(0);
    // As the writer of a plan leaves it behind.
    const setState = (state: string, reason: string) =>
      stage.database.store.asOwner((tx) => tx.visit.update({ where: { id: kept.id }, data: { state, reason } }));
    const why = 'Nothing of its work was left to do when the week was planned again.';
    await setState('cancelled', why);
    await page.reload();
    const said = 'A promised visit will not be made.';
    await page.getByText(said).waitFor();
    await page.getByText(why).waitFor();

    // On a phone too, with the map drawn: it is, once somebody scrolls near it.
    const phone = await visitor(stage.browser, stage.api.service.address, PHONE);
    await signInAt(phone.page, MANAGER, PASSWORD);
    await phone.page.goto(`/week?of=${WEEK}`);
    await phone.page.getByText(said).waitFor();
    const mark = phone.page.locator('.maplibregl-marker').first();
    for (let scroll = 0; scroll < 20 && (await mark.count()) === 0; scroll += 1) {
      await phone.page.evaluate('scrollBy(0, 400)');
      await phone.page.waitForTimeout(250);
    }
    await mark.waitFor();
    expect(await phoneFaults(phone.page)).toEqual([]);
    expect(phone.faults).toEqual([]);
    await setState('confirmed', kept.reason);
  });

  it('accepts an interval that failures speak for, and takes it back', async () => {
    const { page } = desk;
    const intervalNow = () =>
      stage.database.store.asOwner((tx) => tx.serviceItem.findUniqueOrThrow({ where: { id: item.id } }));
    const item = await stage.database.store.asOwner(async (tx) => {
      const found = await tx.serviceItem.findFirstOrThrow({
        where: { code: 'replace-spindle-bearings', plan: { class: { code: 'zero-turn' } } },
      });
      const { shopId } = found;
      const date = new Date(`${WEEK}T00:00:00Z`);
      const run = await tx.lifeRun.create({ data: { shopId, asOf: date, askedAt: date, status: 'done' } });
      const law = { basis: 'own', shape: 2.4, scaleHours: 940 };
      const evidence = { ...law, lives: 40, failures: 25, lowHours: 300, highHours: 620, words: 'From its own.' };
      await tx.intervalProposal.create({
        data: {
          ...{ shopId, serviceItemId: found.id, runId: run.id, currentHours: found.intervalHours, proposedHours: 450 },
          ...{ savesCentsPerThousandHours: 4200, evidence, sentence: 'Every 450 h would cost less.', proposedOn: date },
        },
      });
      return found;
    });
    await page.goto('/looking-back');
    await page.getByRole('heading', { name: '1 change of an interval is proposed' }).waitFor();
    const proposal = page.getByRole('article').filter({ hasText: 'from 25 failures in 40 lives' });
    await proposal.getByText('between 300.0 h and 620.0 h (90 %)').waitFor();
    await proposal.getByText('What this rests on').click();
    await page.getByText('On 25 failures of its own. Shape of the life near 2.4, scale near 940.0 h.').waitFor();
    await page.getByLabel('Why (kept with the decision)').fill('wet ground');
    await page.getByRole('button', { name: 'Accept: change the interval' }).click();
    await page.getByText('1 change accepted so far').click();
    expect(Number((await intervalNow()).intervalHours)).toBe(450);
    await page.getByRole('button', { name: 'Take the change back' }).click();
    await page.getByText(/Taken back .*“wet ground”/).waitFor();
    expect(String((await intervalNow()).intervalHours)).toBe(String(item.intervalHours));
    await page.getByRole('button', { name: 'Look at all failures anew' }).click();
    await page.getByText('Done: this rests on everything recorded until now.').waitFor();
  });

  it('says which machine was heard from, and whom a site wants told', async () => {
    const { page } = desk;
    const manager = await stage.api.signIn('manager');
    const unit = {
      EquipmentHeader: { SerialNumber: 'QX-9' },
      CumulativeOperatingHours: { datetime: '2026-06-02T15:00:00Z', Hour: 812.5 },
    };
    await manager.post('/v1/telematics/snapshots', { Fleet: { Equipment: [unit] } });
    await page.goto('/register');
    await page.getByRole('link', { name: 'Machines heard from' }).click();
    await page.getByRole('heading', { name: 'One machine heard from is not known' }).waitFor();
    const article = page.getByRole('article', { name: 'QX-9' });
    await article.getByLabel('Which machine is it?').selectOption({ label: 'M4 · type T · SN4' });
    await article.getByRole('button', { name: 'It is this one' }).click();
    await page.getByRole('heading', { name: 'Every machine heard from is known' }).waitFor();

    const [site] = (await manager.get('/v1/sites')).body.items;
    await page.goto(`/register/sites/${site.id}`);
    await page.getByText('Who is told by e-mail').click();
    const form = page.locator('form', { has: page.getByRole('group', { name: 'To be told when' }) });
    await form.getByLabel('Name').fill('Ana Luz');
    await form.getByLabel('E-mail address').fill('ana@green.example');
    await form.getByLabel('a visit is done').uncheck();
    await form.getByRole('button', { name: 'Add' }).click();
    await page.getByRole('button', { name: 'Change Ana Luz' }).waitFor();
    const [contact] = (await manager.get('/v1/site-contacts')).body.items;
    expect(contact).toMatchObject({ language: 'en', email: 'ana@green.example' });
    expect(contact.notices).not.toContain('visit.done');
  });

  it('lets a span of the week end at midnight', async () => {
    const { page } = desk;
    const manager = await stage.api.signIn('manager');
    const [site] = (await manager.get('/v1/sites')).body.items;
    const accessNow = async () => (await manager.get(`/v1/sites/${site.id}`)).body.access.at(-1).to;
    const end = page.getByLabel('To', { exact: true }).last();
    for (const [typed, kept] of [
      ['00:00', '24:00'],
      [site.access.at(-1).to, site.access.at(-1).to],
    ]) {
      await page.goto(`/register/sites/${site.id}`);
      await end.fill(typed);
      await page.getByRole('button', { name: 'Save' }).click();
      await until(accessNow, (to) => to === kept, 10);
      await page.goto(`/register/sites/${site.id}`);
      expect(await end.inputValue()).toBe(typed);
    }
  });

  it('loses nothing when the sign-in ends in the middle of a form', async () => {
    const { page } = desk;
    await page.goto('/register/customers/new');
    await page.getByLabel('Code').fill('C77');
    await page.getByLabel('Name').fill('Sedge Trust');
    const token = await page.evaluate<string>(`JSON.parse(localStorage.getItem('deckround.session')).token`);
    await fetch(`${stage.api.service.address}/v1/session`, {
      method: 'DELETE',
      headers: { authorization: `Bearer ${token}` },
    });
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('heading', { name: 'Your sign-in has ended' }).waitFor();
    await page.getByRole('dialog').getByLabel('E-mail address').fill(MANAGER);
    await page.getByRole('dialog').getByLabel('Password').fill(PASSWORD);
    await page.getByRole('dialog').getByRole('button', { name: 'Sign in' }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.reload();
    expect(await page.getByLabel('Name').inputValue()).toBe('Sedge Trust');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByRole('link', { name: 'C77' }).waitFor();
    // The refusals were meant to happen; the browser writes them to the console by itself.
    desk.faults.splice(0, desk.faults.length, ...desk.faults.filter((fault) => !fault.includes('401')));
  });

  it('is told when the service is away, and goes on by itself once it is back', async () => {
    const phone = await visitor(stage.browser, stage.api.service.address, PHONE);
    await signInAt(phone.page, MANAGER, PASSWORD);
    await phone.page.goto('/register/sites');
    await phone.page.getByRole('link', { name: 'S1' }).waitFor();
    const port = Number(new URL(stage.api.service.address).port);
    await stage.api.service.stop();
    await phone.page.getByRole('link', { name: 'Parts', exact: true }).click();
    await phone.page.getByText('The service does not answer.').waitFor();
    stage.api = await runningApi(stage.database, undefined, undefined, port);
    await phone.page.getByText('The service does not answer.').waitFor({ state: 'detached' });
    await phone.page.goto('/register/sites');
    await phone.page.getByRole('link', { name: 'S1' }).waitFor();
  });

  it('never saw an error in the console', () => {
    expect(desk.faults).toEqual([]);
  });
});
