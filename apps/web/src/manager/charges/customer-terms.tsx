import { queryOptions, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { api } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import type { ChargeSettings, CustomerCharges } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { BuyerFields } from './buyer-fields.js';
import { ChargeForm } from './charge-form.js';
import { LabourSettings } from './labour-settings.js';
import { MinimumSettings } from './minimum-settings.js';
import { PartsSettings } from './parts-settings.js';
import type { Settings } from './setting-fields.js';
import { settingsQuery } from './settings-query.js';
import { TaxSettings } from './tax-settings.js';
import { type Area, changesOf, formOf } from './terms-form.js';
import { TravelSettings } from './travel-settings.js';

const pathOf = (customerId: string) => `/v1/customers/${customerId}/charge-settings`;
const termsQuery = (customerId: string) =>
  queryOptions({
    queryKey: ['customer-charges', customerId],
    queryFn: ({ signal }) => api.get<CustomerCharges>(pathOf(customerId), signal),
  });

/** How this customer is charged where that is not as everybody is, and who pays. */
export function CustomerTerms({ customerId }: { readonly customerId: string }) {
  const { t } = useWords();
  const shop = useQuery(settingsQuery);
  const terms = useQuery(termsQuery(customerId));
  const error = shop.error ?? terms.error;
  return (
    <section className="stack">
      <h2>{t('terms.title')}</h2>
      <p className="pencil">{t('terms.what')}</p>
      <Failure error={error} />
      {shop.data && terms.data ? <TermsForm shop={shop.data} own={terms.data} /> : null}
    </section>
  );
}

function TermsForm({ shop, own }: { readonly shop: ChargeSettings; readonly own: CustomerCharges }) {
  const { t } = useWords();
  const client = useQueryClient();
  const start = formOf(shop, own.terms);
  const draft = useDraft(`customer-charges.${own.customerId}`, start);
  const { value, change } = draft;
  const { queryKey } = termsQuery(own.customerId);
  const save = useMutation({
    mutationFn: () => api.patch<CustomerCharges>(pathOf(own.customerId), changesOf(value, shop), own.version),
    onSuccess: (saved) => {
      draft.drop(formOf(shop, saved.terms));
      client.setQueryData(queryKey, saved);
    },
    onError: () => client.invalidateQueries({ queryKey }),
  });
  const areaOf = (area: Area, children: ReactNode) => (
    <div className="stack">
      <label className="check">
        <input
          type="checkbox"
          checked={value.differs[area]}
          onChange={(event) => change({ differs: { ...value.differs, [area]: event.target.checked } })}
        />
        <span>
          {t(`terms.own-${area}`)} <AsTheShop area={area} shop={shop} isShown={!value.differs[area]} />
        </span>
      </label>
      {value.differs[area] ? children : null}
    </div>
  );
  return (
    <ChargeForm
      draft={draft}
      save={save}
      saveWord="terms.save"
      savedWord="terms.saved"
      onLeave={() => draft.drop(start)}
    >
      <BuyerFields value={value.buyer} onChange={(buyer) => change({ buyer })} />
      {areaOf('labour', <LabourSettings value={value} change={change} />)}
      {areaOf('travel', <TravelSettings value={value} change={change} />)}
      {areaOf('parts', <PartsSettings value={value} change={change} />)}
      {areaOf('minimum', <MinimumSettings value={value} change={change} />)}
      {areaOf('taxes', <TaxSettings value={value} change={change} />)}
    </ChargeForm>
  );
}

interface AsTheShopProps {
  readonly area: Area;
  readonly shop: Settings;
  readonly isShown: boolean;
}

/** What holds as long as nothing else is agreed. */
function AsTheShop({ area, shop, isShown }: AsTheShopProps) {
  const { t, named, amount } = useWords();
  if (!isShown) return null;
  const shops: Readonly<Record<Area, string>> = {
    labour: t('terms.shop-labour', { rate: amount(shop.labour.ratePerHour) }),
    travel: named(`setting.travel.${shop.travel.rule}`, ''),
    parts: named(`setting.parts.${shop.parts.basis}`, ''),
    minimum: amount(shop.minimumCharge),
    taxes: t('terms.shop-taxes', { n: shop.taxes.length }),
  };
  return <span className="pencil">{t('terms.as-shop', { value: shops[area] })}</span>;
}
