import { useDraft } from '../data/draft.js';
import type { FieldDay } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';

const EMPTY = { what: '', limitHours: '', limitOn: '', partId: '', partExpectedOn: '', minutes: '30' };

interface Props {
  readonly parts: FieldDay['parts'];
  readonly record: Recorder;
}

/** A temporary repair: what was done, how long it is good for, the part it waits for. */
export function StopgapForm({ parts, record }: Props) {
  const { t, sentence } = useWords();
  const draft = useDraft('stopgap', EMPTY);
  const { what, limitHours, limitOn, partId, partExpectedOn, minutes } = draft.value;
  const isHours = limitHours === '' || /^\d{1,6}(\.\d{1,2})?$/.test(limitHours);
  const isWhole =
    what.trim() !== '' &&
    isHours &&
    (limitHours !== '' || limitOn !== '') &&
    Number(minutes) >= 1 &&
    Number(minutes) <= 960;
  const save = async () => {
    await record(
      {
        kind: 'stopgap',
        description: what.trim(),
        limitHours: limitHours || null,
        limitOn: limitOn || null,
        partId: partId || null,
        partExpectedOn: partExpectedOn || null,
        minutes: Math.round(Number(minutes)),
      },
      t('kept.stopgap', { what: what.trim() }),
    );
    draft.drop(EMPTY);
  };
  return (
    <details>
      <summary>{t('stopgap.title')}</summary>
      <div className="stack">
        <label className="field">
          <span className="label">{t('stopgap.what')}</span>
          <textarea value={what} maxLength={500} onChange={(event) => draft.change({ what: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('stopgap.hours')}</span>
          <input
            inputMode="decimal"
            value={limitHours}
            aria-invalid={!isHours}
            onChange={(event) => draft.change({ limitHours: event.target.value.replace(',', '.') })}
          />
        </label>
        <label className="field">
          <span className="label">{t('stopgap.until')}</span>
          <input type="date" value={limitOn} onChange={(event) => draft.change({ limitOn: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('stopgap.part')}</span>
          <select value={partId} onChange={(event) => draft.change({ partId: event.target.value })}>
            <option value="">{t('stopgap.no-part')}</option>
            {parts.map((each) => (
              <option key={each.id} value={each.id}>
                {each.code} {sentence(each.description)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('stopgap.expected')}</span>
          <input
            type="date"
            value={partExpectedOn}
            onChange={(event) => draft.change({ partExpectedOn: event.target.value })}
          />
        </label>
        <label className="field">
          <span className="label">{t('stopgap.minutes')}</span>
          <input
            inputMode="numeric"
            value={minutes}
            onChange={(event) => draft.change({ minutes: event.target.value.replace(/\D/g, '') })}
          />
        </label>
        <p className="pencil">{t('stopgap.limit-needed')}</p>
        <button type="button" className="press-quiet" disabled={!isWhole} onClick={() => void save()}>
          {t('stopgap.save')}
        </button>
      </div>
    </details>
  );
}
