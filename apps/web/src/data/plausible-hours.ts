/** What a figure would mean, said before it is saved. */
export type HoursDoubt =
  | { readonly kind: 'not-a-figure' }
  | { readonly kind: 'less'; readonly by: number }
  | { readonly kind: 'too-many'; readonly hours: number; readonly days: number; readonly slip: number | null };

const MAX_PER_DAY = 24;
/** More in a day than this, and it is asked about: a mower of a crew runs a shift, not the day round. */
const MANY_PER_DAY = 14;
const DAY_MS = 86_400_000;
/** Readings round to tenths; two in one hour may differ by that much. */
const SLACK_HOURS = 1;

/** @returns null when nothing speaks against the figure */
export function doubtAbout(
  typed: string,
  last: { readonly readAt: string; readonly hours: string } | null,
  now: Date,
): HoursDoubt | null {
  if (!/^\d{1,6}(\.\d{1,2})?$/.test(typed)) return { kind: 'not-a-figure' };
  if (last === null) return null;
  const [hours, before] = [Number(typed), Number(last.hours)];
  if (hours < before) return { kind: 'less', by: before - hours };
  const days = Math.max(0, (now.getTime() - Date.parse(last.readAt)) / DAY_MS);
  const run = hours - before;
  const isMuch = (value: number) => value > days * (days < 3 ? MAX_PER_DAY : MANY_PER_DAY) + SLACK_HOURS;
  if (!isMuch(run)) return null;
  // The point left out is the commonest slip: 4126 for 412.6.
  const slip = typed.includes('.') ? null : Number(typed) / 10;
  const isSlip = slip !== null && slip >= before && !isMuch(slip - before);
  return { kind: 'too-many', hours: run, days, slip: isSlip ? slip : null };
}
