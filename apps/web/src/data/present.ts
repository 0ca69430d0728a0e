import { stored } from './stored.js';
import type { Shop } from './types.js';

const DAY_MS = 86_400_000;
const shop = stored<Shop>('deckround.shop');

/** Now by the calendar of the shop that is signed in: an invented one's stands apart from the world's. */
export function present(): Date {
  return new Date(Date.now() + (shop.read()?.clockShiftDays ?? 0) * DAY_MS);
}
