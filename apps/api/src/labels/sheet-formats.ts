import type { LABEL_FORMATS } from '@deckround/contracts';

export type LabelFormat = (typeof LABEL_FORMATS)[number];

/** Where the labels of a sheet lie, in points: the first from the top left corner, the next by their pitch. */
export interface SheetGeometry {
  readonly page: readonly [width: number, height: number];
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly pitchX: number;
  readonly pitchY: number;
}

const INCH = 72;
/** Points in a millimetre. */
export const MM = 72 / 25.4;

const LETTER = [8.5 * INCH, 11 * INCH] as const;
const A4 = [210 * MM, 297 * MM] as const;

/** Sizes of common label sheets. @source common practice, no source; 10 and 24 labels from memory */
export const SHEETS: Readonly<Record<LabelFormat, SheetGeometry>> = {
  'letter-30': {
    page: LETTER,
    columns: 3,
    rows: 10,
    width: 2.625 * INCH,
    height: 1 * INCH,
    left: 0.1875 * INCH,
    top: 0.5 * INCH,
    pitchX: 2.75 * INCH,
    pitchY: 1 * INCH,
  },
  'letter-10': {
    page: LETTER,
    columns: 2,
    rows: 5,
    width: 4 * INCH,
    height: 2 * INCH,
    left: 0.15625 * INCH,
    top: 0.5 * INCH,
    pitchX: 4.1875 * INCH,
    pitchY: 2 * INCH,
  },
  'a4-24': {
    page: A4,
    columns: 3,
    rows: 8,
    width: 70 * MM,
    height: 37 * MM,
    left: 0,
    top: 0.5 * MM,
    pitchX: 70 * MM,
    pitchY: 37 * MM,
  },
};

/** Top left corner of the place with this number, counted along the rows from 0. */
export function cornerOf(sheet: SheetGeometry, place: number): { x: number; y: number } {
  return {
    x: sheet.left + (place % sheet.columns) * sheet.pitchX,
    y: sheet.top + Math.floor(place / sheet.columns) * sheet.pitchY,
  };
}
