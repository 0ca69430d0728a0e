import type { CatalogueClass, CataloguePreparation } from './catalogue-item.js';
import { BELT, BLADES, JACK_AND_BLOCK, SHUT_DOWN } from './cautions.js';

const PRACTICE = 'common practice, no source';

/** Minutes differ with the size of the deck and how it is reached. */
function preparations(minutes: {
  raise: number;
  blades: number;
  covers: number;
  belt: number;
  pulley: number;
}): CataloguePreparation[] {
  return [
    {
      code: 'deck-raised',
      name: 'deck raised and blocked',
      minutes: minutes.raise,
      parent: null,
      cautions: [SHUT_DOWN, JACK_AND_BLOCK],
      source: PRACTICE,
    },
    {
      code: 'blades-off',
      name: 'blades off',
      minutes: minutes.blades,
      parent: 'deck-raised',
      cautions: [BLADES],
      source: PRACTICE,
    },
    {
      code: 'covers-off',
      name: 'belt covers off',
      minutes: minutes.covers,
      parent: null,
      cautions: [SHUT_DOWN],
      source: PRACTICE,
    },
    {
      code: 'belt-off',
      name: 'deck belt off',
      minutes: minutes.belt,
      parent: 'covers-off',
      cautions: [BELT],
      source: PRACTICE,
    },
    {
      code: 'pulley-off',
      name: 'spindle pulleys off',
      minutes: minutes.pulley,
      parent: 'belt-off',
      cautions: [],
      source: PRACTICE,
    },
  ];
}

export const CLASSES: readonly CatalogueClass[] = [
  {
    code: 'zero-turn',
    name: 'zero-turn',
    defaultSpindles: 3,
    preparations: preparations({ raise: 6, blades: 5, covers: 3, belt: 5, pulley: 8 }),
  },
  {
    code: 'stand-on',
    name: 'stand-on',
    defaultSpindles: 3,
    preparations: preparations({ raise: 6, blades: 5, covers: 3, belt: 5, pulley: 8 }),
  },
  {
    code: 'walk-behind',
    name: 'walk-behind',
    defaultSpindles: 2,
    preparations: preparations({ raise: 4, blades: 4, covers: 3, belt: 5, pulley: 8 }),
  },
  {
    code: 'front-deck',
    name: 'front deck',
    defaultSpindles: 3,
    preparations: preparations({ raise: 5, blades: 5, covers: 4, belt: 6, pulley: 8 }),
  },
  {
    code: 'wide-area',
    name: 'wide area',
    defaultSpindles: 7,
    preparations: preparations({ raise: 10, blades: 12, covers: 8, belt: 12, pulley: 10 }),
  },
  {
    code: 'tractor-finish-deck',
    name: 'tractor with finish deck',
    defaultSpindles: 3,
    preparations: preparations({ raise: 10, blades: 6, covers: 5, belt: 8, pulley: 10 }),
  },
];
