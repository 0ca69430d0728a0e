import { afterAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Session, Shop } from './types.js';

const store = new Map<string, string>();
Object.assign(globalThis, {
  localStorage: {
    getItem: (key: string) => store.get(key) ?? null,
    setItem: (key: string, value: string) => void store.set(key, value),
    removeItem: (key: string) => void store.delete(key),
  },
});
const { keptShop, shopAtHand } = await import('./kept-shop.js');
const { present } = await import('./present.js');
const { sessions } = await import('./session.js');

const shop = (id: string, currency: string, clockShiftDays: number) =>
  ({ id, currency, timeZone: 'America/Chicago', units: 'us', clockShiftDays }) as Shop;
const signedInAt = (of: Shop) => ({ token: 't', shop: of, person: {} }) as Session;

describe('the shop that a device knows', () => {
  beforeEach(() => sessions.end());
  afterAll(() => {
    sessions.end();
    Reflect.deleteProperty(globalThis, 'localStorage');
  });

  it('is the one signed in, not the one that was signed in before', () => {
    sessions.begin(signedInAt(shop('one', 'USD', -100)));
    keptShop.write(shop('one', 'USD', -100));
    expect(shopAtHand()?.currency).toBe('USD');
    expect(present().getTime()).toBeLessThan(Date.now() - 99 * 86_400_000);
    sessions.end();
    expect(shopAtHand()).toBeNull();
    sessions.begin(signedInAt(shop('two', 'EUR', 0)));
    expect(keptShop.read()).toBeNull();
    expect(shopAtHand()?.currency).toBe('EUR');
    expect(present().getTime()).toBeGreaterThan(Date.now() - 86_400_000);
  });

  it('is as it was last heard of, not as it was at sign-in', () => {
    sessions.begin(signedInAt(shop('one', 'USD', 0)));
    keptShop.write(shop('one', 'CAD', 0));
    expect(shopAtHand()?.currency).toBe('CAD');
  });
});
