import { TestEnvironment } from 'jest-environment-node';

/** Most characters of a page that a failure shows. */
const SHOWN = 3000;

/** Adds to a failed test's error what the pages showed that it had opened (`visitor` lists them). */
export default class PageTextEnvironment extends TestEnvironment {
  async handleTestEvent({ name, error }) {
    if (name === 'test_start') this.global.pagesOfTest = [];
    if (name !== 'test_fn_failure' || typeof error?.stack !== 'string') return;
    for (const page of this.global.pagesOfTest) error.stack += `\n\n${await shownBy(page)}`;
  }
}

async function shownBy(page) {
  if (page.isClosed()) return `A page at ${page.url()}, closed by then.`;
  // biome-ignore lint/performance/useDomNodeTextContent: what is seen, not what the document holds
  const text = await page.innerText('body', { timeout: 2000 }).catch((fault) => `(${fault.message})`);
  return `The page at ${page.url()} showed:\n${text.slice(0, SHOWN)}`;
}
