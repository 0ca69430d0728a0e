import { isByTheHour, minutesOf } from '@deckround/billing/charged-time';
import { queryOptions, useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { api } from '../../data/api.js';
import type { ChargeDocument } from '../../data/types.js';
import { FileButton } from '../../design/file-button.js';
import { Scrolling } from '../../design/scrolling.js';
import { useWords } from '../../words/words.js';
import { Trail } from '../trail/trail.js';
import { documentName } from './charges-page.js';
import { DraftActions } from './draft-actions.js';
import { IssuedActions } from './issued-actions.js';
import { SinceIssue } from './since-issue.js';

const documentQuery = (id: string) =>
  queryOptions({
    queryKey: ['charge-documents', id],
    queryFn: ({ signal }) => api.get<ChargeDocument>(`/v1/charge-documents/${id}`, signal),
  });

/** One document: its lines, taxes and total, and what can still be done with it. */
export function DocumentPage() {
  const { id } = useParams({ from: '/inside/charges/$id' });
  const words = useWords();
  const { t, dayOfYear } = words;
  const { data: row, error } = useQuery(documentQuery(id));
  if (error) throw error;
  if (!row) return <h1>{t('wait')}</h1>;
  const { document, accounting } = row;
  const facts = [
    [t('charges.serviced'), dayOfYear(document.servicedOn)],
    [t('charges.issued-on'), document.issuedOn && dayOfYear(document.issuedOn)],
    [t('charges.due-on'), document.dueOn && dayOfYear(document.dueOn)],
    [t('field.customerId'), document.buyer.legalName],
    [t('charges.order'), document.purchaseOrder],
    [t(document.kind === 'credit' ? 'charges.takes-back' : 'charges.replaces'), document.refersTo?.number],
    [t('charges.accounting'), accounting && words.named(`accounting.${accounting.state}`, accounting.state)],
    [t('charges.receiver-number'), accounting?.receiverNumber],
    [t('charges.refused'), accounting?.refusedReason],
    [t('charges.paid-on'), accounting?.paidOn && dayOfYear(accounting.paidOn)],
  ].filter((fact): fact is [string, string] => Boolean(fact[1]));
  return (
    <div className="stack" style={{ maxWidth: '60rem' }} key={id}>
      <title>{t('charges.page')}</title>
      <p>
        <Link to="/charges" search={row.state === 'issued' ? { state: 'issued' } : {}}>
          ← {t('nav.charges')}
        </Link>
      </p>
      <h1>
        {t('charges.sentence', {
          document: documentName(row, words),
          site: document.site.name,
          money: `${document.totals.payable} ${document.currency}`,
        })}
      </h1>
      {row.creditedById ? (
        <p className="note straw">
          {t('charges.was-credited')}{' '}
          <Link to="/charges/$id" params={{ id: row.creditedById }}>
            {t('charges.see-credit')}
          </Link>
        </p>
      ) : null}
      {row.state === 'issued' && row.document.kind === 'invoice' && !row.creditedById ? <SinceIssue id={id} /> : null}
      <dl className="row">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt className="small pencil">{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <Lines document={document} />
      {document.note ? <p className="note">{document.note}</p> : null}
      <div className="row">
        <FileButton path={`/v1/charge-documents/${id}/pdf`}>{t('charges.pdf')}</FileButton>
        {row.state === 'issued' ? (
          <FileButton path={`/v1/charge-documents/${id}/ubl`}>{t('charges.ubl')}</FileButton>
        ) : null}
      </div>
      {row.state === 'draft' ? <DraftActions key={row.version} row={row} /> : <IssuedActions row={row} />}
      <Trail of={{ subjectId: id }} />
    </div>
  );
}

function Lines({ document }: Pick<ChargeDocument, 'document'>) {
  const { t, named, minutes } = useWords();
  const { lines, charges, taxes, totals, currency } = document;
  // UN/ECE Recommendation 20: what has no short name here goes by its code.
  const unit = (code: string) => named(`unit.${code}`, code).trim();
  const quantity = (line: (typeof lines)[number]) => {
    const time = minutesOf(line);
    return time === null ? `${line.quantity} ${unit(line.unitCode)}` : minutes(time);
  };
  const price = (line: (typeof lines)[number]) => {
    if (isByTheHour(line)) return t('charges.price-an-hour', { price: line.unitPrice });
    if (line.priceBase === '1') return line.unitPrice;
    return t('charges.price-per', { price: line.unitPrice, base: line.priceBase, unit: unit(line.unitCode) });
  };
  return (
    <Scrolling label={t('charges.lines')}>
      <table>
        <thead>
          <tr>
            <th scope="col">{t('charges.what')}</th>
            <th scope="col" className="number">
              {t('field.quantity')}
            </th>
            <th scope="col" className="number">
              {t('charges.price')}
            </th>
            <th scope="col" className="number">
              {currency}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.id}>
              <td>
                {line.name}{' '}
                <span className="pencil">
                  {[line.machine?.code, line.coverage && t(`charges.coverage.${line.coverage.kind}`)]
                    .filter(Boolean)
                    .join(', ')}
                </span>
              </td>
              <td className="number">{quantity(line)}</td>
              <td className="number">{price(line)}</td>
              <td className="number">{line.net}</td>
            </tr>
          ))}
          {charges.map((charge) => (
            <tr key={charge.reason}>
              <td colSpan={3}>{charge.reason}</td>
              <td className="number">{charge.amount}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={3}>
              {t('charges.before-tax')}
            </th>
            <td className="number">{totals.beforeTax}</td>
          </tr>
          {taxes.map((tax) => (
            <tr key={`${tax.category}${tax.rate?.jurisdiction}${tax.rate?.percent}`}>
              <th scope="row" colSpan={3}>
                {tax.rate
                  ? t('charges.tax', {
                      jurisdiction: tax.rate.jurisdiction,
                      percent: tax.rate.percent,
                      base: tax.base,
                    })
                  : t('charges.untaxed', { base: tax.base, reason: tax.reason || 'none' })}
              </th>
              <td className="number">{tax.tax}</td>
            </tr>
          ))}
          <tr>
            <th scope="row" colSpan={3}>
              <strong>{t('charges.total')}</strong>
            </th>
            <td className="number">
              <strong>{totals.payable}</strong>
            </td>
          </tr>
        </tfoot>
      </table>
    </Scrolling>
  );
}
