import { useWords } from '../../words/words.js';
import { type Change, Choice, Codes, Percent, type Settings, Text } from './setting-fields.js';

type Tax = Settings['taxes'][number];
const KINDS = ['labour', 'travel', 'parts', 'consumables', 'minimum'] as const;
const NEW: Tax = { jurisdiction: '', level: 'state', percent: '0', on: ['parts'], siteCodes: null };

/** Which tax is on what, and where. What is right in a place, its tax office says. */
export function TaxSettings({ value, change }: { readonly value: Pick<Settings, 'taxes'>; readonly change: Change }) {
  const { t } = useWords();
  const { taxes } = value;
  const put = (index: number, part: Partial<Tax>) =>
    change({ taxes: taxes.map((each, at) => (at === index ? { ...each, ...part } : each)) });
  return (
    <fieldset className="stack">
      <legend>{t('setting.taxes')}</legend>
      {taxes.map((tax, index) => (
        <fieldset key={`${index} of ${taxes.length}`} className="tight">
          <legend className="unseen">{tax.jurisdiction || t('setting.jurisdiction')}</legend>
          <div className="row">
            <Text
              word="setting.jurisdiction"
              value={tax.jurisdiction}
              onChange={(jurisdiction) => put(index, { jurisdiction })}
            />
            <Choice
              word="setting.level"
              value={tax.level}
              options={['state', 'local']}
              onChange={(level) => put(index, { level })}
            />
            <Percent word="setting.percent" value={tax.percent} onChange={(percent) => put(index, { percent })} />
            <Codes
              word="setting.siteCodes"
              value={tax.siteCodes ?? []}
              onChange={(codes) => put(index, { siteCodes: codes.length > 0 ? codes : null })}
            />
          </div>
          <div className="row">
            {KINDS.map((kind) => (
              <label key={kind} className="check">
                <input
                  type="checkbox"
                  checked={tax.on.includes(kind)}
                  onChange={(event) =>
                    put(index, {
                      on: event.target.checked ? [...tax.on, kind] : tax.on.filter((each) => each !== kind),
                    })
                  }
                />
                {t(`line.${kind}`)}
              </label>
            ))}
            <button
              type="button"
              className="press-plain"
              onClick={() => change({ taxes: taxes.filter((_, at) => at !== index) })}
            >
              {t('windows.remove')}
            </button>
          </div>
        </fieldset>
      ))}
      <p>
        <button type="button" className="press-quiet" onClick={() => change({ taxes: [...taxes, NEW] })}>
          {t('setting.add-tax')}
        </button>
      </p>
    </fieldset>
  );
}
