import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { everyPage, queryOf } from '../../data/api.js';
import { customersQuery } from '../../data/queries.js';
import type { ChargeDocument } from '../../data/types.js';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import type { ChargesSearch } from './charges-search.js';

export const chargeDocumentsQuery = (state: 'draft' | 'issued') =>
  queryOptions({
    queryKey: ['charge-documents', state],
    queryFn: ({ signal }) => everyPage<ChargeDocument>(`/v1/charge-documents${queryOf({ state })}`, signal),
  });

/** What finished visits cost: drafts that wait to be issued, or what was issued and what accounting says of it. */
export function ChargesPage() {
  const { state = 'draft' } = useSearch({ from: '/inside/charges' });
  const navigate = useNavigate();
  const words = useWords();
  const { t, money, dayOfYear, named } = words;
  const { data, error } = useQuery(chargeDocumentsQuery(state));
  const customers = useQuery(customersQuery).data ?? [];
  if (error) throw error;
  if (!data) return <h1>{t('wait')}</h1>;
  const total = data.reduce(
    (sum, { totalCents, document }) => sum + (document.kind === 'credit' ? -1 : 1) * totalCents,
    0,
  );
  const rows = data.toReversed();
  const go = (next: ChargesSearch) => void navigate({ to: '/charges', search: next });
  return (
    <div className="stack">
      <title>{t('charges.page')}</title>
      <h1>{t(state === 'draft' ? 'charges.drafts' : 'charges.issued', { n: data.length, money: money(total) })}</h1>
      <div className="row">
        <label className="small pencil">
          {t('charges.shown')}{' '}
          <select
            className="input"
            style={{ width: 'auto' }}
            value={state}
            onChange={(event) => go(event.target.value === 'issued' ? { state: 'issued' } : {})}
          >
            <option value="draft">{t('charges.state.draft')}</option>
            <option value="issued">{t('charges.state.issued')}</option>
          </select>
        </label>
        <Link to="/charges/settings">{t('charges.settings')}</Link>
      </div>
      {rows.length > 0 ? (
        <Scrolling label={t('nav.charges')}>
          <table className="stacked">
            <thead>
              <tr>
                <th scope="col">{t('charges.document')}</th>
                <th scope="col">{t('charges.serviced')}</th>
                <th scope="col">{t('field.customerId')}</th>
                <th scope="col">{t('due.site')}</th>
                <th scope="col" className="number">
                  {t('charges.total')}
                </th>
                <th scope="col">{t('charges.accounting')}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.id}>
                  <th scope="row" data-whole>
                    <Link to="/charges/$id" params={{ id: row.id }}>
                      {documentName(row, words)}
                    </Link>
                  </th>
                  <td>{dayOfYear(row.document.servicedOn)}</td>
                  <td>{customers.find((customer) => customer.id === row.customerId)?.name}</td>
                  <td>{row.document.site.name}</td>
                  <td className="number" data-head={t('charges.total')}>
                    {money(row.totalCents)}
                  </td>
                  <td>
                    {row.accounting ? named(`accounting.${row.accounting.state}`, row.accounting.state) : ''}
                    {row.creditedById ? ` ${t('charges.credited')}` : ''}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scrolling>
      ) : null}
    </div>
  );
}

/** The document as people call it. */
export function documentName({ document }: ChargeDocument, { t }: Pick<ReturnType<typeof useWords>, 't'>): string {
  if (document.number === null) return t('charges.draft');
  return t(document.kind === 'credit' ? 'charges.credit-number' : 'charges.invoice-number', {
    number: document.number,
  });
}
