import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { serviceItemsQuery } from '../../data/queries.js';
import { Failure } from '../../design/failure.js';
import { Scrolling } from '../../design/scrolling.js';
import { minorUnits, moneyPattern } from '../../words/typed-money.js';
import { useWords } from '../../words/words.js';
import { Assumptions } from './figures.js';
import style from './looking-back.module.css';
import { cumulativeQuery, type MachineAdvice, machineAdviceQuery } from './queries.js';
import { RepairsByHours } from './repairs-by-hours.js';

/** Trends are told at this two-sided level, as the service does. */
const TREND_LEVEL = 0.1;

/** One machine's unplanned repairs beside its class, their trend, and whether keeping it still pays. */
export function MachineRecordPage() {
  const { id } = useParams({ strict: false }) as { id: string };
  const words = useWords();
  const { t, hours, money, number, dayOfYear } = words;
  const items = useQuery(serviceItemsQuery).data;
  const [terms, setTerms] = useState<Readonly<Record<string, string>>>({});
  const { data, error } = useQuery({ ...machineAdviceQuery(id, terms), placeholderData: (before) => before });
  const fleet = useQuery({
    ...cumulativeQuery({ of: 'repairs', machineClass: data?.machineClass }),
    enabled: data !== undefined,
  }).data;
  if (error && !data) return <Failure error={error} />;
  if (!data || !items) return <h1>{t('wait')}</h1>;
  const workOf = (code: string) => {
    const item = items.find((each) => each.code === code && each.machineClass === data.machineClass);
    return item ? words.work(item) : code;
  };
  return (
    <div className="stack">
      <title>{t('record.page', { code: data.machineCode })}</title>
      <p className="row">
        <Link to="/looking-back">{t('nav.looking-back')}</Link>
        <Link to="/machines/$id/forecast" params={{ id }}>
          {t('forecast.machine', {
            code: data.machineCode,
            class: words.named(`class.${data.machineClass}`, data.machineClass),
          })}
        </Link>
        <span className="pencil">{data.siteName}</span>
      </p>
      <h1>
        {t('record.sentence', {
          n: data.repairCount,
          hours: hours(data.toHours - data.fromHours),
          money: money(data.repairCents),
        })}{' '}
        {t(`record.trend.${trendOf(data)}`)}
      </h1>
      <RepairsByHours record={data} fleet={fleet?.points ?? []} />
      <ReplaceIt record={data} onAsk={setTerms} />
      <Failure error={error} />
      <section className="tight">
        <h2>{t('record.repairs')}</h2>
        {data.repairs.length === 0 ? (
          <p className="pencil">{t('back.no-repairs')}</p>
        ) : (
          <Scrolling label={t('record.repairs')}>
            <table>
              <thead>
                <tr>
                  <th scope="col">{t('record.on')}</th>
                  <th scope="col">{t('due.work')}</th>
                  <th scope="col" className="number">
                    {t('back.age')}
                  </th>
                  <th scope="col" className="number">
                    {t('back.repair-cost')}
                  </th>
                </tr>
              </thead>
              <tbody>
                {data.repairs.map((repair, index) => (
                  <tr key={index}>
                    <td>{dayOfYear(repair.on)}</td>
                    <td>{workOf(repair.code)}</td>
                    <td className="number">{number(repair.hours, 1)}</td>
                    <td className="number">{money(repair.cents)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scrolling>
        )}
        <p className="small pencil">
          {data.laplaceP === null
            ? null
            : t('record.tests', { laplace: number(data.laplaceP, 3), milHdbk: number(data.milHdbkP ?? 1, 3) })}
        </p>
        <Assumptions statement={data.trend} lines={data.assumptions} />
      </section>
    </div>
  );
}

function trendOf({ laplace, laplaceP }: MachineAdvice): 'too-few' | 'none' | 'wearing-out' | 'improving' {
  if (laplace === null || laplaceP === null) return 'too-few';
  if (laplaceP > TREND_LEVEL) return 'none';
  return laplace > 0 ? 'wearing-out' : 'improving';
}

const FIELDS = ['newPriceCents', 'resaleNowCents', 'resaleInAYearCents', 'newLifeHours', 'hoursNextYear'] as const;

interface ReplaceProps {
  readonly record: MachineAdvice;
  readonly onAsk: (terms: Readonly<Record<string, string>>) => void;
}

/** Keep or replace: what an hour costs either way, once the price of a new machine is known. */
function ReplaceIt({ record: { advice }, onAsk }: ReplaceProps) {
  const { t, money, currencyDigits } = useWords();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const entries = FIELDS.flatMap((name): [string, string][] => {
      const value = typed[name]?.trim().replace(',', '.') ?? '';
      if (value === '') return [];
      return [[name, name.endsWith('Cents') ? String(minorUnits(value, currencyDigits)) : value]];
    });
    onAsk(Object.fromEntries(entries));
  };
  const perHour = (cents: number) => money(Math.round(cents));
  return (
    <section className="tight">
      <h2>{t('record.keep-or-replace')}</h2>
      <form className={style.bearing} onSubmit={submit}>
        {FIELDS.map((name) => (
          <label key={name} className="field">
            <span className="label">{t(`record.${name}`)}</span>
            <input
              className="figure"
              inputMode="decimal"
              required={name === 'newPriceCents'}
              pattern={name.endsWith('Cents') ? moneyPattern(currencyDigits) : moneyPattern(2)}
              value={typed[name] ?? ''}
              onChange={(event) => setTyped({ ...typed, [name]: event.target.value })}
            />
          </label>
        ))}
        <button type="submit" className="press-quiet">
          {t('record.reckon')}
        </button>
      </form>
      {advice === null ? null : (
        <div className="tight" role="status">
          <p>
            <strong>{t(`record.verdict.${advice.verdict}`)}</strong>{' '}
            {t('record.hour', {
              keep: perHour(advice.keepCentsPerHour),
              low: perHour(advice.keepLowCentsPerHour),
              high: perHour(advice.keepHighCentsPerHour),
              replace: perHour(advice.replaceCentsPerHour),
            })}
          </p>
          <p>
            {t('record.break-even', {
              expected: perHour(advice.expectedRepairCentsNextYear),
              even: perHour(Math.max(0, advice.breakEvenRepairCentsNextYear)),
            })}
          </p>
        </div>
      )}
    </section>
  );
}
