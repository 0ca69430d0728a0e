import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { Machine, Site, Week } from '../../data/types.js';
import { Scrolling } from '../../design/scrolling.js';
import { Why } from '../../design/why.js';
import { said } from '../../words/said.js';
import { useWords } from '../../words/words.js';
import style from './week.module.css';

const FIRST = 12;
const MORE = 100;

interface Props {
  readonly week: Week;
  readonly machines: readonly Machine[];
  readonly sites: readonly Site[];
}

/** What was left for later, dearest first, each with the price of waiting and the nearest obstacle. */
export function LeftOut({ week, machines, sites }: Props) {
  const words = useWords();
  const { t, money, roundMoney, number } = words;
  const [shown, setShown] = useState(FIRST);
  if (week.leftOut.length === 0) return null;
  const rows = week.leftOut.toSorted((a, b) => Number(b.mustDo) - Number(a.mustDo) || b.cents - a.cents);
  const total = rows.reduce((sum, row) => sum + row.cents, 0);
  const machineOf = new Map(machines.map((machine) => [machine.id, machine]));
  const siteOf = new Map(sites.map((site) => [site.id, site.name]));
  return (
    <section className={style.left} aria-labelledby="left-out">
      <h2 id="left-out">{t('left.title', { n: rows.length, count: number(rows.length), money: roundMoney(total) })}</h2>
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
            {rows.slice(0, shown).map((row) => {
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
      {shown < rows.length ? (
        <p>
          <button type="button" className="press-quiet" onClick={() => setShown(shown + MORE)}>
            {t('left.more', { count: number(Math.min(MORE, rows.length - shown)) })}
          </button>
        </p>
      ) : null}
    </section>
  );
}

/** What would have to give way, mildest first. */
function Remedies({ row }: { readonly row: Week['leftOut'][number] }) {
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

type LeftCode = 'skill' | 'part' | 'access' | 'time' | 'cheaper-later';
