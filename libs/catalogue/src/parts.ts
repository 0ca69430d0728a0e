import type { CataloguePart } from './catalogue-item.js';

/** Parts that the starter items call for; prices are placeholders of an invented shop, to be edited. */
export const PARTS: readonly CataloguePart[] = [
  {
    code: 'BRG-6205-2Z',
    description: 'deep groove ball bearing, two metal shields',
    designation: '6205-2Z',
    unit: 'each',
    unitPriceCents: 1450,
    unitCostCents: 710,
    leadDays: 3,
  },
  {
    code: 'BLT-DECK',
    description: 'deck drive belt, wrapped B section',
    designation: 'B',
    unit: 'each',
    unitPriceCents: 6100,
    unitCostCents: 3300,
    leadDays: 5,
  },
  {
    code: 'BLD-SET',
    description: 'blade set',
    designation: null,
    unit: 'set',
    unitPriceCents: 5400,
    unitCostCents: 2900,
    leadDays: 4,
  },
];
