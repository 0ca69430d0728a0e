import { useWords } from '../../words/words.js';
import { Amount, type Change, Group, type Settings } from './setting-fields.js';

/** What a visit costs at least. */
export function MinimumSettings({
  value,
  change,
}: {
  readonly value: Pick<Settings, 'minimumCharge'>;
  readonly change: Change;
}) {
  const { t } = useWords();
  return (
    <Group title={t('line.minimum')}>
      <Amount
        word="setting.minimumCharge"
        value={value.minimumCharge}
        onChange={(minimumCharge) => change({ minimumCharge })}
      />
    </Group>
  );
}
