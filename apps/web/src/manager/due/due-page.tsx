import { chanceDay, OVERDUE_FROM } from '@deckround/upkeep/chance-overdue';
import { useInfiniteQuery, useQuery, useSuspenseQuery } from '@tanstack/react-query';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useEffect, useMemo } from 'react';
import { dueListQuery, dueSummaryQuery, serviceItemsQuery, shopQuery, sitesQuery } from '../../data/queries.js';
import { Failure } from '../../design/failure.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './due.module.css';
import { DueRow } from './due-row.js';
import type { DueSearch } from './due-search.js';
import { Ruler } from './ruler.js';
import { toleranceDays } from './tolerance.js';

const WEEKS = [1, 2, 4, 8, 13] as const;
const DEFAULT_WEEKS = 4;
const MORE = 100;

/** What falls due in the next weeks: each with its range, its reason, and the cost of waiting. */
export function DuePage() {
  const shop = useSuspenseQuery(shopQuery).data;
  const search = useSearch({ from: '/inside/due' });
  const navigate = useNavigate();
  const words = useWords();
  const { t, number, roundMoney, day } = words;
  const { today } = shop;
  const asOf = shop.forecastAsOf ?? today;
  const until = addDays(today, 7 * (search.weeks ?? DEFAULT_WEEKS));
  const filter = {
    until,
    siteId: search.site,
    code: search.code,
    kind: search.kind,
    overdueAtLeast: search.overdue ? OVERDUE_FROM : undefined,
  };
  const due = useInfiniteQuery(dueListQuery(filter, search.group ? 'site' : (search.sort ?? 'cost'), MORE));
  const sums = useQuery(dueSummaryQuery(filter));
  const sites = useQuery(sitesQuery).data ?? [];
  const items = useQuery(serviceItemsQuery).data;
  const go = (next: DueSearch) => void navigate({ to: '/due', search: next, replace: true });
  const change = (part: { [K in keyof DueSearch]?: DueSearch[K] | undefined }) =>
    go(
      Object.fromEntries(
        Object.entries({ ...search, ...part }).filter(([, value]) => value !== undefined),
      ) as DueSearch,
    );

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'g' || event.ctrlKey || event.metaKey || event.altKey) return;
      if ((event.target as HTMLElement).closest('input, select, textarea')) return;
      change({ group: search.group ? undefined : true });
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });

  const tolerance = useMemo(() => toleranceDays(items ?? [], asOf), [items, asOf]);
  const codes = useMemo(() => new Map((items ?? []).map((item) => [item.code, item.title])), [items]);
  if (!due.data || !sums.data) {
    const failed = due.error ?? sums.error;
    if (failed) throw failed;
    return <h1>{t('wait')}</h1>;
  }
  const rows = due.data.pages.flatMap((page) => page.items);
  const costAt = new Map(sums.data.sites.map((site) => [site.siteId, site.deferralCents ?? 0]));
  const axis = { from: addDays(today, -14), to: addDays(until, 7), today };
  const groups = search.group ? [...Map.groupBy(rows, (row) => row.siteId)] : [['', rows] as const];
  return (
    <div className={style.page}>
      <title>{t('due.page')}</title>
      <header className="tight">
        <p className="pencil">{t('due.reckoned', { from: day(asOf), to: day(until) })}</p>
        <h1>
          {rows.length === 0
            ? t(shop.forecastAsOf === null ? 'due.no-forecast' : 'due.none')
            : t('due.sentence', {
                items: sums.data.items,
                machines: sums.data.machines,
                overdue: sums.data.overdue,
                day: day(chanceDay(rows[0]!, today)),
                money: roundMoney(sums.data.deferralCents ?? 0),
              })}
        </h1>
      </header>
      <form className={style.filters} onSubmit={(event) => event.preventDefault()}>
        <label className="field">
          <span className="label">{t('due.within')}</span>
          <select
            value={search.weeks ?? DEFAULT_WEEKS}
            onChange={(event) => change({ weeks: Number(event.target.value) })}
          >
            {WEEKS.map((weeks) => (
              <option key={weeks} value={weeks}>
                {t('due.weeks', { n: weeks })}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('due.site')}</span>
          <select value={search.site ?? ''} onChange={(event) => change({ site: event.target.value || undefined })}>
            <option value="">{t('due.all-sites')}</option>
            {sites.map((site) => (
              <option key={site.id} value={site.id}>
                {site.name}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('due.work')}</span>
          <select value={search.code ?? ''} onChange={(event) => change({ code: event.target.value || undefined })}>
            <option value="">{t('due.all-work')}</option>
            {[...codes].map(([code, title]) => (
              <option key={code} value={code}>
                {words.work({ code, title })}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="label">{t('due.kind')}</span>
          <select
            value={search.kind ?? ''}
            onChange={(event) => change({ kind: (event.target.value || undefined) as DueSearch['kind'] })}
          >
            <option value="">{t('due.kind-all')}</option>
            <option value="service">{t('due.kind-service')}</option>
            <option value="stopgap">{t('due.kind-stopgap')}</option>
          </select>
        </label>
        <label className="field">
          <span className="label">{t('due.order')}</span>
          <select
            value={search.sort ?? 'cost'}
            onChange={(event) => change({ sort: event.target.value === 'date' ? 'date' : undefined })}
          >
            <option value="cost">{t('due.by-cost')}</option>
            <option value="date">{t('due.by-date')}</option>
          </select>
        </label>
        <label className="check">
          <input
            type="checkbox"
            checked={search.overdue === true}
            onChange={(event) => change({ overdue: event.target.checked || undefined })}
          />
          {t('due.only-overdue')}
        </label>
        <label className="check">
          <input
            type="checkbox"
            checked={search.group === true}
            onChange={(event) => change({ group: event.target.checked || undefined })}
          />
          {t('due.group')} <kbd>G</kbd>
        </label>
      </form>
      {rows.length === 0 ? null : (
        <table className={style.table}>
          <thead>
            <tr>
              <th scope="col">{t('due.machine')}</th>
              <th scope="col">{t('due.work')}</th>
              <th scope="col" className={style.ruler}>
                <span className="unseen">{t('due.when')}</span>
                <Ruler axis={axis} />
              </th>
              <th scope="col" className="number">
                {t('due.price')}
              </th>
            </tr>
          </thead>
          {groups.map(([siteId, part]) => (
            <tbody key={siteId}>
              {search.group ? (
                <tr className={style.group}>
                  <th scope="rowgroup" colSpan={3}>
                    {part[0]?.siteName}
                  </th>
                  <td className="number">{roundMoney(costAt.get(siteId) ?? 0)}</td>
                </tr>
              ) : null}
              {part.map((item) => (
                <DueRow key={item.id} item={item} axis={axis} tolerance={tolerance(item)} hasSite={!search.group} />
              ))}
            </tbody>
          ))}
        </table>
      )}
      <Failure error={due.error ?? sums.error} />
      {due.hasNextPage ? (
        <p>
          <button
            type="button"
            className="press-quiet"
            disabled={due.isFetching}
            onClick={() => void due.fetchNextPage()}
          >
            {t('left.more', { count: number(Math.min(MORE, Math.max(1, sums.data.items - rows.length))) })}
          </button>
        </p>
      ) : null}
    </div>
  );
}
