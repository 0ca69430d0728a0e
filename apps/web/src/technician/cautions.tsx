import type { FieldMachine } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';

interface Props {
  readonly machine: FieldMachine;
  readonly manualFirst: string;
  readonly isSeen: boolean;
  readonly record: Recorder;
}

/** Comes before the first step, once per machine and visit. The manual, local codes and licensed practice come first. */
export function Cautions({ machine, manualFirst, isSeen, record }: Props) {
  const { t, sentence } = useWords();
  const list = (
    <ul className="stack">
      {machine.cautions.map((caution) => (
        <li key={caution}>{sentence(caution)}</li>
      ))}
    </ul>
  );
  if (isSeen)
    return (
      <details>
        <summary>{t('cautions.seen')}</summary>
        <div className="stack">
          <p>{sentence(manualFirst)}</p>
          {list}
        </div>
      </details>
    );
  return (
    <section className="note clay stack">
      <h2>{t('cautions.title')}</h2>
      <p>
        <strong>{t('safety')}</strong>
      </p>
      {list}
      <button
        type="button"
        className="press"
        onClick={() =>
          void record({ kind: 'cautions-seen', cautions: [manualFirst, ...machine.cautions] }, t('kept.cautions-seen'))
        }
      >
        {t('cautions.go')}
      </button>
    </section>
  );
}
