import { useState } from 'react';
import { doubtAbout } from '../data/plausible-hours.js';
import { present } from '../data/present.js';
import type { FieldMachine } from '../data/types.js';
import { HoursDoubtNote } from '../design/hours-doubt.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';

interface Props {
  readonly machine: FieldMachine;
  /** What was recorded at this visit already. */
  readonly recorded: string | null;
  readonly record: Recorder;
}

/** The meter: last reading above, what the figure would mean before it is saved. */
export function ReadingForm({ machine, recorded, record }: Props) {
  const { t, hours, moment } = useWords();
  const [typed, setTyped] = useState('');
  const figure = typed.replace(',', '.');
  const doubt = typed === '' ? null : doubtAbout(figure, machine.lastReading, present());
  const save = async () => {
    await record({ kind: 'reading', hours: figure }, t('kept.reading', { hours: hours(figure) }));
    setTyped('');
  };
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <label className="field">
        <span className="label">{t('hours.title')}</span>
        <span className="pencil">
          {machine.lastReading
            ? t('hours.last', { hours: hours(machine.lastReading.hours), when: moment(machine.lastReading.readAt) })
            : t('hours.none')}
        </span>
        <input
          className={style.big}
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      <HoursDoubtNote doubt={doubt} onTake={setTyped} />
      {recorded === null ? null : <p role="status">{t('hours.recorded', { hours: hours(recorded) })}</p>}
      <button type="submit" className="press" disabled={typed === '' || doubt?.kind === 'not-a-figure'}>
        {t(doubt === null ? 'hours.save' : 'hours.save-anyway')}
      </button>
    </form>
  );
}
