import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { api } from '../../data/api.js';
import { useMachinesInUse } from '../../data/machines-in-use.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './looking-back.module.css';
import type { SpeedCheck } from './queries.js';

const FIELDS = ['bladeInches', 'engineRpm', 'drivePulley', 'drivenPulley'] as const;
/** In one metre a second: 60 / 0.3048, exactly. */
const FEET_PER_MINUTE = 60 / 0.3048;

/** Speed of the blade tips after pulleys, blades or engine speed were changed; kept with the machine, blocks nothing. */
export function TipSpeed() {
  const { t, number, units, sentence } = useWords();
  const speed = (feetPerMinute: number) =>
    units === 'us' ? `${number(feetPerMinute)} ft/min` : `${number(feetPerMinute / FEET_PER_MINUTE, 1)} m/s`;
  const machines = useMachinesInUse() ?? [];
  const [machineId, setMachine] = useState('');
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({
    engineRpm: '3600',
    drivePulley: '150',
    drivenPulley: '180',
  });
  const check = useMutation({
    mutationFn: () =>
      api.post<SpeedCheck>('/v1/reliability/speed-checks', {
        machineId,
        ...Object.fromEntries(FIELDS.map((name) => [name, Number(typed[name])])),
      }),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    check.mutate();
  };
  const { data, error } = check;
  return (
    <section className="tight">
      <h2>{t('tip.title')}</h2>
      <form className={style.bearing} onSubmit={submit}>
        <label className="field">
          <span className="label">{t('due.machine')}</span>
          <select required value={machineId} onChange={(event) => setMachine(event.target.value)}>
            <option value="">–</option>
            {machines.map((machine) => (
              <option key={machine.id} value={machine.id}>
                {machine.code}
              </option>
            ))}
          </select>
        </label>
        {FIELDS.map((name) => (
          <label key={name} className="field">
            <span className="label">{t(name === 'bladeInches' ? 'tip.bladeInches' : `bearing.${name}`)}</span>
            <input
              className="figure"
              inputMode="decimal"
              required
              value={typed[name] ?? ''}
              onChange={(event) => setTyped({ ...typed, [name]: event.target.value.replace(',', '.') })}
            />
          </label>
        ))}
        <button type="submit" className="press-quiet" disabled={check.isPending}>
          {t('tip.check')}
        </button>
      </form>
      <Failure error={error} />
      {data ? (
        <div className={data.isOver ? 'note clay' : 'note'} role="status">
          <p>
            <strong>{t(data.isOver ? 'tip.over' : 'tip.within')}</strong>{' '}
            {t('tip.answer', {
              speed: speed(data.feetPerMinute),
              limit: speed(data.limitFeetPerMinute),
              rpm: number(data.spindleRpm),
              highest: number(data.highestRpm),
            })}
          </p>
          <p className="small">{sentence(data.limitSource)}</p>
          <p className="small">{t('tip.first')}</p>
        </div>
      ) : null}
    </section>
  );
}
