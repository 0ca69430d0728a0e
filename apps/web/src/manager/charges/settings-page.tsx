import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { api } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import type { ChargeSettings } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { ChargeForm } from './charge-form.js';
import { LabourSettings } from './labour-settings.js';
import { MinimumSettings } from './minimum-settings.js';
import { PartsSettings } from './parts-settings.js';
import { PartyFields } from './party-fields.js';
import { type Change, Choice, Group, type Settings, Text } from './setting-fields.js';
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
    <div className="stack" style={{ maxWidth: '56rem' }}>
      <title>{t('charges.page')}</title>
      <p>
        <Link to="/charges" search={{}}>
          ← {t('nav.charges')}
        </Link>
      </p>
      <h1>{t('charges.settings-title')}</h1>
      <ChargeForm
        draft={draft}
        save={save}
        saveWord="save"
        savedWord="register.saved"
        onLeave={() => draft.drop(start)}
      >
        <Seller value={value} change={change} />
        <LabourSettings value={value} change={change} />
        <MinimumSettings value={value} change={change} />
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
      </ChargeForm>
    </div>
  );
}

interface Part {
  readonly value: Settings;
  readonly change: Change;
}

function Seller({ value, change }: Part) {
  const { t } = useWords();
  const { seller } = value;
  return (
    <Group title={t('setting.seller')}>
      <PartyFields value={seller} onChange={(party) => change({ seller: { ...seller, ...party } })} />
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
