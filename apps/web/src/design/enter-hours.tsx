import { useMutation } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { doubtAbout } from '../data/plausible-hours.js';
import { present } from '../data/present.js';
import { useWords } from '../words/words.js';
import { Failure } from './failure.js';
import { HoursDoubtNote } from './hours-doubt.js';
import { Keypad } from './keypad.js';

interface Props {
  readonly last: { readonly readAt: string; readonly hours: string } | null;
  /** The same key again has no second effect. */
  readonly save: (reading: { readonly readAt: string; readonly hours: string }, key: string) => Promise<unknown>;
}

/** Hours on big keys, with what they would mean said before they are saved. */
export function EnterHours({ last, save }: Props) {
  const { t, hours, moment } = useWords();
  const [typed, setTyped] = useState('');
  const key = useRef(crypto.randomUUID());
  const doubt = typed === '' ? null : doubtAbout(typed, last, present());
  const saving = useMutation({
    mutationFn: () => save({ readAt: present().toISOString(), hours: typed }, key.current),
    onSuccess: () => setTyped(''),
    onSettled: () => {
      key.current = crypto.randomUUID();
    },
  });
  return (
    <section className="stack">
      <h2>{t('hours.title')}</h2>
      <p className="pencil">
        {last ? t('hours.last', { hours: hours(last.hours), when: moment(last.readAt) }) : t('hours.none')}
      </p>
      <Keypad value={typed} label={t('hours.title')} onChange={setTyped} />
      <HoursDoubtNote doubt={doubt} onTake={setTyped} />
      {saving.isSuccess && typed === '' ? <p role="status">{t('hours.saved')}</p> : null}
      <Failure error={saving.error} />
      <button
        type="button"
        className="press"
        disabled={typed === '' || doubt?.kind === 'not-a-figure' || saving.isPending}
        onClick={() => saving.mutate()}
      >
        {t(doubt === null ? 'hours.save' : 'hours.save-anyway')}
      </button>
    </section>
  );
}
