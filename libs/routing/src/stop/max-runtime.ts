import type { StopRule } from './stop-rule.js';

/**
 * Ends `seconds` after it was made.
 *
 * @param now clock in milliseconds
 */
export function maxRuntime(seconds: number, now: () => number): StopRule {
  const begin = now();
  return { share: () => Math.min(1, (now() - begin) / (seconds * 1000)), limit: Infinity };
}
