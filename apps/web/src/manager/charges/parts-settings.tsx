import { useWords } from '../../words/words.js';
import { Amount, type Change, Choice, Group, Percent, type Settings, Text } from './setting-fields.js';

type Consumables = Settings['consumables'];
const NEW_PRICE = { name: '', unitPrice: '0' };
const CONSUMABLES: Readonly<Record<Consumables['rule'], Consumables>> = {
  none: { rule: 'none' },
  listed: { rule: 'listed', prices: [NEW_PRICE] },
  'share-of-labour': { rule: 'share-of-labour', percent: '5', atMost: '25.00' },
};

/** What parts and consumables are charged at. */
export function PartsSettings({
  value,
  change,
}: {
  readonly value: Pick<Settings, 'parts' | 'consumables'>;
  readonly change: Change;
}) {
  const { t } = useWords();
  const { parts, consumables } = value;
  const { markUps } = parts;
  const put = (index: number, part: Partial<(typeof markUps)[number]>) =>
    change({ parts: { ...parts, markUps: markUps.map((each, at) => (at === index ? { ...each, ...part } : each)) } });
  return (
    <Group title={t('line.parts')}>
      <Choice
        word="setting.parts"
        value={parts.basis}
        options={['price', 'cost']}
        onChange={(basis) => change({ parts: { ...parts, basis } })}
      />
      {parts.basis === 'cost'
        ? markUps.map((markUp, index) => (
            <div key={index} className="row">
              <Text
                word="setting.upToCost"
                figure
                value={markUp.upToCost ?? ''}
                onChange={(typed) => put(index, { upToCost: typed === '' ? null : typed })}
              />
              <Percent word="setting.percent" value={markUp.percent} onChange={(percent) => put(index, { percent })} />
            </div>
          ))
        : null}
      <Choice
        word="setting.consumables"
        value={consumables.rule}
        options={['none', 'listed', 'share-of-labour']}
        onChange={(rule) => change({ consumables: CONSUMABLES[rule] })}
      />
      {consumables.rule === 'listed' ? <Listed consumables={consumables} change={change} /> : null}
      {consumables.rule === 'share-of-labour' ? (
        <>
          <Percent
            word="setting.percent"
            value={consumables.percent}
            onChange={(percent) => change({ consumables: { ...consumables, percent } })}
          />
          <Amount
            word="setting.atMost"
            value={consumables.atMost}
            onChange={(atMost) => change({ consumables: { ...consumables, atMost } })}
          />
        </>
      ) : null}
    </Group>
  );
}

function Listed({
  consumables,
  change,
}: {
  readonly consumables: Extract<Consumables, { rule: 'listed' }>;
  readonly change: Change;
}) {
  const { t } = useWords();
  const { prices } = consumables;
  const put = (next: typeof prices) => change({ consumables: { ...consumables, prices: next } });
  return (
    <>
      {prices.map((price, index) => (
        <div key={index} className="row">
          <Text word="field.name" value={price.name} onChange={(name) => put(prices.with(index, { ...price, name }))} />
          <Amount
            word="field.unitPriceCents"
            value={price.unitPrice}
            onChange={(unitPrice) => put(prices.with(index, { ...price, unitPrice }))}
          />
          <button type="button" className="press-plain" onClick={() => put(prices.toSpliced(index, 1))}>
            {t('windows.remove')}
          </button>
        </div>
      ))}
      <button type="button" className="press-quiet" onClick={() => put([...prices, NEW_PRICE])}>
        {t('register.new')}
      </button>
    </>
  );
}
