export type Sentence = readonly [english: string, spanish: string];

/** What stands in a slot goes on into no other sentence. */
const WITHIN_A_SENTENCE = '(?:(?!\\. \\p{Lu}).)';

/**
 * Puts sentences that are kept as English text into Spanish: known by their words, with figures in their places. What a
 * shop has typed itself is not known: null, and it stays as it stands.
 */
export function knownSentences(sentences: readonly Sentence[]): (text: string) => string | null {
  const whole = new Map(sentences.filter(([english]) => !english.includes('{')));
  // The one with the most words of its own first: `{n} failures` must not take what belongs to a longer one.
  const withFigures = sentences
    .filter(([english]) => english.includes('{'))
    .toSorted(([a], [b]) => wordsIn(b) - wordsIn(a))
    .map(([english, spanish]) => ({ pattern: patternOf(english), spanish }));
  return function inSpanish(text: string): string | null {
    const found = whole.get(text);
    if (found !== undefined) return found;
    for (const { pattern, spanish } of withFigures) {
      const match = pattern.exec(text);
      if (match === null) continue;
      return spanish.replace(/\{(\w+)\}/g, (_, name: string) => {
        const figure = match.groups?.[name] ?? '';
        return inSpanish(figure) ?? figure;
      });
    }
    // Several sentences, one after the other: all of them, or none.
    const parts = text.split(/(?<=\.) (?=\p{Lu})/u);
    if (parts.length === 1) return null;
    const said = parts.map(inSpanish);
    return said.includes(null) ? null : said.join(' ');
  };
}

function patternOf(english: string): RegExp {
  const escaped = english.replace(/[.*+?^$()|[\]\\]/g, '\\$&');
  return new RegExp(
    `^${escaped.replace(/\{(\w+)\}/g, (_, name: string) => `(?<${name}>${WITHIN_A_SENTENCE}+?)`)}$`,
    'u',
  );
}

function wordsIn(english: string): number {
  return english.replace(/\{\w+\}/g, '').length;
}
