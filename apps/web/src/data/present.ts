import { shopAtHand } from './kept-shop.js';

const DAY_MS = 86_400_000;

/** Now by the calendar of the shop that is signed in: an invented one's stands apart from the world's. */
export function present(): Date {
  return new Date(Date.now() + (shopAtHand()?.clockShiftDays ?? 0) * DAY_MS);
}
