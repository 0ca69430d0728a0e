import type { JobPayload } from '@deckround/jobs';
import { addHeard, HEARD_AT_ONCE, HEARD_NOTHING, type Heard, hearUnits } from '@deckround/register-store';
import { type ClaimedSource, claimSource, endPoll, keepPage } from '@deckround/store';
import { atMost, type HeardUnit, InvalidSnapshot, readSnapshot } from '@deckround/telematics';
import type { WorkerContext } from '../context.js';
import { whyUnreached } from '../deliver/why-unreached.js';
import { fetchPage, PageNotGiven } from './fetch-page.js';

/** A sender that never comes to an end is left after so many pages. */
const MAX_PAGES = 2000;
const MAX_PAGE_BYTES = 256 * 2 ** 20;
/** Nobody else asks the source meanwhile; renewed page by page. */
const LEASE_SECONDS = 600;
const LONGEST_PAUSE_SECONDS = 86_400;

/**
 * Asks a telematics source for its fleet, page by page. Told again, a page changes nothing, so that a look that was broken
 * off may go on at the page where it was, or begin anew.
 */
export function hearProcessor(context: WorkerContext) {
  const { store, clock, logger } = context;
  return async ({ shopId, runId: sourceId }: JobPayload<'hear'>): Promise<void> => {
    const source = await store.inShop(shopId, (tx) => claimSource(tx, sourceId, LEASE_SECONDS));
    if (source === null) return;
    const end = await askAllPages(context, shopId, source);
    await store.inShop(shopId, (tx) => endPoll(tx, sourceId, end, clock.now()));
    logger.info('telematics.asked', { sourceId, isDone: end.error === null, ...end.heard });
  };
}

async function askAllPages(context: WorkerContext, shopId: string, source: ClaimedSource) {
  const seen = new Set<string>();
  let heard = HEARD_NOTHING;
  let page: string | null = source.nextPage ?? source.url;
  try {
    while (page !== null && !seen.has(page)) {
      if (seen.size === MAX_PAGES)
        return {
          heard,
          error: `It was left after ${MAX_PAGES} pages.`,
          nextPage: null,
          pauseSeconds: source.everySeconds,
        };
      seen.add(page);
      const taken: { heard: Heard; next: string | null } = await askPage(context, shopId, source, page);
      heard = addHeard(heard, taken.heard);
      page = taken.next;
      await context.store.inShop(shopId, (tx) => keepPage(tx, source.id, taken.next, LEASE_SECONDS));
    }
    return { heard, error: null, nextPage: null, pauseSeconds: source.everySeconds };
  } catch (error) {
    const told = error instanceof PageNotGiven ? error : null;
    // A page that is gone, refused or unreadable will not come by asking again: begin anew.
    const mayComeYet =
      !(error instanceof InvalidSnapshot) && (told?.status == null || told.status === 429 || told.status >= 500);
    const backOff = Math.min(LONGEST_PAUSE_SECONDS, source.everySeconds * 2 ** Math.min(source.failures, 10));
    return {
      heard,
      error: whyUnreached(error).slice(0, 500),
      nextPage: mayComeYet && page !== source.url ? page : null,
      pauseSeconds: Math.max(backOff, told?.retryAfterSeconds ?? 0),
    };
  }
}

async function askPage(
  { store, config, clock }: WorkerContext,
  shopId: string,
  source: ClaimedSource,
  page: string,
): Promise<{ heard: Heard; next: string | null }> {
  const mayBePrivate = config.WEBHOOK_PRIVATE === 'yes';
  const { body, format } = await fetchPage(page, source.authorizationHeader, mayBePrivate, clock.now());
  let heard = HEARD_NOTHING;
  let next: string | null = null;
  let batch: HeardUnit[] = [];
  const take = async () => {
    const units = batch;
    batch = [];
    heard = addHeard(heard, await store.inShop(shopId, (tx) => hearUnits(tx, shopId, units, clock.now())));
  };
  for await (const item of readSnapshot(atMost(body, MAX_PAGE_BYTES), format)) {
    if (item.kind === 'link') {
      if (item.link.rel === 'next') next = nextAddress(item.link.href, page, source.url);
    } else if (batch.push(item.unit) === HEARD_AT_ONCE) await take();
  }
  if (batch.length > 0) await take();
  return { heard, next };
}

/** The next page, which must be the same sender's: the source's own credentials go with the question. */
function nextAddress(href: string, page: string, url: string): string {
  const next = URL.canParse(href, page) ? new URL(href, page) : null;
  if (next?.origin !== new URL(url).origin)
    throw new InvalidSnapshot(`Its next page (${href.slice(0, 100)}) is not with the same sender.`);
  return next.toString();
}
