import type { Register, ShopServiceItem } from '@deckround/register';
import {
  bearingLife,
  bearingLoads,
  bearingOf,
  beltPull,
  CONTAMINATION,
  imbalanceForce,
  type LifePrior,
  systemLife,
  weibullOfL10,
} from '@deckround/reliability';

export interface StatedPrior {
  readonly prior: LifePrior;
  readonly words: string;
}

/**
 * A mower spindle in general: half-wrapped belt with 250 N in each strand, blade 40 g mm out of balance at 3,000 r/min,
 * 60 mm between bearings, pulley 40 mm above, blade 60 mm below; dirt from worn seals to clean. Common practice, no source.
 */
const SPINDLE = {
  strandTensionN: 250,
  wrapDegrees: 180,
  gramMillimetres: 400,
  rpm: 3000,
  shape: { bearingDistanceMm: 60, pulleyOverhangMm: 40, bladeOverhangMm: 60 },
} as const;

/**
 * What is believed of an item's parts before any of them was seen to fail. Bearings: the ISO 281 life of the spindle's
 * two bearings over the whole range of contamination, worth half a failure, since that range is wide. Anything else: the
 * life for which the shop's interval is the best one, with the catalogue's shape, worth one failure.
 */
export function statedPrior(register: Register, item: ShopServiceItem): StatedPrior {
  const parts = item.parts.map((each) => register.parts.find((part) => part.code === each.code));
  const bearing = parts.map((part) => (part ? bearingOf(part.designation) : null)).find((each) => each !== null);
  const shape = { median: Math.max(1.1, item.hazardShape), sdLog: 0.4 };
  if (bearing) {
    const loads = bearingLoads(
      beltPull(SPINDLE.strandTensionN, SPINDLE.wrapDegrees),
      imbalanceForce(SPINDLE.gramMillimetres, SPINDLE.rpm),
      SPINDLE.shape,
    );
    const l10 = systemLife(
      [loads.upperN, loads.lowerN].map(
        (radialN) =>
          bearingLife(bearing, {
            radialN,
            axialN: 0,
            rpm: SPINDLE.rpm,
            reliabilityPercent: 90,
            contamination: 'normal',
          }).l10Hours,
      ),
    );
    const dirt = Math.sqrt(CONTAMINATION.severe.low * CONTAMINATION.normal.high);
    const { scale } = weibullOfL10(l10 * dirt, shape.median);
    return {
      prior: { shape, scale: { scale, worthFailures: 0.5 } },
      words: `the ISO 281 life of two ${bearing.designation} in a spindle, cut by dirt to about ${Math.round(100 * dirt)} %: scale near ${Math.round(scale)} h, shape near ${shape.median}, worth half a failure`,
    };
  }
  const scale = scaleOfInterval(item);
  return {
    prior: { shape, scale: { scale, worthFailures: 1 } },
    words: `the catalogue's shape near ${shape.median} and the life that makes the shop's interval the best one, scale near ${Math.round(scale)} h, worth one failure`,
  };
}

/** Scale under which the item's interval is the cheapest block: η = T (cm (β − 1)/cp)^(1/β), with cp/cm = 1/5. */
function scaleOfInterval(item: ShopServiceItem): number {
  const hours = item.rule.hours ?? 500;
  const shape = Math.max(1.1, item.hazardShape);
  return hours * (5 * (shape - 1)) ** (1 / shape);
}
