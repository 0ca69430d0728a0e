import { type ReactNode, useState } from 'react';
import type { ChargeSettings } from '../../data/types.js';
import type { WordKey } from '../../words/en.js';
import { useWords } from '../../words/words.js';
import style from '../register/register.module.css';

export type Settings = Omit<ChargeSettings, 'version'>;
export type Change = (part: Partial<Settings>) => void;

export function Group({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <fieldset className="stack">
      <legend>{title}</legend>
      <div className={style.form}>{children}</div>
    </fieldset>
  );
}

interface TextProps {
  readonly word: WordKey;
  readonly value: string;
  readonly figure?: boolean;
  readonly onChange: (value: string) => void;
}

export function Text({ word, value, figure = false, onChange }: TextProps) {
  const { t } = useWords();
  return (
    <label className="field">
      <span className="label">{t(word)}</span>
      <input
        className={figure ? 'figure' : undefined}
        autoComplete="off"
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
    </label>
  );
}

interface ChoiceProps<V extends string> {
  readonly word: WordKey;
  readonly value: V;
  readonly options: readonly V[];
  readonly onChange: (value: V) => void;
}

/** One of a few; each is named by `<word>.<option>`. */
export function Choice<V extends string>({ word, value, options, onChange }: ChoiceProps<V>) {
  const { t, named } = useWords();
  return (
    <label className="field">
      <span className="label">{t(word)}</span>
      <select value={value} onChange={(event) => onChange(event.target.value as V)}>
        {options.map((each) => (
          <option key={each} value={each}>
            {named(`${word}.${each}`, each)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** A number: what is being typed stays as it is, and counts once it is one. */
export function Figure({
  word,
  value,
  onChange,
}: {
  readonly word: WordKey;
  readonly value: number;
  readonly onChange: (value: number) => void;
}) {
  const [typed, setTyped] = useState(String(value));
  return (
    <Text
      word={word}
      figure
      value={typed}
      onChange={(next) => {
        setTyped(next);
        const number = Number(next.replace(',', '.'));
        if (next.trim() !== '' && Number.isFinite(number)) onChange(number);
      }}
    />
  );
}

/** Codes with commas between them. */
export function Codes({
  word,
  value,
  onChange,
}: {
  readonly word: WordKey;
  readonly value: readonly string[];
  readonly onChange: (value: string[]) => void;
}) {
  const [typed, setTyped] = useState(value.join(', '));
  return (
    <Text
      word={word}
      value={typed}
      onChange={(next) => {
        setTyped(next);
        onChange(next.split(/[\s,]+/).filter(Boolean));
      }}
    />
  );
}
