import { expect, it } from '@jest/globals';
import { until } from '../support/api-client.js';
import { accessibilityFaults, PHONE, signInAt, visitor } from '../support/browser.js';
import { browserStory } from '../support/browser-story.js';
import { PASSWORD } from '../support/small-shop.js';

/** Room for a busy machine. */
const SLOW_MS = 120_000;

browserStory('the parts that a technician used', { isPlanned: true }, (stage) => {
  it(
    'are recorded once by a double press, shown at once, and taken back, sent or not',
    async () => {
      const manager = await stage.api.signIn('manager');
      const strap = (await manager.post('/v1/parts', { code: 'STRAP-1', description: 'strap' })).body;
      const { page } = await visitor(stage.browser, stage.api.service.address, PHONE);
      await signInAt(page, 'technician@small-shop.example', PASSWORD);
      await page.getByRole('heading', { name: /^Next: Site/ }).waitFor();
      await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
      await page.waitForFunction('navigator.serviceWorker.controller !== null');
      await page.context().setOffline(true);
      const use = page.getByRole('button', { name: /^Used: \d+ × / }).first();
      await goToMachineWithParts();
      const kept = async () =>
        Number(/^(\d+) record/.exec((await page.locator('a[href="/unsent"]').textContent()) ?? '')?.[1] ?? 0);
      const before = await kept();
      const more = (count: number) => until(kept, (now) => now === before + count, 15);
      const [, amount, part] = /^Used: (\d+) ×\s(.*)$/.exec((await use.textContent()) ?? '')!;
      const shown = (times: number) =>
        page.getByText(`Used on this machine: ${Number(amount) * times} × ${part}`, { exact: false }).first();
      await use.dblclick();
      await shown(1).waitFor();
      await more(1);
      await page.getByText('Not sent yet.').first().waitFor();
      expect(await accessibilityFaults(page, 'light')).toEqual([]);

      await page
        .getByRole('button', { name: `Add ${amount} × ${part}` })
        .first()
        .click();
      await shown(2).waitFor();
      await page.getByRole('button', { name: 'Take it back' }).first().dblclick();
      await shown(1).waitFor();
      await page.getByRole('button', { name: 'Take it back' }).first().click();
      await page
        .getByRole('button', { name: `Used: ${amount} × ${part}` })
        .first()
        .click();
      await shown(1).waitFor();

      await page.getByText('Other part used').click();
      const other = page.getByRole('combobox', { name: 'Part', exact: true });
      const names = await other.locator('option').allTextContents();
      const at = names.findIndex((name, index) => index > 0 && !name.includes(part!));
      await other.selectOption({ index: at });
      await page.getByRole('button', { name: 'Record the part' }).dblclick();
      await more(2);
      const said = page.getByRole('status').filter({ hasText: /^Used on this machine: 1 / });
      const saidOther = said.filter({ hasText: names[at]!.replace(/^\S+ /, '') });
      await saidOther.waitFor();

      await page.context().setOffline(false);
      await page.getByText(/All \d+ records sent/).waitFor({ timeout: 60_000 });
      await shown(1).waitFor();
      await page.getByText('Not sent yet.').first().waitFor({ state: 'detached' });
      const uses = () => stage.database.store.asOwner((tx) => tx.partUse.findMany({ orderBy: { name: 'asc' } }));
      expect((await uses()).map(({ quantity }) => Number(quantity)).sort()).toEqual([1, Number(amount)].sort());

      // What was sent is taken back by a record of its own, which goes the same way.
      await page.context().setOffline(true);
      await page.getByRole('button', { name: 'Take it back' }).last().click();
      await page.getByRole('button', { name: 'It was another part' }).dblclick();
      await saidOther.waitFor({ state: 'detached' });
      expect(await uses()).toHaveLength(2);
      await page.context().setOffline(false);
      await page.getByText(/All \d+ records sent/).waitFor({ timeout: 60_000 });
      expect((await uses()).map(({ quantity }) => Number(quantity))).toEqual([Number(amount)]);

      await page.context().setOffline(true);
      await other.selectOption({ label: 'STRAP-1 strap' });
      await page.getByRole('button', { name: 'Record the part' }).click();
      await page.getByText('Used on this machine: 1 × strap').waitFor();
      await stage.database.store.asOwner((tx) => tx.part.delete({ where: { id: strap.id } }));
      await page.context().setOffline(false);
      // refused: it says so, with the reason, where it was recorded
      const refused = page.locator('.note').filter({ hasText: 'Refused, and not counted: 1 × strap' });
      await refused.getByText('It names something that does not exist.').waitFor({ timeout: 60_000 });
      expect(await page.getByText('Used on this machine: 1 × strap').count()).toBe(0);
      await refused.getByRole('button', { name: 'Throw it away' }).click();
      await refused.waitFor({ state: 'detached' });

      async function goToMachineWithParts(): Promise<void> {
        const pathsOf = (links: string) =>
          page
            .locator(links)
            .evaluateAll((found) => found.map((link) => (link as unknown as { pathname: string }).pathname));
        for (const visit of await pathsOf('ol a[href*="/day/"]')) {
          await page.goto(visit);
          await page.getByRole('heading', { name: 'Finish the visit' }).waitFor();
          for (const machine of await pathsOf('ul a[href*="/day/"]')) {
            await page.goto(machine);
            await page.getByRole('button', { name: 'Read, and done first' }).click();
            await page
              .getByRole('button', { name: /^Done: / })
              .first()
              .waitFor();
            if ((await use.count()) > 0) return;
          }
        }
      }
    },
    SLOW_MS,
  );
});
