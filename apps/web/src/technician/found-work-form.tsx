import { useDraft } from '../data/draft.js';
import type { FieldMachine } from '../data/types.js';
import { useWords } from '../words/words.js';
import type { Recorder } from './recorder.js';
import style from './technician.module.css';

const EMPTY = { title: '', itemCode: '', which: '', minutes: '15' };
/** Every place of its kind. */
const ALL = 'all';

interface Props {
  readonly machine: FieldMachine;
  readonly record: Recorder;
}

/** Work that nobody had planned: done on the spot, or owed. */
export function FoundWorkForm({ machine, record }: Props) {
  const words = useWords();
  const { t } = words;
  const draft = useDraft(`found.${machine.id}`, EMPTY);
  const { title, itemCode, which, minutes } = draft.value;
  const item = machine.itemCodes.find((each) => each.code === itemCode);
  const name = title.trim() || (item ? words.work(item) : '');
  const isOfSpindles = item?.scope === 'spindle' && machine.spindles > 1;
  const isPlaced = !isOfSpindles || which !== '';
  const slot = isOfSpindles && which !== ALL ? which : null;
  const isWhole = name !== '' && isPlaced && Number(minutes) >= 1 && Number(minutes) <= 960;
  const save = async (done: boolean) => {
    await record(
      { kind: 'found-work', title: name, itemCode: itemCode || null, slot, minutes: Math.round(Number(minutes)), done },
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
        {isOfSpindles ? (
          <label className="field">
            <span className="label">{t('found.which')}</span>
            <select value={which} onChange={(event) => draft.change({ which: event.target.value })}>
              <option value="">{t('found.choose')}</option>
              {Array.from({ length: machine.spindles }, (_, index) => index + 1).map((n) => (
                <option key={n} value={`spindle ${n}`}>
                  {t('slot.spindle', { n })}
                </option>
              ))}
              <option value={ALL}>{t('found.all')}</option>
            </select>
          </label>
        ) : null}
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
