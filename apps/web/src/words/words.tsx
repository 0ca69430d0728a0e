import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { preferences, usePreferences } from '../app/preferences.js';
import { en } from './en.js';
import { formatsFor, US_FORMATS } from './formats.js';
import type { Language } from './language.js';
import { type Words, wordsOf } from './words-of.js';

export type { Words } from './words-of.js';

const Context = createContext<Words>(wordsOf('en', en, US_FORMATS));

/** Gives all screens their words; Spanish is fetched when it is first wanted. */
export function WordsProvider({ timeZone, currency, units, children }: Shown & { readonly children: ReactNode }) {
  const { language } = usePreferences();
  const [spanish, setSpanish] = useState<Spanish | null>(null);
  useEffect(() => {
    if (language === 'es') void spanishWords().then(setSpanish);
  }, [language]);
  const shown: Language = language === 'es' && spanish !== null ? 'es' : 'en';
  const words = useMemo(() => {
    const formats = formatsFor(shown, { timeZone, currency, units });
    return shown === 'es' ? wordsOf('es', spanish!.es, formats, spanish!.inSpanish) : wordsOf('en', en, formats);
  }, [shown, spanish, timeZone, currency, units]);
  useEffect(() => {
    document.documentElement.lang = shown;
  }, [shown]);
  // Nothing is shown in the wrong language first.
  if (language === 'es' && spanish === null) return null;
  return <Context value={words}>{children}</Context>;
}

async function spanishWords() {
  const [{ es }, { inSpanish }] = await Promise.all([import('./es.js'), import('./sentences/in-spanish.js')]);
  return { es, inSpanish };
}

type Spanish = Awaited<ReturnType<typeof spanishWords>>;

export interface Shown {
  readonly timeZone: string;
  readonly currency: string;
  readonly units: 'us' | 'metric';
}

export function useWords(): Words {
  return useContext(Context);
}

export const setLanguage = (language: Language) => preferences.change({ language });
