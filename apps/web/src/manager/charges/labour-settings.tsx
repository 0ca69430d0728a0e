import { useWords } from '../../words/words.js';
import { Amount, type Change, Choice, Figure, Group, Percent, type Settings, Text } from './setting-fields.js';

type Labour = Settings['labour'];
interface Props {
  readonly value: Pick<Settings, 'labour'>;
  readonly change: Change;
}

/** What an hour of work costs, and how its minutes are counted. */
export function LabourSettings({ value, change }: Props) {
  const { t } = useWords();
  const { labour } = value;
  const put = (part: Partial<Labour>) => change({ labour: { ...labour, ...part } });
  return (
    <Group title={t('setting.labour')}>
      <Amount word="setting.ratePerHour" value={labour.ratePerHour} onChange={(ratePerHour) => put({ ratePerHour })} />
      <Choice
        word="setting.basis"
        value={labour.basis}
        options={['actual', 'flat']}
        onChange={(basis) => put({ basis })}
      />
      <Figure
        word="setting.roundToMinutes"
        value={labour.roundToMinutes}
        onChange={(roundToMinutes) => put({ roundToMinutes })}
      />
      <Choice
        word="setting.rounding"
        value={labour.rounding}
        options={['up', 'nearest', 'down']}
        onChange={(rounding) => put({ rounding })}
      />
      <Choice
        word="setting.roundEach"
        value={labour.roundEach}
        options={['line', 'visit']}
        onChange={(roundEach) => put({ roundEach })}
      />
      <Percent
        word="setting.overtimePercent"
        value={labour.overtimePercent}
        onChange={(overtimePercent) => put({ overtimePercent })}
      />
      <Text
        word="setting.regularFrom"
        figure
        value={labour.regularFrom}
        onChange={(regularFrom) => put({ regularFrom })}
      />
      <Text word="setting.regularTo" figure value={labour.regularTo} onChange={(regularTo) => put({ regularTo })} />
    </Group>
  );
}
