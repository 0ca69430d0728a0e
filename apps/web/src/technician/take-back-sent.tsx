import { useState } from 'react';
import type { KeptRecord } from '../offline/field-store.js';
import { WHY_BACK, type WhyBack } from '../words/why-back.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';

/** A used part that has left the device is taken back by a record of its own, which says why and goes the same way. */
export function TakeBackSent({ used, record }: { readonly used: KeptRecord; readonly record: Recorder }) {
  const { t, number, sentence } = useWords();
  const [isAsked, setIsAsked] = useState(false);
  const { id: useId, fact } = used;
  if (fact.kind !== 'part-used') return null;
  const { name, quantity } = fact;
  if (!isAsked)
    return (
      <button type="button" className="press-plain" onClick={() => setIsAsked(true)}>
        {t('unsent.take-back')}
      </button>
    );
  const takeBack = (because: WhyBack) => {
    // First of all: a second press finds nothing to press.
    setIsAsked(false);
    void record(
      { kind: 'part-taken-back', useId, name, quantity, because },
      t('kept.part-taken-back', { n: number(Number(quantity), 2), part: sentence(name) }),
    );
  };
  return (
    <fieldset className="stack">
      <legend>{t('parts.why-back')}</legend>
      {WHY_BACK.map((because) => (
        <button key={because} type="button" className="press-quiet" onClick={() => takeBack(because)}>
          {t(`part-use.because.${because}`)}
        </button>
      ))}
      <button type="button" className="press-plain" onClick={() => setIsAsked(false)}>
        {t('parts.keep')}
      </button>
    </fieldset>
  );
}
