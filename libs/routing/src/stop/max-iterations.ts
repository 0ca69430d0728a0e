import type { StopRule } from './stop-rule.js';

/**
 * Ends after `limit` iterations; the only rule under which a run can be repeated exactly.
 *
 * @param cutAt ends earlier, without cooling faster: repeats a run that was laid out for `limit` and cut short
 */
export function maxIterations(limit: number, cutAt = limit): StopRule {
  const end = Math.min(limit, cutAt);
  return { share: (iterations) => (iterations >= end ? 1 : iterations / limit), limit: end };
}
