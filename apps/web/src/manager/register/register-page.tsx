import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useState } from 'react';
import { shopQuery } from '../../data/queries.js';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import { type Field, fieldWord, KIND_NAMES, KINDS, type Kind, kindOf, type Row } from './kinds.js';
import style from './register.module.css';
import { shownValue } from './row-values.js';
import { useLabels } from './use-labels.js';

const FIRST = 50;
/** More of them do not stand side by side on a phone. */
const FEW_COLUMNS = 3;
const isNumber = ({ kind }: Field) => ['whole', 'decimal', 'money', 'hours'].includes(kind as string);

/** What the shop has on record: one kind at a time, with a search through everything shown. */
export function RegisterPage() {
  const { kind: asked } = useParams({ strict: false }) as { kind?: string };
  const name = kindOf(asked);
  const kind: Kind = KINDS[name];
  const words = useWords();
  const { t, number } = words;
  const { data, error } = useQuery(kind.query());
  const shop = useQuery(shopQuery).data;
  const labelOf = useLabels(kind);
  const [wanted, setWanted] = useState('');
  const [shown, setShown] = useState(FIRST);
  if (error) throw error;
  const columns = kind.fields.filter((field) => field.column);
  const text = (row: Row, field: Field) => {
    if (field.name === 'title') return words.work(row as never);
    if (field.name === 'description') return words.sentence(String(row[field.name]));
    return shownValue(field, row[field.name], words, labelOf);
  };
  const rows = ((data ?? []) as Row[]).filter((row) => {
    const needle = wanted.trim().toLowerCase();
    return needle === '' || columns.some((field) => text(row, field).toLowerCase().includes(needle));
  });
  return (
    <div className="stack">
      <title>{t('register.page')}</title>
      <nav className={style.kinds} aria-label={t('register.kinds')}>
        {KIND_NAMES.map((each) => (
          <Link
            key={each}
            to="/register/$kind"
            params={{ kind: each }}
            aria-current={each === name ? 'page' : undefined}
          >
            {t(`kind.${each}`)}
          </Link>
        ))}
        <Link to="/heard-from">{t('heard.link')}</Link>
        <Link to="/register/import">{t('register.import')}</Link>
        <Link to="/register/shop">{t('register.shop')}</Link>
        <Link to="/register/connections">{t('connect.title')}</Link>
      </nav>
      <h1>
        {t('register.sentence', {
          shop: shop?.name ?? '',
          n: data?.length ?? 0,
          kind: t(`kind.${name}`),
        })}
      </h1>
      <div className="row">
        <label className="field">
          <span className="label">{t('register.search')}</span>
          <input type="search" value={wanted} onChange={(event) => setWanted(event.target.value)} />
        </label>
        {kind.canCreate ? (
          <Link className="press" to="/register/$kind/$id" params={{ kind: name, id: 'new' }}>
            {t('register.new')}
          </Link>
        ) : null}
      </div>
      {rows.length === 0 && data ? (
        <p className="note">{t(wanted === '' ? 'register.none' : 'register.no-match')}</p>
      ) : null}
      {rows.length > 0 ? (
        <Scrolling label={t(`kind.${name}`)}>
          <table className={columns.length > FEW_COLUMNS ? 'stacked' : undefined}>
            <thead>
              <tr>
                {columns.map((field) => (
                  <th key={field.name} scope="col" className={isNumber(field) ? 'number' : undefined}>
                    {t(fieldWord(field.name))}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.slice(0, shown).map((row) => (
                <tr key={row.id}>
                  {columns.map((field, index) =>
                    index === 0 ? (
                      <th key={field.name} scope="row" data-whole>
                        <Link to="/register/$kind/$id" params={{ kind: name, id: row.id }}>
                          {text(row, field)}
                        </Link>
                      </th>
                    ) : (
                      <td
                        key={field.name}
                        className={isNumber(field) ? 'number' : undefined}
                        data-head={t(fieldWord(field.name))}
                        data-empty={text(row, field) === '–' ? true : undefined}
                      >
                        {text(row, field)}
                      </td>
                    ),
                  )}
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      ) : null}
      {rows.length > shown ? (
        <p>
          <button type="button" className="press-quiet" onClick={() => setShown(shown + 200)}>
            {t('left.more', { count: number(Math.min(200, rows.length - shown)) })}
          </button>
        </p>
      ) : null}
    </div>
  );
}
