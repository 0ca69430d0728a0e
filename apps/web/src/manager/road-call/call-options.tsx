import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { describeFailure } from '../../app/failed.js';
import { api } from '../../data/api.js';
import type { RoadCall, RoadCallOptions } from '../../data/types.js';
import { addDays, weekdayOf } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { ChangeList } from './change-list.js';
import { CloseCall } from './close-call.js';
import style from './road-call.module.css';

/** A working week. */
const DAYS_AHEAD = 5;

interface Props {
  readonly call: RoadCall;
  readonly name: string;
  readonly today: string;
}

/** The best of each way to fit a call into the planned days, dearest last; one press chooses. */
export function CallOptions({ call, name, today }: Props) {
  const words = useWords();
  const { t, money, day, range, number } = words;
  const client = useQueryClient();
  const options = useQuery({
    queryKey: ['road-call-options', call.id],
    queryFn: () => api.post<RoadCallOptions>(`/v1/road-calls/${call.id}/options`, { daysAhead: DAYS_AHEAD }),
    enabled: call.state === 'open',
    staleTime: 30_000,
  });
  const choose = useMutation({
    mutationFn: (kind: string) =>
      api.post<RoadCall>(`/v1/road-calls/${call.id}/choose`, { kind, stamp: options.data!.stamp }),
    // The ways of a call that is planned are asked for no more; of one that could not be planned, anew.
    onSettled: (_call, failure) =>
      client.invalidateQueries({
        predicate: ({ queryKey }) => failure !== null || queryKey[0] !== 'road-call-options',
      }),
  });
  const error = options.error ?? choose.error;
  const sorted = options.data?.options.toSorted((a, b) => a.difference.cents.total - b.difference.cents.total) ?? [];
  // The way that was chosen stays in sight, with whom it concerns, from the moment that the call is planned: the call is
  // read again before choosing counts as done.
  const taken = choose.isError ? undefined : sorted.find((option) => option.kind === choose.variables);
  return (
    <div className="stack">
      <h2>{name}</h2>
      <p>{call.symptom}</p>
      {call.state !== 'open' ? (
        <div className="note" role="status">
          <p>
            {t(call.state === 'closed' ? 'call.closed' : 'call.planned')} <Link to="/week">{t('nav.week')}</Link>
          </p>
          {taken ? <ChangeList visits={taken.difference.visits} /> : null}
        </div>
      ) : null}
      {options.isPending && call.state === 'open' ? <p role="status">{t('call.looking')}</p> : null}
      {error ? (
        <div className="note clay" role="alert">
          <p>{describeFailure(error, words)}</p>
          <div className="row">
            <Link className="press-quiet" to="/week" search={{ of: addDays(today, 1 - weekdayOf(today)) }}>
              {t('call.plan-week')}
            </Link>
            <button type="button" className="press-plain" onClick={() => void options.refetch()}>
              {t('failed.again')}
            </button>
          </div>
        </div>
      ) : null}
      {call.state === 'open' && options.data ? <LookedAt days={options.data.lookedAt} today={today} /> : null}
      {call.state === 'open' && options.data?.lookedAt && sorted.length === 0 ? (
        <p className="note straw">{t('call.no-way')}</p>
      ) : null}
      {call.state === 'open'
        ? sorted.map((option) => {
            const { visits } = option.difference;
            // The visit with the call stands nowhere yet: it is new, or nobody could make it where it stood.
            const others = visits.filter((visit) => visit.from !== null);
            const broken = visits.filter((visit) => visit.breaksPromise);
            const cents = option.difference.cents.total;
            return (
              <article key={option.kind} className={style.option}>
                <h3>{t(`call.kind.${option.kind}`)}</h3>
                <p className={style.sentence}>
                  {t('call.option', {
                    technician: option.technicianName,
                    day: day(option.date),
                    slot: range(option.startAt, option.endAt),
                    n: others.length,
                    broken: broken.length,
                  })}{' '}
                  {cents >= 0 ? t('move.costs', { money: money(cents) }) : t('move.saves', { money: money(-cents) })}
                </p>
                <ChangeList visits={visits} />
                {option.difference.leftOut.length > 0 ? (
                  <p className="small">{t('call.left-out', { n: option.difference.leftOut.length })}</p>
                ) : null}
                <p>
                  <button
                    type="button"
                    className="press"
                    disabled={choose.isPending}
                    onClick={() => choose.mutate(option.kind)}
                  >
                    {t('call.take-this')}
                  </button>
                </p>
              </article>
            );
          })
        : null}
      {options.data && options.data.likelyParts.length > 0 ? (
        <section className="tight">
          <h3>{t('call.parts')}</h3>
          <ul>
            {options.data.likelyParts.map((part) => (
              <li key={part.partId}>
                {words.sentence(part.name)}:{' '}
                {t('call.part', { n: number(part.quantity, 2), onHand: number(part.onHand, 2) })}
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      {options.data && options.data.cautions.length > 0 ? (
        <section className="note straw">
          <h3>△ {t('call.cautions')}</h3>
          <ul>
            {options.data.cautions.map((caution) => (
              <li key={caution}>{words.sentence(caution)}</li>
            ))}
          </ul>
        </section>
      ) : null}
      {call.state === 'open' ? <CloseCall call={call} /> : null}
      <p className="small pencil">{t('safety')}</p>
    </div>
  );
}

/** Which days the ways were looked for on: the call may come on a day that no plan covers, or when the week is over. */
function LookedAt({ days, today }: { readonly days: RoadCallOptions['lookedAt']; readonly today: string }) {
  const { t, day } = useWords();
  if (days !== null)
    return <p className="small pencil">{t('call.looked-at', { from: day(days.from), until: day(days.until) })}</p>;
  return (
    <div className="note straw stack">
      <p>{t('call.week-over')}</p>
      <Link className="press-quiet" to="/week" search={{ of: addDays(today, 8 - weekdayOf(today)) }}>
        {t('call.plan-next')}
      </Link>
    </div>
  );
}
