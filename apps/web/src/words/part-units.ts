/** Units in which parts are counted, as a person writes them; a shop may have others, which stay as it wrote them. */
export const PART_UNITS = {
  each: { en: 'each', es: 'pieza' },
  pair: { en: 'pair', es: 'par' },
  set: { en: 'set', es: 'juego' },
} as const;

/** The unit that was written in either language, as it is kept. */
export function partUnitWritten(text: string): string {
  const written = text.toLowerCase();
  const known = Object.entries(PART_UNITS).find(([, { en, es }]) => en === written || es === written);
  return known === undefined ? text : known[0];
}
