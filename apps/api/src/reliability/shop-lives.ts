import { type ComponentLife, deriveLives, type MachineRecord, machineRecords } from '@deckround/learning';
import { type Clock, DomainError } from '@deckround/platform';
import type { Register, ShopServiceItem } from '@deckround/register';
import { loadLifeHistory, loadRegister, shopNow, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { livesInThread } from '@deckround/worker';
import { Inject, Injectable } from '@nestjs/common';
import { CLOCK, STORE } from '../http/tokens.js';

/** A shop's component lives and machine records, with the register that they come from. */
export interface KnownLives {
  readonly asOf: string;
  readonly register: Register;
  readonly lives: readonly ComponentLife[];
  readonly records: readonly MachineRecord[];
}

interface Kept {
  readonly mark: string;
  readonly until: number;
  readonly known: Promise<KnownLives>;
}

const KEPT_MS = 10 * 60_000;
/** A shop with so few readings is derived in 20 ms; starting a thread takes longer. */
const READINGS_INLINE = 2000;

/** Derives lives, those of a large shop in a thread; the answer is kept for ten minutes or until something it rests on changes. */
@Injectable()
export class ShopLives {
  readonly #kept = new Map<string, Kept>();

  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  async of(shopId: string): Promise<KnownLives> {
    const now = this.clock.now();
    const mark = await this.store.inShop(shopId, markOf);
    for (const [id, each] of this.#kept) if (each.until <= now.getTime()) this.#kept.delete(id);
    const kept = this.#kept.get(shopId);
    if (kept?.mark === mark) return kept.known;
    const known = this.#derive(shopId);
    const fresh = { mark, until: now.getTime() + KEPT_MS, known };
    this.#kept.set(shopId, fresh);
    known.catch(() => {
      if (this.#kept.get(shopId) === fresh) this.#kept.delete(shopId);
    });
    return known;
  }

  async #derive(shopId: string): Promise<KnownLives> {
    const { register, history, now } = await this.store.inShop(shopId, async (tx) => ({
      register: await loadRegister(tx),
      history: await loadLifeHistory(tx),
      now: await shopNow(tx, this.clock.now()),
    }));
    const asOf = wallClockOf(now, register.shop.timeZone).slice(0, 10);
    if (register.readings.length > READINGS_INLINE)
      return { asOf, register, ...(await livesInThread(register, asOf, history)) };
    const lives = deriveLives(register, asOf, history);
    return { asOf, register, lives, records: machineRecords(register, asOf) };
  }
}

/** Changes with everything that lives, costs and advice rest on. */
async function markOf(tx: Tx): Promise<string> {
  const [row] = await tx.$queryRaw<{ mark: string }[]>`
    select concat_ws(' ',
      (select concat(count(*), max(recorded_at), sum(version)) from reading),
      (select concat(count(*), max(recorded_at), count(cause_id)) from completion),
      (select concat(count(*), max(recorded_at)) from finding),
      (select concat(count(*), count(removed_on), count(cause_id)) from component_life),
      (select concat(count(*), max(recorded_at)) from stopgap),
      (select count(*) from meter_change),
      (select concat(count(*), sum(version)) from machine),
      (select concat(count(*), sum(version)) from service_item),
      (select concat(count(*), sum(version)) from part),
      (select sum(wage_cents_per_hour) from technician)) as mark`;
  return row!.mark;
}

/** @throws DomainError invalid-input when no class in use has a service item of that code that replaces a part */
export function requireReplacingItem(register: Register, code: string, machineClass?: string): ShopServiceItem {
  const classes = register.classes.filter((each) => machineClass === undefined || each.code === machineClass);
  const item = classes.flatMap((each) => each.items).find((each) => each.code === code);
  if (item && code.startsWith('replace-')) return item;
  const known = [...new Set(classes.flatMap((each) => each.items.map((one) => one.code)))].filter((each) =>
    each.startsWith('replace-'),
  );
  throw new DomainError(
    'invalid-input',
    classes.length === 0
      ? `"${machineClass}" is not a machine class of this shop: use one of ${register.classes.map((each) => each.code).join(', ')}.`
      : `"${code}" replaces no part${machineClass === undefined ? '' : ` of ${machineClass}`}: use one of ${known.join(', ')}.`,
  );
}
