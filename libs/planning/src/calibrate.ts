import type { StopRule } from '@deckround/routing';

/** Share of the time that the trial run may take. */
const TRIAL_SHARE = 0.15;
/** A long run needs no longer trial, and nobody should wait for its first plan. Milliseconds. */
const LONGEST_TRIAL = 4000;

/**
 * Iterations that fit into what is left of the given time, in thousands. A trial run measures the speed in its second
 * half: in its first the menus are new and the engine has not warmed up, which cost a cold process nine tenths of its
 * iterations when that half counted.
 *
 * @param begin when the time began, by `now`, milliseconds
 * @param trial runs the search until the rule says stop
 * @param speed of the search proper as a share of that of the trial
 */
export function calibrate(
  { seconds, now }: { seconds: number; now: () => number },
  begin: number,
  trial: (stop: StopRule) => void,
  speed: number,
): number {
  const clocked: { iterations: number; at: number }[] = [];
  const span = Math.min(LONGEST_TRIAL, seconds * 1000 * TRIAL_SHARE);
  trial({
    limit: Infinity,
    share: (iterations) => {
      const at = now();
      clocked.push({ iterations, at });
      return Math.min(1, (at - clocked[0]!.at) / span);
    },
  });
  const last = clocked.at(-1)!;
  const halfway = clocked.findLast(({ at }, k) => k === 0 || at - clocked[0]!.at <= span / 2)!;
  const perMillisecond = (last.iterations - halfway.iterations) / Math.max(1, last.at - halfway.at);
  const left = Math.max(0, seconds * 1000 - (now() - begin));
  return Math.max(1, Math.floor((perMillisecond * speed * left) / 1000)) * 1000;
}
