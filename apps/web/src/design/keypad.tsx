import { useEffect } from 'react';
import { useWords } from '../words/words.js';
import style from './keypad.module.css';

const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'] as const;
const LONGEST = 9;

/** A figure on big keys; a keyboard types into it too. */
export function Keypad({
  value,
  label,
  onChange,
}: {
  readonly value: string;
  readonly label: string;
  readonly onChange: (value: string) => void;
}) {
  const { t } = useWords();
  const press = (key: string) => {
    if (key === '⌫') onChange(value.slice(0, -1));
    else if (value.length < LONGEST && !(key === '.' && value.includes('.'))) onChange(value + key);
  };
  useEffect(() => {
    const onKey = ({ key, target }: KeyboardEvent) => {
      if (target instanceof HTMLElement && /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName)) return;
      if (key === 'Backspace') press('⌫');
      else if ((KEYS as readonly string[]).includes(key)) press(key);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
  return (
    <div className="stack">
      <output className={style.shown} aria-label={label}>
        {value || ' '}
      </output>
      <div className={style.pad}>
        {KEYS.map((key) => (
          <button key={key} type="button" onClick={() => press(key)}>
            {key}
          </button>
        ))}
        <button type="button" aria-label={t('keypad.back')} onClick={() => press('⌫')}>
          ⌫
        </button>
      </div>
    </div>
  );
}
