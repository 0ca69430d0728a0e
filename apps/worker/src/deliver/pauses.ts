// Standard Webhooks 1.0.0: 5 s, 5 min, 30 min, 2 h, 5 h, 10 h, 14 h, 20 h, 24 h, here in units of the first; then daily.
const PAUSES = [1, 60, 360, 1440, 3600, 7200, 10_080, 14_400, 17_280] as const;
/** Without one success for so long an endpoint is switched off. */
export const GIVE_UP_MS = 5 * 86_400_000;

/** Seconds until the next attempt, with up to a fifth more so that not all come back at once. */
export function pauseSeconds(attempts: number, first: number, random: number): number {
  return PAUSES[Math.min(attempts, PAUSES.length) - 1]! * first * (1 + random / 5);
}
