import { useWords } from '../../words/words.js';
import { Amount, type Change, Choice, Figure, Group, type Settings, Text } from './setting-fields.js';

type Travel = Settings['travel'];
const RULES = ['none', 'visit-fee', 'zone', 'shared-drive'] as const;
const START: Readonly<Record<Travel['rule'], Travel>> = {
  none: { rule: 'none' },
  'visit-fee': { rule: 'visit-fee', fee: '45.00' },
  zone: { rule: 'zone', zones: [{ name: '1', upToKm: 30, fee: '45.00' }] },
  'shared-drive': { rule: 'shared-drive', ratePerHour: '95.00' },
};

/** How the way there is charged. */
export function TravelSettings({
  value,
  change,
}: {
  readonly value: Pick<Settings, 'travel'>;
  readonly change: Change;
}) {
  const { t } = useWords();
  const { travel } = value;
  const put = (next: Travel) => change({ travel: next });
  return (
    <Group title={t('line.travel')}>
      <Choice word="setting.travel" value={travel.rule} options={RULES} onChange={(rule) => put(START[rule])} />
      {travel.rule === 'visit-fee' ? (
        <Amount word="setting.fee" value={travel.fee} onChange={(fee) => put({ ...travel, fee })} />
      ) : null}
      {travel.rule === 'shared-drive' ? (
        <Amount
          word="setting.ratePerHour"
          value={travel.ratePerHour}
          onChange={(ratePerHour) => put({ ...travel, ratePerHour })}
        />
      ) : null}
      {travel.rule === 'zone' ? <Zones travel={travel} put={put} /> : null}
    </Group>
  );
}

function Zones({
  travel,
  put,
}: {
  readonly travel: Extract<Travel, { rule: 'zone' }>;
  readonly put: (next: Travel) => void;
}) {
  const { t } = useWords();
  const { zones } = travel;
  const change = (index: number, part: Partial<(typeof zones)[number]>) =>
    put({ ...travel, zones: zones.map((zone, at) => (at === index ? { ...zone, ...part } : zone)) });
  return (
    <>
      {zones.map((zone, index) => (
        <div key={`${index} of ${zones.length}`} className="row">
          <Text word="setting.zone-name" value={zone.name} onChange={(name) => change(index, { name })} />
          <Figure word="setting.upToKm" value={zone.upToKm} onChange={(upToKm) => change(index, { upToKm })} />
          <Amount word="setting.fee" value={zone.fee} onChange={(fee) => change(index, { fee })} />
          {zones.length > 1 ? (
            <button
              type="button"
              className="press-plain"
              onClick={() => put({ ...travel, zones: zones.filter((_, at) => at !== index) })}
            >
              {t('windows.remove')}
            </button>
          ) : null}
        </div>
      ))}
      <button
        type="button"
        className="press-quiet"
        onClick={() => {
          const last = zones.at(-1)!;
          const name = String(zones.length + 1);
          put({ ...travel, zones: [...zones, { name, upToKm: last.upToKm + 20, fee: last.fee }] });
        }}
      >
        {t('setting.add-zone')}
      </button>
    </>
  );
}
