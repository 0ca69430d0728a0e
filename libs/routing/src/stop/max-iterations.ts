import type { StopRule } from './stop-rule.js';

/** Ends after `limit` iterations; the only rule under which a run can be repeated exactly. */
export function maxIterations(limit: number): StopRule {
  return (iterations) => (iterations >= limit ? 1 : iterations / limit);
}
