import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { api } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import { shopQuery } from '../../data/queries.js';
import type { Shop } from '../../data/types.js';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

/** The shop itself: its name, clock, money and units. */
export function ShopPage() {
  const shop = useSuspenseQuery(shopQuery).data;
  const { t } = useWords();
  const client = useQueryClient();
  const { name, timeZone, currency, units } = shop;
  const draft = useDraft('shop', { name, timeZone, currency, units });
  const save = useMutation({
    mutationFn: () => api.patch<Shop>('/v1/shop', draft.value, shop.version),
    onSuccess: (saved) => {
      draft.drop({ name: saved.name, timeZone: saved.timeZone, currency: saved.currency, units: saved.units });
      client.setQueryData(shopQuery.queryKey, saved);
    },
    onError: () => client.invalidateQueries({ queryKey: shopQuery.queryKey }),
  });
  return (
    <form
      className="stack"
      style={{ maxWidth: '32rem' }}
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate();
      }}
    >
      <title>{t('register.page')}</title>
      <p>
        <Link to="/register">← {t('nav.register')}</Link>
      </p>
      <h1>{t('register.shop')}</h1>
      <label className="field">
        <span className="label">{t('field.name')}</span>
        <input value={draft.value.name} onChange={(event) => draft.change({ name: event.target.value })} />
      </label>
      <label className="field">
        <span className="label">{t('field.timeZone')}</span>
        <select value={draft.value.timeZone} onChange={(event) => draft.change({ timeZone: event.target.value })}>
          {[...new Set([timeZone, ...Intl.supportedValuesOf('timeZone')])].map((zone) => (
            <option key={zone}>{zone}</option>
          ))}
        </select>
      </label>
      <label className="field">
        <span className="label">{t('field.currency')}</span>
        <input
          className="figure"
          maxLength={3}
          value={draft.value.currency}
          onChange={(event) => draft.change({ currency: event.target.value.toUpperCase() })}
        />
      </label>
      <label className="field">
        <span className="label">{t('field.units')}</span>
        <select
          value={draft.value.units}
          onChange={(event) => draft.change({ units: event.target.value as Shop['units'] })}
        >
          <option value="us">{t('units.us')}</option>
          <option value="metric">{t('units.metric')}</option>
        </select>
      </label>
      <Failure error={save.error} />
      {save.isSuccess ? <p role="status">{t('register.saved')}</p> : null}
      <button
        type="submit"
        className="press"
        style={{ justifySelf: 'start' }}
        disabled={save.isPending || !draft.touched}
      >
        {t('save')}
      </button>
    </form>
  );
}
