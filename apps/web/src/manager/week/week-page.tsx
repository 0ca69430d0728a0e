import { useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { shopQuery, sitesQuery, techniciansQuery, weekQuery } from '../../data/queries.js';
import type { Week } from '../../data/types.js';
import { Why } from '../../design/why.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import { PlanActions, PlanProgress } from './plan-actions.js';
import { outlineOf, usePlanSearch, weekBefore } from './plan-search.js';
import style from './week.module.css';
import { WeekBoard } from './week-board.js';
import { weekFigures } from './week-figures.js';
import { type WeekSearch, weekShown } from './week-search.js';

/** The week: who drives where, when, doing what; what it costs; what waits. */
export function WeekPage() {
  const shop = useSuspenseQuery(shopQuery).data;
  const search = useSearch({ from: '/inside/week' });
  const weekOf = search.of ?? weekShown(shop);
  const week = useQuery(weekQuery(weekOf));
  // The sentence stands there before the strips under it are drawn.
  const first = useDeferredValue(week.data, undefined);
  const drawn = first?.weekOf === weekOf ? week.data : first;
  const sites = useQuery(sitesQuery).data;
  const technicians = useQuery(techniciansQuery).data;
  const navigate = useNavigate();
  const go = (next: WeekSearch) => void navigate({ to: '/week', search: next, replace: true });
  const { t, day, sentence } = useWords();
  const plan = usePlanSearch(weekOf, shop, () => {
    if (week.data) weekBefore(weekOf).write(outlineOf(week.data));
  });
  const isSearching = plan.isRunning && plan.run?.weekOf === weekOf;
  const before = weekBefore(weekOf).read();
  const choose = (visit: string | undefined) => go(visit === undefined ? withoutVisit(search) : { ...search, visit });
  if (week.error) throw week.error;

  return (
    <div className={style.page}>
      <title>{t('week.page', { day: day(weekOf) })}</title>
      <header className={style.answer}>
        <div className={style.which}>
          <Link to="/week" search={{ of: addDays(weekOf, -7) }} aria-label={t('week.earlier')} className="press-plain">
            ←
          </Link>
          <span>{t('week.of', { from: day(weekOf), to: day(addDays(weekOf, 6)) })}</span>
          <Link to="/week" search={{ of: addDays(weekOf, 7) }} aria-label={t('week.later')} className="press-plain">
            →
          </Link>
        </div>
        {week.data ? (
          <Sentence week={week.data} running={isSearching ? (plan.run?.progress ?? null) : null} />
        ) : (
          <h1>{t('wait')}</h1>
        )}
        {week.data ? <PlannedAsOne week={week.data} /> : null}
        <PlanActions
          plan={plan}
          week={week.data}
          comparing={search.compare === true}
          canCompare={before !== null}
          onCompare={(on) => {
            const { compare: _, ...rest } = search;
            go(on ? { ...rest, compare: true } : rest);
          }}
        />
        <PlanProgress plan={plan} weekOf={weekOf} />
        {week.data?.warning && !isSearching ? <p className="note straw">{sentence(week.data.warning)}</p> : null}
      </header>
      {drawn && sites && technicians ? (
        <WeekBoard
          week={drawn}
          sites={sites}
          technicians={technicians}
          chosen={search.visit}
          onChoose={choose}
          before={search.compare ? before : null}
        />
      ) : null}
    </div>
  );
}

function withoutVisit({ visit: _, ...rest }: WeekSearch): WeekSearch {
  return rest;
}

/** The week in one sentence; while a search runs, the sentence of the best plan so far. */
function Sentence({
  week,
  running,
}: {
  readonly week: Week;
  readonly running: NonNullable<ReturnType<typeof usePlanSearch>['run']>['progress'];
}) {
  const { t, minutes, roundMoney } = useWords();
  const [open, setOpen] = useState(false);
  if (running !== null)
    return (
      <h1 aria-live="off">
        {t('week.searching', {
          visits: running.visits,
          items: running.items,
          left: running.leftOut,
          cost: roundMoney(running.totalCents),
        })}
      </h1>
    );
  if (week.routes.every((route) => route.visits.length === 0))
    return <h1>{week.planRunId === null ? t('week.empty') : t('week.without', { left: week.leftOutCount })}</h1>;
  const { visits, machines, driveMinutes, avoidedCents } = weekFigures(week);
  return (
    <h1>
      {t('week.sentence', { visits, machines, driving: minutes(driveMinutes), left: week.leftOutCount })}{' '}
      <Why
        label={t('week.avoided', { money: roundMoney(avoidedCents) })}
        title={t('week.why-avoided-title')}
        open={open}
        onOpen={setOpen}
      >
        <p>{t('week.why-avoided', { money: roundMoney(avoidedCents) })}</p>
        {week.cost === null ? null : (
          <>
            <CostTable cost={week.cost} />
            <p className="small pencil">{t('week.cost-of-plan')}</p>
          </>
        )}
      </Why>
    </h1>
  );
}

/** More days than these were planned at once: figures of the plan are of all of them. */
function PlannedAsOne({ week: { planned, weekOf, days } }: { readonly week: Week }) {
  const { t, day } = useWords();
  if (planned === null || (planned.weekOf === weekOf && planned.days <= days)) return null;
  return <p className="small pencil">{t('week.planned-as-one', { n: planned.days, date: day(planned.weekOf) })}</p>;
}

const COST_PARTS = [
  'travel',
  'labour',
  'overtime',
  'visitFees',
  'preference',
  'timing',
  'deferral',
  'laterLabour',
  'disruption',
] as const;

function CostTable({ cost }: { readonly cost: Readonly<Record<string, number>> }) {
  const { t, money } = useWords();
  return (
    <table>
      <caption className="unseen">{t('week.cost')}</caption>
      <tbody>
        {COST_PARTS.filter((part) => (cost[part] ?? 0) !== 0).map((part) => (
          <tr key={part}>
            <th scope="row">{t(`cost.${part}`)}</th>
            <td className="number">{money(cost[part]!)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">{t('cost.total')}</th>
          <td className="number">{money(cost.total ?? 0)}</td>
        </tr>
      </tbody>
    </table>
  );
}
