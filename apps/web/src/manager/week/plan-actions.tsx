import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { api, queryOf } from '../../data/api.js';
import type { Week } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { FileButton } from '../../design/file-button.js';
import { useWords } from '../../words/words.js';
import type { PlanSearch } from './plan-search.js';
import { hindrancesOf } from './unmade-visits.js';
import style from './week.module.css';

const SECONDS = [10, 30, 120] as const;
const WEEKS = [1, 2, 3, 4] as const;

interface Props {
  readonly plan: PlanSearch;
  readonly week: Week | undefined;
  readonly comparing: boolean;
  readonly canCompare: boolean;
  readonly onCompare: (on: boolean) => void;
}

export function PlanActions({ plan, week, comparing, canCompare, onCompare }: Props) {
  const { t, number, language } = useWords();
  const client = useQueryClient();
  const [seconds, setSeconds] = useState<number>(SECONDS[0]);
  const [weeks, setWeeks] = useState<number>(WEEKS[0]);
  const start = useMutation({ mutationFn: () => plan.start(seconds, weeks) });
  const stop = useMutation({ mutationFn: () => plan.stop() });
  const promise = useMutation({
    mutationFn: () => api.post('/v1/week/confirm', { weekOf: week!.weekOf }),
    onSuccess: () => client.invalidateQueries(),
  });
  const unmade = week && hindrancesOf(week);
  const visits = week?.routes.flatMap((route) => route.visits) ?? [];
  const proposed = visits.filter((visit) => visit.state === 'proposed' && !unmade?.has(visit.id)).length;
  const planned = week !== undefined && week.planRunId !== null;
  const error = start.error ?? stop.error ?? promise.error;
  return (
    <div className={style.actions}>
      {plan.isRunning ? (
        <button
          type="button"
          className="press"
          onClick={() => stop.mutate()}
          disabled={plan.run?.cancelAsked || stop.isPending}
        >
          {t('week.stop')}
        </button>
      ) : (
        <>
          <button
            type="button"
            className={planned ? 'press-quiet' : 'press'}
            onClick={() => start.mutate()}
            disabled={start.isPending || !week}
          >
            {planned ? t('week.plan-again') : t('week.plan')}
          </button>
          <Choice
            label={<span className="unseen">{t('week.weeks')}</span>}
            {...{ of: WEEKS, value: weeks, onChange: setWeeks }}
            name={(n) => t('week.and-after', { n: n - 1 })}
          />
          <Choice
            label={t('week.search-for')}
            {...{ of: SECONDS, value: seconds, onChange: setSeconds }}
            name={(n) => t('seconds', { n })}
          />
          {proposed > 0 ? (
            <button type="button" className="press" onClick={() => promise.mutate()} disabled={promise.isPending}>
              {t('week.promise-all', { n: proposed, count: number(proposed) })}
            </button>
          ) : null}
          {week !== undefined && planned ? (
            <FileButton path={`/v1/week/load-lists.pdf${queryOf({ weekOf: week.weekOf, language })}`}>
              {t('print.load-lists')}
            </FileButton>
          ) : null}
          {canCompare ? (
            <button
              type="button"
              className="press-quiet"
              aria-pressed={comparing}
              onClick={() => onCompare(!comparing)}
            >
              {comparing ? t('week.compare-off') : t('week.compare')}
            </button>
          ) : null}
        </>
      )}
      <Failure error={error} />
    </div>
  );
}

/** One of a few numbers. */
function Choice({
  label,
  of,
  value,
  onChange,
  name,
}: {
  readonly label: ReactNode;
  readonly of: readonly number[];
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly name: (each: number) => string;
}) {
  return (
    <label className="small pencil">
      {label}{' '}
      <select className={style.choice} value={value} onChange={(event) => onChange(Number(event.target.value))}>
        {of.map((each) => (
          <option key={each} value={each}>
            {name(each)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** While the search runs: its cost, falling; afterwards how it ended, when it did not end well. */
export function PlanProgress({ plan, weekOf }: { readonly plan: PlanSearch; readonly weekOf: string }) {
  const { t, roundMoney, number, day } = useWords();
  const { run, costs, isRunning } = plan;
  if (run === null) return null;
  const isOfPage = run.weekOf === weekOf;
  if (run.status === 'failed')
    return (
      <p className="note clay">
        {isOfPage ? '' : `${t('week.of-week', { date: day(run.weekOf) })}: `}
        {t('week.failed', { why: run.error ?? '' })}
      </p>
    );
  if (!isRunning)
    return costs.length > 1 && isOfPage ? (
      <p className="pencil small">
        {t('week.found', {
          from: roundMoney(costs[0]!),
          to: roundMoney(costs.at(-1)!),
          iterations: number(run.progress?.iterations ?? 0),
        })}
      </p>
    ) : null;
  return (
    <div className={style.progress}>
      <FallingLine costs={costs} label={t('week.falling')} />
      <p className="small pencil" role="status">
        {isOfPage ? '' : `${t('week.of-week', { date: day(run.weekOf) })}: `}
        {run.cancelAsked
          ? t('week.stopping')
          : run.progress === null
            ? t(run.status === 'asked' ? 'week.waiting' : 'week.reading')
            : t('week.best', {
                cost: roundMoney(run.progress.totalCents),
                iterations: number(run.progress.iterations),
              })}
        {run.nextRunId === null || run.cancelAsked ? '' : ` ${t('week.then')}`}
      </p>
    </div>
  );
}

function FallingLine({ costs, label }: { readonly costs: readonly number[]; readonly label: string }) {
  const [width, height] = [220, 36];
  const [high, low] = [Math.max(...costs), Math.min(...costs)];
  const points = costs.map((cost, index) => {
    const x = costs.length === 1 ? 0 : (index / (costs.length - 1)) * width;
    return `${x.toFixed(1)},${(2 + (1 - (cost - low) / Math.max(1, high - low)) * (height - 4)).toFixed(1)}`;
  });
  return (
    <svg className={style.falling} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <polyline points={points.join(' ')} fill="none" stroke="var(--moss)" strokeWidth="2" />
    </svg>
  );
}
