/** Why a part left its slot. */
export type RemovalReason = 'failed' | 'preventive' | 'upgrade' | 'machine-retired';

/** What was seen when a part came out; all of it may be unknown. */
export interface RemovalFindings {
  readonly bearingFeel: 'smooth' | 'rough' | 'loose' | 'locked' | null;
  /** A lip rolled on the spacer's end: the bearings were preloaded too hard. */
  readonly spacerEndLip: boolean | null;
  readonly housingStepWear: 'none' | 'slight' | 'worn' | null;
  readonly debrisWrap: 'none' | 'grass' | 'twine' | 'wire' | null;
  readonly debrisCupMissing: boolean | null;
  readonly greaseLook: 'fresh' | 'dark' | 'watery' | 'metal' | 'dry' | null;
}

export const NOTHING_FOUND: RemovalFindings = {
  bearingFeel: null,
  spacerEndLip: null,
  housingStepWear: null,
  debrisWrap: null,
  debrisCupMissing: null,
  greaseLook: null,
};

/** One part's stay in a slot, derived from the shop's history or recorded by hand. */
export interface ComponentLife {
  readonly machineId: string;
  readonly siteId: string;
  readonly machineClass: string;
  readonly severity: 'light' | 'normal' | 'severe';
  /** The service item that replaces it, e.g. `replace-spindle-bearings`. */
  readonly itemCode: string;
  /** e.g. `spindle 2`; null = one per machine. */
  readonly slot: string | null;
  /** Code of the part fitted; null = not on record. */
  readonly part: string | null;
  readonly fittedOn: string | null;
  readonly removedOn: string | null;
  readonly reason: RemovalReason | null;
  /** Hours of the part: when watching began (left truncation), and at its end or today. */
  readonly entryHours: number;
  readonly ageHours: number;
  /** Its fitting is on record; otherwise it is taken to be the machine's first part. */
  readonly fittingKnown: boolean;
  readonly findings: RemovalFindings;
  readonly rootCause: string | null;
  /** One event behind several failures (wire around two spindles); null = its own. */
  readonly causeId: string | null;
  /** False for all but one of the failures that share a cause: they count as taken out whole at that age. */
  readonly countsAsFailure: boolean;
}

/** A life entered by a person, with lifetime hours of the machine. */
export interface RecordedLife {
  readonly machineId: string;
  readonly slot: string;
  readonly itemCode: string;
  readonly part: string | null;
  readonly fittedOn: string | null;
  readonly fittedHours: number | null;
  readonly removedOn: string | null;
  readonly removedHours: number | null;
  readonly reason: RemovalReason | null;
  readonly findings: RemovalFindings;
  readonly rootCause: string | null;
  readonly causeId: string | null;
}

/** What a finding recorded with a replacement says about the part that came out. */
export interface SlotFinding {
  readonly machineId: string;
  readonly itemCode: string;
  readonly slot: string | null;
  readonly foundOn: string;
  readonly findings: RemovalFindings;
  readonly rootCause: string | null;
}

const words = <T extends string>(value: unknown, known: readonly T[]): T | null =>
  known.find((each) => each === value) ?? null;
const claim = (value: unknown): boolean | null =>
  typeof value === 'boolean' ? value : value === 'yes' ? true : value === 'no' ? false : null;

/** Reads the measures of a finding (`bearing-feel: rough`, `debris-cup-missing: yes`); unknown words are left out. */
export function findingsOf(measures: Readonly<Record<string, unknown>>): RemovalFindings {
  return {
    bearingFeel: words(measures['bearing-feel'], ['smooth', 'rough', 'loose', 'locked']),
    spacerEndLip: claim(measures['spacer-end-lip']),
    housingStepWear: words(measures['housing-step-wear'], ['none', 'slight', 'worn']),
    debrisWrap: words(measures['debris-wrap'], ['none', 'grass', 'twine', 'wire']),
    debrisCupMissing: claim(measures['debris-cup-missing']),
    greaseLook: words(measures['grease-look'], ['fresh', 'dark', 'watery', 'metal', 'dry']),
  };
}
