import { CONTAMINATION, type Contamination } from './contamination.js';
import type { Bearing } from './designations.js';
import { type EquivalentLoad, equivalentLoad } from './equivalent-load.js';
import { ratingLife, ratingLifeHours } from './rating-life.js';
import { reliabilityFactor } from './reliability-factor.js';

export interface BearingLife {
  readonly load: EquivalentLoad;
  readonly millionRevolutions: number;
  readonly l10Hours: number;
  /** a1 · L10h, clean. */
  readonly hoursAtReliability: number;
  /** a1 · aISO · L10h, over the stated range of contamination. */
  readonly adjustedLowHours: number;
  readonly adjustedHighHours: number;
  readonly notes: readonly string[];
}

/** Modified rating life Lnm = a1 · aISO · L10 of one bearing, with contamination as a range. */
export function bearingLife(
  bearing: Bearing,
  duty: {
    readonly radialN: number;
    readonly axialN: number;
    readonly rpm: number;
    readonly reliabilityPercent: number;
    readonly contamination: Contamination;
  },
): BearingLife {
  const load = equivalentLoad(duty.radialN, duty.axialN, bearing);
  const millionRevolutions = ratingLife(bearing.ratingN, load.loadN);
  const l10Hours = ratingLifeHours(millionRevolutions, duty.rpm);
  const a1 = reliabilityFactor(duty.reliabilityPercent);
  const { low, high } = CONTAMINATION[duty.contamination];
  return {
    load,
    millionRevolutions,
    l10Hours,
    hoursAtReliability: a1 * l10Hours,
    adjustedLowHours: a1 * low * l10Hours,
    adjustedHighHours: a1 * high * l10Hours,
    notes: notesOf(bearing, duty, load),
  };
}

function notesOf(
  bearing: Bearing,
  duty: { radialN: number; axialN: number; rpm: number },
  load: EquivalentLoad,
): string[] {
  const notes: string[] = [];
  if (load.loadN > bearing.ratingN / 2)
    notes.push('The load is above half the rating: rating life is no longer a sound guide, take a larger bearing.');
  const isSmallOrLight = bearing.boreMm <= 12 || /^60|^6[89]/.test(bearing.designation);
  const axialLimit = (isSmallOrLight ? 0.25 : 0.5) * bearing.staticRatingN;
  if (duty.axialN > axialLimit)
    notes.push(`The axial load is above ${axialLimit} N, more than this bearing should carry.`);
  const least = minimumLoad(bearing, duty.rpm);
  if (duty.radialN < least)
    notes.push(
      `Below about ${Math.round(least)} N balls may skid instead of rolling: the calculated life is not reached.`,
    );
  if (load.loadN < 0.05 * bearing.ratingN)
    notes.push('At so light a load dirt and grease end the bearing long before fatigue does: read the adjusted range.');
  return notes;
}

/**
 * Least radial load for rolling, newtons: 1000 kr (ν n/1000)^(2/3) (dm/100)², kr 0.025, grease of 100 mm²/s when cold and
 * 15 when warm taken as 15.
 *
 * @source catalogue formula in stored code; kr and viscosity are own choices
 */
function minimumLoad(bearing: Bearing, rpm: number): number {
  const meanMm = (bearing.boreMm + bearing.outerMm) / 2;
  return 1000 * 0.025 * ((15 * rpm) / 1000) ** (2 / 3) * (meanMm / 100) ** 2;
}

/**
 * Weibull life behind an L10: slope 1.5 (the one in ISO 281's reliability factors), scale so that 10 % fail by L10.
 * The prior where a shop has no history.
 */
export function weibullOfL10(l10Hours: number, shape = 1.5): { shape: number; scale: number } {
  return { shape, scale: l10Hours / (-Math.log(0.9)) ** (1 / shape) };
}
