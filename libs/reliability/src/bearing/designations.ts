/** A deep groove ball bearing: ISO 15 boundary dimensions in mm, catalogue ratings in newtons. */
export interface Bearing {
  readonly designation: string;
  readonly boreMm: number;
  readonly outerMm: number;
  readonly widthMm: number;
  readonly ratingN: number;
  readonly staticRatingN: number;
  /** Factor of the axial load table; from memory. */
  readonly f0: number;
}

/**
 * Sizes met in mower spindles and idlers. Ratings differ by maker (6205: 14.0 or 14.8 kN): the calculator takes others.
 *
 * @source one maker's 2018 catalogue as extracted in a stored file; dimensions agree with a second table
 */
export const BEARINGS: readonly Bearing[] = [
  bearing('6203', 17, 40, 12, 9950, 4750, 13),
  bearing('6204', 20, 47, 14, 13500, 6550, 13),
  bearing('6205', 25, 52, 15, 14800, 7800, 14),
  bearing('6206', 30, 62, 16, 20300, 11200, 14),
  bearing('6303', 17, 47, 14, 14300, 6550, 12),
  bearing('6304', 20, 52, 15, 16800, 7800, 12),
  bearing('6305', 25, 62, 17, 23400, 11600, 12),
  bearing('6208', 40, 80, 18, 32500, 19000, 14),
  bearing('6310', 50, 110, 27, 65000, 38000, 13),
];

function bearing(
  designation: string,
  boreMm: number,
  outerMm: number,
  widthMm: number,
  ratingN: number,
  staticRatingN: number,
  f0: number,
): Bearing {
  return { designation, boreMm, outerMm, widthMm, ratingN, staticRatingN, f0 };
}

/** The bearing behind a designation with suffixes, `6205-2Z` → 6205; null when it is not in the table. */
export function bearingOf(designation: string): Bearing | null {
  const digits = /^\D*(\d{3,5})/.exec(designation.replaceAll(' ', ''))?.[1];
  return BEARINGS.find((each) => each.designation === digits) ?? null;
}

/** Bore from the last two digits of a designation: 00 10, 01 12, 02 15, 03 17, from 04 five times the code; mm. */
export function boreOf(designation: string): number | null {
  const code = /^\D*\d{1,3}(\d{2})(?!\d)/.exec(designation)?.[1];
  if (code === undefined) return null;
  return [10, 12, 15, 17][Number(code)] ?? Number(code) * 5;
}

export type Seal = 'two shields' | 'one shield' | 'two seals' | 'one seal' | 'open';

/** What keeps dirt out, read from common suffixes (2Z/ZZ shields, 2RS/RS contact seals, Z one shield). */
export function sealOf(designation: string): Seal {
  const suffix = designation.toUpperCase().replace(/^\D*\d+/, '');
  if (/2RS|2RZ|DDU|LLU/.test(suffix)) return 'two seals';
  if (/2Z|ZZ/.test(suffix)) return 'two shields';
  if (/RS|RZ/.test(suffix)) return 'one seal';
  return /Z/.test(suffix) ? 'one shield' : 'open';
}
