import { sessions } from './session.js';
import { stored } from './stored.js';
import type { Session, Shop } from './types.js';

/** The shop as this device last heard of it; a device may have served another shop before. */
const kept = stored<Shop>('deckround.shop');

export const keptShop = {
  /** @returns null when nothing is known yet of the shop that is signed in */
  read(): Shop | null {
    const [shop, session] = [kept.read(), sessions.current().session];
    return shop !== null && shop.id === session?.shop?.id ? shop : null;
  },
  write: kept.write,
};

/** Its clock, money and units: as last heard, or as they were at sign-in. */
export function shopAtHand(): Session['shop'] | null {
  return keptShop.read() ?? sessions.current().session?.shop ?? null;
}
