import type { StopRule } from './stop-rule.js';

/** Ends as soon as the caller says so. */
export function cancelled(shouldCancel: () => boolean): StopRule {
  return () => (shouldCancel() ? 1 : 0);
}
