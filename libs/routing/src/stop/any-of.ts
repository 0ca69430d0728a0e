import type { StopRule } from './stop-rule.js';

/** Ends when the first of the rules ends. */
export function anyOf(...rules: StopRule[]): StopRule {
  return (iterations) => {
    let share = 0;
    for (const rule of rules) share = Math.max(share, rule(iterations));
    return share;
  };
}
