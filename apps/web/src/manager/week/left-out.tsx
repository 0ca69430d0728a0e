import { infiniteQueryOptions, useInfiniteQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { api, queryOf } from '../../data/api.js';
import { weekQuery } from '../../data/queries.js';
import type { LeftOutItem, Machine, Page, Site, Week } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { Scrolling } from '../../design/scrolling.js';
import { Why } from '../../design/why.js';
import { said } from '../../words/said.js';
import { useWords } from '../../words/words.js';
import style from './week.module.css';

const MORE = 100;

/** What the week does not tell of by itself, a hundred at a time. */
const restQuery = ({ weekOf, leftOutNext }: Week) =>
  infiniteQueryOptions({
    queryKey: [...weekQuery(weekOf).queryKey, 'left-out', leftOutNext],
    queryFn: ({ pageParam: cursor, signal }) =>
      api.get<Page<LeftOutItem>>(`/v1/week/left-out${queryOf({ weekOf, cursor, limit: MORE })}`, signal),
    initialPageParam: leftOutNext,
    getNextPageParam: (page) => page.next,
  });

interface Props {
  readonly week: Week;
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
}

/** What was left for later, dearest first, each with the price of waiting and the nearest obstacle. */
export function LeftOut({ week, machines, sites }: Props) {
  const words = useWords();
  const { t, money, roundMoney, number } = words;
  const [asked, setAsked] = useState(false);
  const rest = useInfiniteQuery({ ...restQuery(week), enabled: asked && week.leftOutNext !== null });
  if (week.leftOutCount === 0) return null;
  const rows = [...week.leftOut, ...(rest.data?.pages.flatMap((page) => page.items) ?? [])];
  const waiting = week.leftOutCount - rows.length;
  const machineOf = new Map(machines.map((machine) => [machine.id, machine]));
  const siteOf = new Map(sites.map((site) => [site.id, site.name]));
  return (
    <section className={style.left} aria-labelledby="left-out">
      <h2 id="left-out">
        {t('left.title', {
          n: week.leftOutCount,
          count: number(week.leftOutCount),
          money: roundMoney(week.leftOutCents),
        })}
      </h2>
      <Scrolling label={t('left.short')}>
        <table>
          <thead>
            <tr>
              <th scope="col">{t('left.what')}</th>
              <th scope="col">{t('left.machine')}</th>
              <th scope="col">{t('left.site')}</th>
              <th scope="col">{t('left.why')}</th>
              <th scope="col" className="number">
                {t('left.price')}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => {
              const machine = machineOf.get(row.machineId ?? '');
              return (
                <tr key={row.itemId}>
                  <td>
                    {words.work(namedBy(row))}
                    {row.mustDo ? <strong className={style.must}> {t('left.must')}</strong> : null}
                  </td>
                  <td>
                    {machine ? (
                      <Link to="/machines/$id/forecast" params={{ id: machine.id }}>
                        {machine.code}
                      </Link>
                    ) : null}
                  </td>
                  <td>{siteOf.get(machine?.siteId ?? '')}</td>
                  <td>
                    <Why label={t(`left.code.${row.code as LeftCode}`)} title={words.work(namedBy(row))}>
                      <p>
                        {row.obstacle
                          ? `${said(row.obstacle, row.reason, words)} ${t('left.leaving', { money: money(row.cents) })}`
                          : t(`left.long.${row.code as LeftCode}`, { money: money(row.cents) })}
                      </p>
                    </Why>
                    <Remedies row={row} />
                  </td>
                  <td className="number">{money(row.cents)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scrolling>
      <Failure error={rest.error} />
      {waiting > 0 ? (
        <p>
          <button
            type="button"
            className="press-quiet"
            disabled={rest.isFetching}
            onClick={() => (asked ? void rest.fetchNextPage() : setAsked(true))}
          >
            {t('left.more', { count: number(Math.min(MORE, waiting)) })}
          </button>
        </p>
      ) : null}
    </section>
  );
}

/** What would have to give way, mildest first. */
function Remedies({ row }: { readonly row: LeftOutItem }) {
  const words = useWords();
  const { t } = words;
  const remedies = row.remedies ?? [];
  if (remedies.length === 0) return null;
  const worded = remedies.map((remedy, index) => {
    const [first, second] = (row.remedyRules?.[index] ?? []).map((rule) => said(rule, remedy, words, 'fix'));
    if (first === undefined) return remedy;
    return second === undefined ? first : t('left.both', { first, second });
  });
  return (
    <div className="small">
      {t('left.remedies')}
      <ul>
        {worded.map((remedy) => (
          <li key={remedy}>{remedy}</li>
        ))}
      </ul>
    </div>
  );
}

/** The planner names an item by machine, kind of work and slot. */
function namedBy({ itemId, title }: { readonly itemId: string; readonly title: string }) {
  const [, code = '', slot] = itemId.split('/');
  return { code, title, slot: slot ?? null };
}

type LeftCode = 'skill' | 'part' | 'access' | 'time' | 'cheaper-later' | 'given-up';
