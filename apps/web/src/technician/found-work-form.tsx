import { useDraft } from '../data/draft.js';
import type { FieldMachine } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';

const EMPTY = { title: '', itemCode: '', minutes: '15' };

interface Props {
  readonly machine: FieldMachine;
  readonly record: Recorder;
}

/** Work that nobody had planned: done on the spot, or owed. */
export function FoundWorkForm({ machine, record }: Props) {
  const words = useWords();
  const { t } = words;
  const draft = useDraft(`found.${machine.id}`, EMPTY);
  const { title, itemCode, minutes } = draft.value;
  const item = machine.itemCodes.find((each) => each.code === itemCode);
  const name = title.trim() || (item ? words.work(item) : '');
  const isWhole = name !== '' && Number(minutes) >= 1 && Number(minutes) <= 960;
  const save = async (done: boolean) => {
    await record(
      { kind: 'found-work', title: name, itemCode: itemCode || null, minutes: Math.round(Number(minutes)), done },
      t(done ? 'kept.found-done' : 'kept.found-owed', { what: name }),
    );
    draft.drop(EMPTY);
  };
  return (
    <details>
      <summary>{t('found.title')}</summary>
      <div className="stack">
        <label className="field">
          <span className="label">{t('found.kind')}</span>
          <select value={itemCode} onChange={(event) => draft.change({ itemCode: event.target.value })}>
            <option value="">{t('found.other')}</option>
            {machine.itemCodes.map((each) => (
              <option key={each.code} value={each.code}>
                {words.work(each)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('found.what')}</span>
          <input value={title} maxLength={200} onChange={(event) => draft.change({ title: event.target.value })} />
        </label>
        <label className="field">
          <span className="label">{t('found.minutes')}</span>
          <input
            inputMode="numeric"
            value={minutes}
            onChange={(event) => draft.change({ minutes: event.target.value.replace(/\D/g, '') })}
          />
        </label>
        <div className={style.choices}>
          <button type="button" className="press-quiet" disabled={!isWhole} onClick={() => void save(true)}>
            {t('found.done')}
          </button>
          <button type="button" className="press-quiet" disabled={!isWhole} onClick={() => void save(false)}>
            {t('found.owed')}
          </button>
        </div>
      </div>
    </details>
  );
}
