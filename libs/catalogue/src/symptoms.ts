import { BATTERY, BELT, BENT_BLADE, BLADES, INTERLOCK, JACK_AND_BLOCK, PRESSURE, SHUT_DOWN } from './cautions.js';

/** A question on the telephone; its answer goes with the technician. */
export interface DiagnosisQuestion {
  readonly code: string;
  readonly question: string;
}

/**
 * What a caller can tell, what to ask, and what the technician had better load. All of it common practice, no source.
 */
export interface Symptom {
  readonly code: string;
  readonly title: string;
  readonly questions: readonly DiagnosisQuestion[];
  /** Service items whose parts are likely to be needed, the most likely first. */
  readonly likelyItems: readonly string[];
  /** Minutes on site to find and mend the likely cause. */
  readonly minutes: number;
  readonly skill: 'mechanical' | 'electrical' | 'hydraulic';
  /** What to tell the caller until help comes. */
  readonly cautions: readonly string[];
}

const WHEN: DiagnosisQuestion = { code: 'when', question: 'Since when, and at once or little by little?' };
const HIT: DiagnosisQuestion = { code: 'hit', question: 'Did it hit or wind up anything (stone, kerb, wire, rope)?' };
const TRIED: DiagnosisQuestion = { code: 'tried', question: 'What has been tried so far?' };

export const SYMPTOMS: readonly Symptom[] = [
  {
    code: 'belt-shed',
    title: 'Deck belt came off or broke',
    questions: [
      { code: 'belt-whole', question: 'Is the belt whole, frayed or torn?' },
      { code: 'pulleys-turn', question: 'Engine off, key out: does every pulley turn freely by hand?' },
      HIT,
      TRIED,
    ],
    likelyItems: ['replace-deck-belt', 'replace-spindle-bearings'],
    minutes: 50,
    skill: 'mechanical',
    cautions: [SHUT_DOWN, BELT],
  },
  {
    code: 'bearing-noise',
    title: 'Howling or grinding from the deck',
    questions: [
      { code: 'which-spindle', question: 'Left, middle or right, seen from the seat?' },
      { code: 'hot', question: 'Is a spindle too hot to touch after mowing?' },
      WHEN,
      TRIED,
    ],
    likelyItems: ['replace-spindle-bearings', 'replace-deck-belt'],
    minutes: 75,
    skill: 'mechanical',
    cautions: [SHUT_DOWN, JACK_AND_BLOCK],
  },
  {
    code: 'spindle-seized',
    title: 'A blade does not turn',
    questions: [
      { code: 'wound-up', question: 'Engine off, key out: is wire, rope or a branch wound round the spindle?' },
      { code: 'which-spindle', question: 'Left, middle or right, seen from the seat?' },
      HIT,
      TRIED,
    ],
    likelyItems: ['replace-spindle-bearings', 'replace-blades', 'replace-deck-belt'],
    minutes: 90,
    skill: 'mechanical',
    cautions: [SHUT_DOWN, JACK_AND_BLOCK, BLADES],
  },
  {
    code: 'shaking',
    title: 'The deck shakes',
    questions: [HIT, { code: 'blade-missing', question: 'Is a blade bent, broken or missing?' }, WHEN, TRIED],
    likelyItems: ['replace-blades', 'replace-spindle-bearings'],
    minutes: 60,
    skill: 'mechanical',
    cautions: ['Do not mow on: a part may fly off.', SHUT_DOWN, BENT_BLADE],
  },
  {
    code: 'uneven-cut',
    title: 'Uneven or ragged cut',
    questions: [
      { code: 'pattern', question: 'Stripes, steps, or torn tips?' },
      { code: 'tyres', question: 'Are all tyres at their pressure?' },
      WHEN,
      TRIED,
    ],
    likelyItems: ['sharpen-blades', 'level-deck', 'replace-blades'],
    minutes: 45,
    skill: 'mechanical',
    cautions: [SHUT_DOWN, BLADES],
  },
  {
    code: 'no-start',
    title: 'The engine does not turn or start',
    questions: [
      { code: 'sound', question: 'Silence, a click, or turning without starting?' },
      { code: 'seat-switch', question: 'Does it change with brake set, blades off, sitting in the seat?' },
      { code: 'fuel', question: 'Fresh fuel in the tank, its tap open?' },
      TRIED,
    ],
    likelyItems: ['service-battery', 'replace-spark-plugs', 'test-interlock'],
    minutes: 60,
    skill: 'electrical',
    cautions: [BATTERY, INTERLOCK],
  },
  {
    code: 'weak-drive',
    title: 'Does not drive, or drives weakly',
    questions: [
      { code: 'one-side', question: 'On both sides or one? Cold as well as warm?' },
      { code: 'oil', question: 'Is oil on the ground or the hoses?' },
      WHEN,
      TRIED,
    ],
    likelyItems: ['change-hydraulic-oil', 'grease-driveline'],
    minutes: 90,
    skill: 'hydraulic',
    cautions: [PRESSURE],
  },
  {
    code: 'overheats',
    title: 'Runs hot or loses power',
    questions: [
      { code: 'screen', question: 'Are screen, fins and air filter clean?' },
      { code: 'oil-level', question: 'What does the dipstick show?' },
      WHEN,
      TRIED,
    ],
    likelyItems: ['clean-air-filter', 'replace-air-filter', 'change-engine-oil'],
    minutes: 60,
    skill: 'mechanical',
    cautions: ['Stop the engine and let it cool before anything is opened.'],
  },
  {
    code: 'other',
    title: 'Something else',
    questions: [WHEN, HIT, TRIED],
    likelyItems: [],
    minutes: 60,
    skill: 'mechanical',
    cautions: [SHUT_DOWN],
  },
];

export function symptomOf(code: string): Symptom | undefined {
  return SYMPTOMS.find((symptom) => symptom.code === code);
}
