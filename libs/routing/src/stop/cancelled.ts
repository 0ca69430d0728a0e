import type { StopRule } from './stop-rule.js';

/** Ends as soon as the caller says so. */
export function cancelled(shouldCancel: () => boolean): StopRule {
  return { share: () => (shouldCancel() ? 1 : 0), limit: Infinity };
}
