import { useDraft } from '../../data/draft.js';
import type { MeterChange } from '../../data/lifetime.js';
import { usePost } from '../../data/use-post.js';
import { Failure } from '../../design/failure.js';
import { FormField } from '../../design/form-field.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

interface Props {
  readonly machineId: string;
  /** What the readings suggest, and nobody has told yet. */
  readonly found: MeterChange | undefined;
  readonly today: string;
}

/** A new hour meter was fitted: what the old one showed last, and the new one first. */
export function NewMeterForm({ machineId, found, today }: Props) {
  const words = useWords();
  const { t } = words;
  const empty = {
    changedOn: found?.changedOn ?? today,
    oldHours: found?.oldHours ?? '',
    newHours: found?.newHours ?? '0',
  };
  const draft = useDraft(`new-meter.${machineId}`, empty);
  const { changedOn, oldHours, newHours } = draft.value;
  const tell = usePost<MeterChange>('/v1/meter-changes', () => draft.drop(empty));
  const faults = faultsOf(tell.error, words);
  const hoursField = (name: 'oldHours' | 'newHours', label: string) => (
    <FormField label={label} fault={faults.get(name)}>
      {(tied) => (
        <input
          {...tied}
          className="figure"
          inputMode="decimal"
          value={draft.value[name]}
          onChange={(event) => draft.change({ [name]: event.target.value.trim().replace(',', '.') })}
        />
      )}
    </FormField>
  );
  return (
    <details>
      <summary>{t('meters.new')}</summary>
      <form
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          tell.mutate({ machineId, changedOn, oldHours, newHours });
        }}
      >
        <p className="pencil">{t('meters.new-what')}</p>
        <div className={style.form}>
          <FormField label={t('meters.changed-on')} fault={faults.get('changedOn')}>
            {(tied) => (
              <input
                {...tied}
                type="date"
                max={today}
                value={changedOn}
                onChange={(event) => draft.change({ changedOn: event.target.value })}
              />
            )}
          </FormField>
          {hoursField('oldHours', t('meters.old'))}
          {hoursField('newHours', t('meters.first'))}
        </div>
        <p>
          <button
            type="submit"
            className="press"
            disabled={changedOn === '' || oldHours === '' || newHours === '' || tell.isPending}
          >
            {t('meters.tell')}
          </button>
        </p>
        <Failure error={tell.error} />
      </form>
    </details>
  );
}
