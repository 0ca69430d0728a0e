import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import { useShop } from '../../app/shop-words.js';
import { CalendarAddresses } from '../../calendar/calendar-addresses.js';
import { SiteContacts } from '../../contacts/site-contacts.js';
import { useWords } from '../../words/words.js';
import { CustomerTerms } from '../charges/customer-terms.js';
import { OrderDeliveries } from '../orders/order-deliveries.js';
import { KINDS, type Kind, kindOf, type Row } from './kinds.js';
import { LabelOfMachine, SiteLabels } from './labels.js';
import { MachineSlots } from './machine-slots.js';
import { RecordForm } from './record-form.js';
import { shownValue } from './row-values.js';
import { useLabels } from './use-labels.js';

/** One row of the register, to read and change, or a new one. */
export function RecordPage() {
  const { kind: asked, id } = useParams({ strict: false }) as { kind: string; id: string };
  const name = kindOf(asked);
  const kind: Kind = KINDS[name];
  const words = useWords();
  const { t } = words;
  const { data, error } = useQuery(kind.query());
  const labelOf = useLabels(kind);
  if (error) throw error;
  const isNew = id === 'new';
  const row = ((data ?? []) as Row[]).find((each) => each.id === id);
  // How amounts are typed is the shop's currency to say.
  const shop = useShop();
  if (!data || !shop) return <h1>{t('wait')}</h1>;
  const back = (
    <p>
      <Link to="/register/$kind" params={{ kind: name }}>
        ← {t(`kind.${name}`)}
      </Link>
    </p>
  );
  if (isNew ? !kind.canCreate : !row)
    return (
      <div className="stack">
        {back}
        <h1>{t('not-found.title')}</h1>
      </div>
    );
  const title = row?.['title'] === undefined ? undefined : words.work(row as never);
  const description = row?.['description'] === undefined ? undefined : words.sentence(String(row['description']));
  // What has no name of its own goes by what the list shows first: an order by its part, an absence by who is away.
  const first = kind.fields.find((field) => field.column)!;
  const heading = row
    ? String(row['name'] ?? title ?? description ?? row['code'] ?? shownValue(first, row[first.name], words, labelOf))
    : t(`register.new-of.${name}`);
  return (
    <div className="stack" style={{ maxWidth: '56rem' }}>
      <title>{t('register.page')}</title>
      {back}
      <h1>{heading}</h1>
      {name === 'machines' && row ? (
        <p>
          <Link to="/machines/$id/forecast" params={{ id }}>
            {t('register.forecast')}
          </Link>
        </p>
      ) : null}
      <RecordForm key={`${id} ${whatCame(row)}`} name={name} kind={kind} row={row ?? null} />
      {name === 'machines' && row ? (
        <>
          <MachineSlots machineId={id} />
          <LabelOfMachine machineId={id} siteId={String(row['siteId'])} />
        </>
      ) : null}
      {name === 'sites' && row ? (
        <>
          <SiteLabels siteId={id} />
          <CalendarAddresses of={{ siteId: id }} />
          <SiteContacts siteId={id} />
        </>
      ) : null}
      {name === 'part-orders' && row ? <OrderDeliveries order={row as never} today={shop.today} /> : null}
      {name === 'customers' && row ? <CustomerTerms key={id} customerId={id} /> : null}
      {name === 'technicians' && row ? <CalendarAddresses of={{ technicianId: id }} /> : null}
    </div>
  );
}

/** An order is received beside its form, which then begins anew: it would hold the order to what it was before. */
const whatCame = (row: Row | undefined) => [row?.['receivedQuantity'], row?.['cancelledOn']].join(' ');
