interface Term {
  readonly en: string;
  readonly es: string;
}

/** Skills of the starter catalogue, as a person writes them; a shop may have others, which stay as it wrote them. */
export const SKILLS = {
  mechanical: { en: 'mechanical', es: 'mecánica' },
  hydraulic: { en: 'hydraulic', es: 'hidráulica' },
  electrical: { en: 'electrical', es: 'eléctrica' },
} as const;

/** Units in which parts are counted; a shop may have others of these too. */
export const PART_UNITS = {
  each: { en: 'each', es: 'pieza' },
  pair: { en: 'pair', es: 'par' },
  set: { en: 'set', es: 'juego' },
} as const;

/** What was written in either language, as it is kept. */
export function asKept(terms: Readonly<Record<string, Term>>, text: string): string {
  const written = text.toLowerCase();
  const known = Object.entries(terms).find(([, { en, es }]) => en === written || es === written);
  return known === undefined ? text : known[0];
}
