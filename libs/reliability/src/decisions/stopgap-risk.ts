import { conditionalSurvival, type Weibull } from '../life/weibull.js';

export interface StopgapRisk {
  /** Chance of failing within the hours asked about. */
  readonly low: number;
  readonly chance: number;
  readonly high: number;
  readonly sentence: string;
}

/**
 * Chance that a temporary repair fails within some hours. A sound part would follow its life law; a part on a worn seat
 * lives only a share of it (a stated range), so its scale is multiplied.
 *
 * @param lifeShare range of that share, e.g. [0.05, 0.3] for new bearings on a worn housing (own choice, no source)
 * @param age       hours the part already has
 */
export function stopgapRisk(
  life: Weibull,
  lifeShare: readonly [number, number],
  age: number,
  hoursAhead: number,
): StopgapRisk {
  const at = (share: number) =>
    1 - conditionalSurvival({ shape: life.shape, scale: life.scale * share }, age + hoursAhead, age);
  const [low, high] = [at(lifeShare[1]), at(lifeShare[0])];
  const chance = at(Math.sqrt(lifeShare[0] * lifeShare[1]));
  const percent = (p: number) => (p < 0.01 ? 'under 1' : p > 0.99 ? 'over 99' : String(Math.round(p * 100)));
  return {
    low,
    chance,
    high,
    sentence: `Chance of failing within ${hoursAhead} h: about ${percent(chance)} % (${percent(low)} to ${percent(high)} %), if it lives ${Math.round(lifeShare[0] * 100)} to ${Math.round(lifeShare[1] * 100)} % of a sound part's life.`,
  };
}
