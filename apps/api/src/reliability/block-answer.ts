import { bestBlock, blockCostRate, type Weibull } from '@deckround/reliability';

/** Points of the curve, from a tenth to ten times the best interval. */
const POINTS = 41;

/** The fixed beat of replacement in figures and words. Cents; hours. */
export function blockAnswer(life: Weibull, plannedCents: number, minimalRepairCents: number) {
  const { interval, costRate } = bestBlock(life, plannedCents, minimalRepairCents);
  const middle = interval ?? life.scale;
  const thousand = (rate: number) => Math.round(rate * 100_000) / 100;
  const repairsBetween = interval === null ? null : (interval / life.scale) ** life.shape;
  return {
    plannedCents,
    minimalRepairCents,
    bestHours: interval,
    centsPerThousandHours: costRate === null ? null : thousand(costRate),
    repairsBetween,
    curve: Array.from({ length: POINTS }, (_, i) => {
      const intervalHours = middle * 10 ** ((2 * i) / (POINTS - 1) - 1);
      return {
        intervalHours,
        centsPerThousandHours: thousand(blockCostRate(life, plannedCents, minimalRepairCents, intervalHours)),
      };
    }),
    sentence:
      interval === null
        ? 'Repairs do not grow with age here: replacing on a fixed beat never pays.'
        : `Replace every ${Math.round(interval)} h, whatever was repaired in between: ${repairsBetween!.toFixed(1)} repairs each time on average.`,
    assumptions: [
      'A repair in between leaves the part as old as it was (minimal repair); all are replaced together on the beat.',
      'Barlow & Hunter 1960: interval = scale × (planned / (repair × (shape − 1)))^(1/shape).',
    ],
  };
}
