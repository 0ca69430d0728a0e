import { type ReactNode, useId, useState } from 'react';
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
  /** What is wrong with it, in the reader's words. */
  readonly fault?: string | undefined;
  readonly onChange: (value: string) => void;
}

export function Text({ word, value, figure = false, fault, onChange }: TextProps) {
  const { t } = useWords();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{t(word)}</label>
      <input
        id={id}
        className={figure ? 'figure' : undefined}
        autoComplete="off"
        aria-invalid={fault !== undefined}
        aria-describedby={fault === undefined ? undefined : `${id}-fault`}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      />
      {fault === undefined ? null : (
        <span id={`${id}-fault`} className="fault">
          {fault}
        </span>
      )}
    </div>
  );
}

type FigureTextProps = Omit<TextProps, 'figure' | 'fault'>;

/** Money as a decimal string; a comma is taken for the point. */
export function Amount(props: FigureTextProps) {
  return <Decimal {...props} digits={7} faultWord="fault.amount" />;
}

export function Percent(props: FigureTextProps) {
  return <Decimal {...props} digits={3} faultWord="fault.percent" />;
}

function Decimal({ digits, faultWord, ...props }: FigureTextProps & { digits: number; faultWord: WordKey }) {
  const { t } = useWords();
  const isOne = new RegExp(`^\\d{1,${digits}}(\\.\\d{1,4})?$`).test(props.value);
  return (
    <Text
      {...props}
      figure
      fault={isOne ? undefined : t(faultWord)}
      onChange={(typed) => props.onChange(typed.trim().replace(',', '.'))}
    />
  );
}

/** The first field of a form that says what is wrong with it, brought to the reader; null where all is well. */
export function firstFault(form: HTMLFormElement): HTMLElement | null {
  const field = form.querySelector<HTMLElement>('[aria-invalid="true"]');
  field?.focus();
  return field;
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
