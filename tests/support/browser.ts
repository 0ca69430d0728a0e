import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';

/** The Chromium that the run has found; empty = there is none, and tests that need it are left out. */
export const BROWSER_PATH = process.env.DECKROUND_TEST_BROWSER ?? '';
export const DESKTOP = { width: 1440, height: 900 } as const;
export const PHONE = { width: 390, height: 844 } as const;

export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: BROWSER_PATH,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--enable-unsafe-swiftshader',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

declare global {
  /** Pages that the running test has opened: what they show is told when it fails (`jest/environment.js`). */
  var pagesOfTest: Page[] | undefined;
}

export interface Visitor {
  readonly page: Page;
  /** What the console called an error, and what was thrown and not caught. */
  readonly faults: string[];
}

/** A person's own window at one size, with an eye on its console. */
export async function visitor(
  browser: Browser,
  address: string,
  viewport: { width: number; height: number },
): Promise<Visitor> {
  const context = await browser.newContext({
    ...{ baseURL: address, viewport, locale: 'en-US', reducedMotion: 'reduce' },
    hasTouch: viewport === PHONE,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  globalThis.pagesOfTest?.push(page);
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(String(error)));
  return { page, faults };
}

export async function signInAt(page: Page, email: string, password: string): Promise<void> {
  await page.goto('/');
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('banner').waitFor();
}

type Violation = Pick<axe.Result, 'id' | 'nodes'>;

/** Faults against WCAG 2.2, levels A and AA, in the light or the dark; each as rule and first element. */
export async function accessibilityFaults(page: Page, light: 'light' | 'dark'): Promise<string[]> {
  await page.evaluate(`document.documentElement.dataset.light = '${light}'`);
  if (!(await page.evaluate<boolean>('"axe" in window'))) await page.evaluate(axe.source);
  // Only contrast depends on the light: the other rules are asked once.
  const runOnly =
    light === 'light'
      ? { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] }
      : { type: 'rule', values: ['color-contrast'] };
  const options = JSON.stringify({ runOnly, resultTypes: ['violations'] });
  const violations = await page.evaluate<Violation[]>(`axe.run(document, ${options}).then((told) => told.violations)`);
  return violations.map(
    (each) => `${light} ${each.id}: ${each.nodes[0]?.target.join(' ')} ${each.nodes[0]?.failureSummary}`,
  );
}

/** The same of a phone, in both lights: a narrow page is laid out anew, so no rule is taken over from the desk. */
export async function phoneFaults(page: Page): Promise<string[]> {
  return [...(await accessibilityFaults(page, 'light')), ...(await accessibilityFaults(page, 'dark'))];
}
