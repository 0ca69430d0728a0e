import { useMutation, useQueryClient } from '@tanstack/react-query';
import { api } from '../../data/api.js';
import type { MeterChange } from '../../data/lifetime.js';
import { Failure } from '../../design/failure.js';
import { SureButton } from '../../design/sure-button.js';
import { useWords } from '../../words/words.js';
import { NewMeterForm } from './new-meter-form.js';

interface Props {
  readonly machineId: string;
  readonly changes: readonly MeterChange[];
  readonly today: string;
}

/** The hour meters that a machine has had: new ones are told here, and taken back where they were told by mistake. */
export function HourMeters({ machineId, changes, today }: Props) {
  const { t, dayOfYear, hours } = useWords();
  const client = useQueryClient();
  const takeBack = useMutation({
    mutationFn: (id: string) => api.remove(`/v1/meter-changes/${id}`),
    onSettled: () => client.invalidateQueries(),
  });
  return (
    <section className="tight">
      <h2>{t('meters.title')}</h2>
      {changes.length === 0 ? <p className="pencil">{t('meters.none')}</p> : null}
      <ul>
        {changes.map(({ id, changedOn, oldHours, newHours, origin }) => (
          <li key={id}>
            {t(`meters.${origin}`, { day: dayOfYear(changedOn), old: hours(oldHours), new: hours(newHours) })}{' '}
            {origin === 'told' ? (
              <SureButton
                label={t('meters.take-back')}
                sureLabel={t('meters.take-back-sure')}
                isPending={takeBack.isPending}
                onSure={() => takeBack.mutate(id)}
              />
            ) : null}
          </li>
        ))}
      </ul>
      <Failure error={takeBack.error} />
      <NewMeterForm
        key={changes.map(({ id }) => id).join()}
        machineId={machineId}
        found={changes.findLast(({ origin }) => origin === 'found')}
        today={today}
      />
    </section>
  );
}
