import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { api } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import type { ChargeSettings } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';
import { LabourSettings } from './labour-settings.js';
import { PartsSettings } from './parts-settings.js';
import { Amount, type Change, Choice, firstFault, Group, type Settings, Text } from './setting-fields.js';
import { settingsQuery } from './settings-query.js';
import { TaxSettings } from './tax-settings.js';
import { TravelSettings } from './travel-settings.js';

/** How finished visits become money: who charges, rates, travel, parts, taxes, accounts. */
export function ChargeSettingsPage() {
  const settings = useSuspenseQuery(settingsQuery).data;
  const { version, ...start } = settings;
  const { t } = useWords();
  const client = useQueryClient();
  const draft = useDraft('charge-settings', start);
  const { value } = draft;
  const save = useMutation({
    mutationFn: () => api.patch<ChargeSettings>('/v1/charge-settings', value, version),
    onSuccess: (saved) => {
      const { version: _, ...rest } = saved;
      draft.drop(rest);
      client.setQueryData(settingsQuery.queryKey, saved);
    },
    onError: () => client.invalidateQueries({ queryKey: settingsQuery.queryKey }),
  });
  const change: Change = (part) => draft.change(part);
  return (
    <form
      className="stack"
      style={{ maxWidth: '56rem' }}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (firstFault(event.currentTarget) === null) save.mutate();
      }}
    >
      <title>{t('charges.page')}</title>
      <p>
        <Link to="/charges" search={{}}>
          ← {t('nav.charges')}
        </Link>
      </p>
      <h1>{t('charges.settings-title')}</h1>
      {draft.wasFound && draft.touched ? <p className="note">{t('draft.found')}</p> : null}
      <Seller value={value} change={change} />
      <LabourSettings value={value} change={change} />
      <Group title={t('line.minimum')}>
        <Amount
          word="setting.minimumCharge"
          value={value.minimumCharge}
          onChange={(minimumCharge) => change({ minimumCharge })}
        />
      </Group>
      <TravelSettings value={value} change={change} />
      <PartsSettings value={value} change={change} />
      <TaxSettings value={value} change={change} />
      <Accounts value={value} change={change} />
      <label className="check">
        <input
          type="checkbox"
          checked={value.supervisorsSeeDocuments}
          onChange={(event) => change({ supervisorsSeeDocuments: event.target.checked })}
        />
        {t('setting.supervisorsSeeDocuments')}
      </label>
      <Failure error={save.error} />
      {save.isSuccess ? <p role="status">{t('register.saved')}</p> : null}
      <div className="row">
        <button type="submit" className="press" disabled={save.isPending || !draft.touched}>
          {t('save')}
        </button>
        {draft.touched ? (
          <button type="button" className="press-plain" onClick={() => draft.drop(start)}>
            {t('draft.drop')}
          </button>
        ) : null}
      </div>
    </form>
  );
}

interface Part {
  readonly value: Settings;
  readonly change: Change;
}

function Seller({ value, change }: Part) {
  const { t } = useWords();
  const { seller } = value;
  const { address } = seller;
  const put = (part: Partial<Settings['seller']>) => change({ seller: { ...seller, ...part } });
  return (
    <Group title={t('setting.seller')}>
      <Text word="setting.legalName" value={seller.legalName} onChange={(legalName) => put({ legalName })} />
      <Text word="setting.taxNumber" value={seller.taxNumber} onChange={(taxNumber) => put({ taxNumber })} />
      {(['street', 'city', 'postalCode', 'subdivision', 'country'] as const).map((name) => (
        <Text
          key={name}
          word={`setting.${name}`}
          value={address[name]}
          onChange={(typed) =>
            put({ address: { ...address, [name]: name === 'country' ? typed.toUpperCase() : typed } })
          }
        />
      ))}
      <Choice
        word="setting.form"
        value={value.form}
        options={['us-sales-tax', 'en16931']}
        onChange={(form) => change({ form })}
      />
    </Group>
  );
}

function Accounts({ value, change }: Part) {
  const { t } = useWords();
  const { accounts } = value;
  const put = (part: Partial<Settings['accounts']>) => change({ accounts: { ...accounts, ...part } });
  return (
    <Group title={t('setting.accounts')}>
      <Text
        word="setting.receivable"
        figure
        value={accounts.receivable}
        onChange={(receivable) => put({ receivable })}
      />
      <Text word="setting.salesTax" figure value={accounts.salesTax} onChange={(salesTax) => put({ salesTax })} />
      {(['labour', 'travel', 'parts', 'consumables', 'minimum'] as const).map((kind) => (
        <Text
          key={kind}
          word={`line.${kind}`}
          figure
          value={accounts.revenue[kind]}
          onChange={(typed) => put({ revenue: { ...accounts.revenue, [kind]: typed } })}
        />
      ))}
    </Group>
  );
}
