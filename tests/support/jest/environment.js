/** Most characters of a page that a failure shows. */
const SHOWN = 3000;

/**
 * The process itself is what tests run in: no sandbox of their own, so that a worker loads and warms up what files share
 * once, and not for each of them. Adds to a failed test's error what the pages showed that it had opened (`visitor` lists
 * them).
 *
 * @implements {import('@jest/environment').JestEnvironment}
 */
export default class PlainEnvironment {
  global = globalThis;
  fakeTimers = null;
  fakeTimersModern = null;
  moduleMocker = null;
  #exit = process.exit; // Jest wraps it for each file

  async setup() {}

  async teardown() {
    process.exit = this.#exit;
  }

  getVmContext() {
    return null;
  }

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
