import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { preferences, usePreferences } from '../app/preferences.js';
import { en, type WordKey } from './en.js';
import { formatsFor, US_FORMATS } from './formats.js';
import type { Language } from './language.js';
import { type Words, wordsOf } from './words-of.js';

export type { Words } from './words-of.js';

const Context = createContext<Words>(wordsOf('en', en, US_FORMATS));

/** Gives all screens their words; Spanish is fetched when it is first wanted. */
export function WordsProvider({ timeZone, currency, units, children }: Shown & { readonly children: ReactNode }) {
  const { language } = usePreferences();
  const [spanish, setSpanish] = useState<Readonly<Record<WordKey, string>> | null>(null);
  useEffect(() => {
    if (language === 'es') void import('./es.js').then((module) => setSpanish(module.es));
  }, [language]);
  const shown: Language = language === 'es' && spanish !== null ? 'es' : 'en';
  const words = useMemo(
    () => wordsOf(shown, shown === 'es' ? spanish! : en, formatsFor(shown, { timeZone, currency, units })),
    [shown, spanish, timeZone, currency, units],
  );
  useEffect(() => {
    document.documentElement.lang = shown;
  }, [shown]);
  // Nothing is shown in the wrong language first.
  if (language === 'es' && spanish === null) return null;
  return <Context value={words}>{children}</Context>;
}

export interface Shown {
  readonly timeZone: string;
  readonly currency: string;
  readonly units: 'us' | 'metric';
}

export function useWords(): Words {
  return useContext(Context);
}

export const setLanguage = (language: Language) => preferences.change({ language });
