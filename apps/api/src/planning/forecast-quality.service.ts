import type { ForecastQuality } from '@deckround/contracts';
import type { Clock } from '@deckround/platform';
import { inUse, usageSnapshot } from '@deckround/register';
import { loadRegister, shopNow, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import type { BacktestOptions, BacktestRow } from '@deckround/usage';
import { backtestInThread } from '@deckround/worker';
import { Inject, Injectable } from '@nestjs/common';
import type { z } from 'zod';
import { CLOCK, STORE } from '../http/tokens.js';
import { belowBestRule, overallSentence, qualitySentence } from './quality-sentence.js';

type Quality = z.infer<typeof ForecastQuality>;

/** A year of forecasts, one every four weeks. */
const BACKTEST: BacktestOptions = { daysAhead: [7, 14, 30, 60, 90], origins: 13, daysBetweenOrigins: 28 };
const KEPT_MS = 60 * 60_000;

interface Kept {
  /** Changes with every new reading and every decision on one. */
  readonly readings: string;
  readonly until: number;
  readonly quality: Promise<Quality>;
}

/** Looks back on the shop's own readings, in a thread; the answer is kept for an hour or until readings change. */
@Injectable()
export class ForecastQualityService {
  readonly #kept = new Map<string, Kept>();

  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  async ofShop(shopId: string): Promise<Quality> {
    const readings = await this.store.inShop(shopId, readingsMark);
    const now = this.clock.now().getTime();
    for (const [id, each] of this.#kept) if (each.until <= now) this.#kept.delete(id);
    const known = this.#kept.get(shopId);
    if (known?.readings === readings) return known.quality;
    const quality = this.#compute(shopId);
    const kept = { readings, until: now + KEPT_MS, quality };
    this.#kept.set(shopId, kept);
    quality.catch(() => {
      if (this.#kept.get(shopId) === kept) this.#kept.delete(shopId);
    });
    return quality;
  }

  async #compute(shopId: string): Promise<Quality> {
    const { told, now } = await this.store.inShop(shopId, async (tx) => ({
      told: await loadRegister(tx),
      now: await shopNow(tx, this.clock.now()),
    }));
    const today = wallClockOf(now, told.shop.timeZone).slice(0, 10);
    const register = inUse(told, today);
    let newest: string | null = null;
    for (const { readAt } of register.readings) {
      const day = readAt.slice(0, 10);
      if (day <= today && (newest === null || day > newest)) newest = day;
    }
    const rows = await backtestInThread(usageSnapshot(register, newest ?? today, 90), BACKTEST);
    return {
      asOf: newest,
      computedAt: this.clock.now().toISOString(),
      sentence: overallSentence(rows),
      rows: rows.map(toView),
    };
  }
}

async function readingsMark(tx: Tx): Promise<string> {
  const { _count, _max, _sum } = await tx.reading.aggregate({
    _count: true,
    _max: { recordedAt: true },
    _sum: { version: true },
  });
  const told = await tx.meterChange.count({ where: { origin: 'told' } });
  return `${_count} ${_max.recordedAt?.toISOString()} ${_sum.version} ${told}`;
}

function toView(row: BacktestRow) {
  const { baselinePinballHours: rules, ...figures } = row;
  return {
    ...figures,
    lastTwoReadingsHours: rules?.lastTwo ?? null,
    wholeLifeHours: rules?.wholeLife ?? null,
    lastYearHours: rules?.lastYear ?? null,
    belowBestRule: belowBestRule(row),
    sentence: qualitySentence(row),
  };
}
