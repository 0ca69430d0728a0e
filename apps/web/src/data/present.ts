import { sameTimeAfter } from '../words/local-date.js';
import { shopAtHand } from './kept-shop.js';

/** Now by the calendar of the shop that is signed in: an invented one's stands apart from the world's. */
export function present(): Date {
  const shop = shopAtHand();
  return shop === null ? new Date() : sameTimeAfter(new Date(), shop.clockShiftDays, shop.timeZone);
}
