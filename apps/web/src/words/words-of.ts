import { IntlMessageFormat } from 'intl-messageformat';
import { en, type WordKey } from './en.js';
import type { Formats } from './formats.js';
import type { Language } from './language.js';

type Values = Readonly<Record<string, string | number>>;
export interface Words extends Formats {
  readonly language: Language;
  /** The text under this key, its plurals and numbers filled in (ICU MessageFormat). */
  t(key: WordKey, values?: Values): string;
  /** The text under a key made from data, e.g. `class.zero-turn`; the fallback where there is none. */
  named(key: string, fallback: string): string;
  /** A sentence that the service keeps as text: in the reader's language where it is known, else as it stands. */
  sentence(text: string): string;
  /** Work by its name: the starter catalogue's in the reader's language, a shop's own title as it stands. */
  work(item: { readonly code: string; readonly title: string; readonly slot?: string | null }): string;
}

/** All texts of one language, as functions. */
export function wordsOf(
  language: Language,
  texts: Readonly<Record<WordKey, string>>,
  formats: Formats,
  known: (text: string) => string | null = () => null,
): Words {
  const parsed = new Map<string, IntlMessageFormat>();
  const t = (key: WordKey, values?: Values): string => {
    let message = parsed.get(key);
    if (message === undefined) {
      message = new IntlMessageFormat(texts[key], formats.locale);
      parsed.set(key, message);
    }
    return message.format(values) as string;
  };
  const named = (key: string, fallback: string) => (Object.hasOwn(texts, key) ? t(key as WordKey) : fallback);
  const sentence = (text: string) => known(text) ?? text;
  const work: Words['work'] = ({ code, title, slot }) => {
    const own = slot ? title.replace(`, ${slot}`, '') : title;
    const name = en[`item.${code}` as WordKey] === own ? named(`item.${code}`, own) : sentence(own);
    if (!slot) return name;
    const [, kind, order] = /^(\w+) (\d+)$/.exec(slot) ?? [];
    return t('item.at', { name, slot: kind === 'spindle' ? t('slot.spindle', { n: Number(order) }) : slot });
  };
  return { ...formats, language, t, named, sentence, work };
}
