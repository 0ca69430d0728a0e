export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The first of the reader's languages that we speak. */
export function firstSpoken(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const language = LANGUAGES.find((each) => tag.toLowerCase().split('-')[0] === each);
    if (language !== undefined) return language;
  }
  return 'en';
}
