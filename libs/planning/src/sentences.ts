import type { PlanningSnapshot } from './snapshot.js';

/** `38.20 USD`. */
export function money(cents: number, snapshot: PlanningSnapshot): string {
  return `${(cents / 100).toFixed(2)} ${snapshot.currency}`;
}

/** The sentence with one full stop at its end; nothing for an empty one. */
export function sentence(text: string): string {
  const trimmed = text.trim();
  return trimmed === '' || /[.!?]$/.test(trimmed) ? trimmed : `${trimmed}.`;
}

/** Non-empty sentences in a row. */
export function sentences(...parts: string[]): string {
  return parts.map(sentence).filter(Boolean).join(' ');
}
