import { useQuery } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import style from './looking-back.module.css';
import { bearingQuery } from './queries.js';
import { twoDigits } from './two-digits.js';

const START = {
  designation: '6205-2Z',
  engineRpm: '3600',
  drivePulley: '150',
  drivenPulley: '180',
  strandTensionN: '250',
  imbalanceGramMm: '400',
} as const;
const GRADES = ['clean', 'normal', 'dirty', 'severe'] as const;

/** Rating life of a spindle's two bearings (ISO 281) for given belt, speed and imbalance; dirt as a range. */
export function BearingCalculator() {
  const { t, number, sentence } = useWords();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({ ...START, contamination: 'normal' });
  const [asked, setAsked] = useState<Readonly<Record<string, string>> | null>(null);
  const { data, error } = useQuery({ ...bearingQuery(asked ?? {}), enabled: asked !== null, retry: false });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsked(typed);
  };
  const whole = (hours: number) => t('back.about-hours', { hours: number(twoDigits(hours)) });
  return (
    <section className="tight">
      <h2>{t('back.bearing')}</h2>
      <form className={style.bearing} onSubmit={submit}>
        {(Object.keys(START) as (keyof typeof START)[]).map((name) => (
          <label key={name} className="field">
            <span className="label">{t(`bearing.${name}`)}</span>
            <input
              className="figure"
              inputMode={name === 'designation' ? 'text' : 'decimal'}
              value={typed[name]}
              onChange={(event) => setTyped({ ...typed, [name]: event.target.value.replace(',', '.') })}
            />
          </label>
        ))}
        <label className="field">
          <span className="label">{t('bearing.contamination')}</span>
          <select
            value={typed['contamination']}
            onChange={(event) => setTyped({ ...typed, contamination: event.target.value })}
          >
            {GRADES.map((grade) => (
              <option key={grade} value={grade}>
                {t(`bearing.${grade}`)}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" className="press-quiet">
          {t('bearing.reckon')}
        </button>
      </form>
      <Failure error={error} />
      {data ? (
        <>
          <p role="status">
            {t('bearing.answer', {
              low: whole(data.bothAdjustedLowHours),
              high: whole(data.bothAdjustedHighHours),
              l10: whole(data.bothL10Hours),
              rpm: number(data.spindleRpm),
            })}
          </p>
          <table>
            <thead>
              <tr>
                <th scope="col">{t('back.bearing')}</th>
                <th scope="col" className="number">
                  {t('bearing.load')}
                </th>
                <th scope="col" className="number">
                  L10
                </th>
                <th scope="col" className="number">
                  {t('bearing.with-dirt')}
                </th>
              </tr>
            </thead>
            <tbody>
              {(['upper', 'lower'] as const).map((which) => (
                <tr key={which}>
                  <th scope="row">{t(`bearing.${which}`)}</th>
                  <td className="number">{number(data[which].equivalentN)} N</td>
                  <td className="number">{whole(data[which].l10Hours)}</td>
                  <td className="number">
                    {whole(data[which].adjustedLowHours)} – {whole(data[which].adjustedHighHours)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="small pencil">{data.sources.map(sentence).join(' ')}</p>
        </>
      ) : null}
    </section>
  );
}
