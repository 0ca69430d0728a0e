import type { StopRule } from './stop-rule.js';

/** Ends when the first of the rules ends. */
export function anyOf(...rules: StopRule[]): StopRule {
  return {
    share: (iterations) => Math.max(0, ...rules.map((rule) => rule.share(iterations))),
    limit: Math.min(...rules.map((rule) => rule.limit)),
  };
}
