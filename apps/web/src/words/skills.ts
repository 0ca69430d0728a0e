/** Skills of the starter catalogue, as a person writes them; a shop may have others, which stay as it wrote them. */
export const SKILLS = {
  mechanical: { en: 'mechanical', es: 'mecánica' },
  hydraulic: { en: 'hydraulic', es: 'hidráulica' },
  electrical: { en: 'electrical', es: 'eléctrica' },
} as const;

/** The skill that was written in either language, as it is kept. */
export function skillWritten(text: string): string {
  const written = text.toLowerCase();
  const known = Object.entries(SKILLS).find(([, { en, es }]) => en === written || es === written);
  return known === undefined ? text : known[0];
}
