import { stoppedClock } from '@deckround/platform';
import { afterAll, beforeAll, describe } from '@jest/globals';
import type { Browser } from 'playwright-core';
import { BROWSER_PATH, openBrowser } from './browser.js';
import { freshDatabase, type TestDatabase } from './database.js';
import { plannedShop } from './planned-shop.js';
import { runningApi } from './running-api.js';
import { createSmallShop, type SmallShop } from './small-shop.js';

/** What a story plays on: a shop of its own, the service over it, a browser. There once the first test runs. */
export interface Stage {
  database: TestDatabase;
  api: Awaited<ReturnType<typeof runningApi>>;
  shop: SmallShop;
  browser: Browser;
}

interface SetUp {
  /** The service's clock stands still there. */
  readonly now?: string;
  /** With its forecast and its week. */
  readonly isPlanned?: boolean;
  readonly settings?: () => Promise<Record<string, string>>;
  /** What else has to be there before the first test. */
  readonly prepare?: (stage: Stage) => Promise<void>;
  readonly clear?: () => Promise<void>;
}

const SET_UP_MS = 120_000;

/** A story told in the browser against the real service; left out where there is no browser. */
export function browserStory(name: string, setUp: SetUp, tell: (stage: Stage) => void): void {
  (BROWSER_PATH === '' ? describe.skip : describe)(name, () => {
    const stage = {} as Stage;
    beforeAll(async () => {
      stage.database = await freshDatabase();
      const clock = setUp.now === undefined ? undefined : stoppedClock(setUp.now);
      stage.api = await runningApi(stage.database, undefined, clock, 0, await setUp.settings?.());
      stage.shop = setUp.isPlanned
        ? await plannedShop(stage.database, stage.api)
        : await createSmallShop(stage.database.store);
      stage.browser = await openBrowser();
      await setUp.prepare?.(stage);
    }, SET_UP_MS);
    afterAll(async () => {
      await stage.browser.close();
      await stage.api.service.stop();
      await stage.database.drop();
      await setUp.clear?.();
    });
    tell(stage);
  });
}
