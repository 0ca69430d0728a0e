import type { WeeklyWindow } from '../../data/types.js';
import { addDays } from '../../words/local-date.js';
import { useWords } from '../../words/words.js';
import style from './register.module.css';

/** A Monday, to name the days of the week by. */
const MONDAY = '2026-06-08';

/** The end of the day, which a time input can only say as the beginning of the next. */
const MIDNIGHT = '24:00';

interface Props {
  readonly label: string;
  readonly windows: readonly WeeklyWindow[];
  readonly fault: string | undefined;
  readonly onChange: (windows: WeeklyWindow[]) => void;
}

/** Spans of the week, one line each. */
export function WindowsField({ label, windows, fault, onChange }: Props) {
  const { t, weekday } = useWords();
  const change = (index: number, part: Partial<WeeklyWindow>) =>
    onChange(windows.map((each, at) => (at === index ? { ...each, ...part } : each)));
  const next = () => {
    const last = windows.at(-1);
    onChange([
      ...windows,
      { weekday: ((last?.weekday ?? 0) % 7) + 1, from: last?.from ?? '07:00', to: last?.to ?? '15:30' },
    ]);
  };
  return (
    <fieldset className={style.windows}>
      <legend className="small">{label}</legend>
      {windows.map((window, index) => (
        <div key={index} className="row">
          <select
            className="input"
            aria-label={t('windows.day')}
            value={window.weekday}
            onChange={(event) => change(index, { weekday: Number(event.target.value) })}
          >
            {[1, 2, 3, 4, 5, 6, 7].map((each) => (
              <option key={each} value={each}>
                {weekday(addDays(MONDAY, each - 1))}
              </option>
            ))}
          </select>
          <input
            className="input figure"
            type="time"
            aria-label={t('windows.from')}
            value={window.from}
            onChange={(event) => change(index, { from: event.target.value })}
          />
          –
          <input
            className="input figure"
            type="time"
            aria-label={t('windows.to')}
            value={window.to === MIDNIGHT ? '00:00' : window.to}
            onChange={({ target }) => change(index, { to: target.value === '00:00' ? MIDNIGHT : target.value })}
          />
          <button
            type="button"
            className="press-plain"
            onClick={() => onChange(windows.filter((_, at) => at !== index))}
          >
            {t('windows.remove')}
          </button>
        </div>
      ))}
      <button type="button" className="press-plain" onClick={next}>
        {t('windows.add')}
      </button>
      {fault === undefined ? null : <span className="fault">{fault}</span>}
    </fieldset>
  );
}
