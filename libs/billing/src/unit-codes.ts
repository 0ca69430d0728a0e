// UN/ECE Recommendation 20. The codes of standards' examples (HUR, MIN, C62, LTR, GLL, LS) are checked by the EN 16931
// rules; the others are from memory and pass the same code list.
const CODES: Readonly<Record<string, string>> = {
  each: 'C62',
  piece: 'H87',
  pair: 'PR',
  set: 'SET',
  litre: 'LTR',
  liter: 'LTR',
  l: 'LTR',
  ml: 'MLT',
  gallon: 'GLL',
  gal: 'GLL',
  quart: 'QTL',
  qt: 'QTL',
  kg: 'KGM',
  g: 'GRM',
  lb: 'LBR',
  oz: 'ONZ',
  m: 'MTR',
  ft: 'FOT',
};

/** The standard code of a shop's unit; units that have none are counted as pieces. */
export function unitCode(unit: string): string {
  return CODES[unit.toLowerCase()] ?? 'C62';
}
