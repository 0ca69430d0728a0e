import { useQuery } from '@tanstack/react-query';
import { useId } from 'react';
import type { WeeklyWindow } from '../../data/types.js';
import { useWords } from '../../words/words.js';
import { IncludedItems } from './included-items.js';
import { type Field, fieldWord, type Row, type RowsQuery } from './kinds.js';
import style from './register.module.css';
import { WindowsField } from './windows-field.js';

interface Props {
  readonly field: Field;
  readonly value: unknown;
  readonly isFixed: boolean;
  /** Of a row that is not there yet. */
  readonly isNew: boolean;
  readonly fault: string | undefined;
  readonly onChange: (value: unknown) => void;
}

const INPUT_TYPES: Readonly<Record<string, string>> = {
  date: 'date',
  clock: 'time',
  email: 'email',
  password: 'password',
};

/** One field with its name, its unit and what is wrong with it. */
export function FieldInput({ field, value, isFixed, isNew, fault, onChange }: Props) {
  const { t, named } = useWords();
  const id = useId();
  const { kind } = field;
  const label = kind === 'password' && !isNew ? t('field.password.anew') : t(fieldWord(field.name));
  if (kind === 'windows')
    return <WindowsField label={label} windows={value as WeeklyWindow[]} fault={fault} onChange={onChange} />;
  if (kind === 'included-items')
    return <IncludedItems label={label} value={value as never} isFixed={isFixed} onChange={onChange} />;
  if (kind === 'yes-no')
    return (
      <label className="check">
        <input
          type="checkbox"
          checked={value === true}
          disabled={isFixed}
          onChange={(event) => onChange(event.target.checked)}
        />
        {label}
      </label>
    );
  if (typeof kind === 'object' && 'from' in kind && kind.many)
    return (
      <ManyRows
        label={label}
        kind={kind}
        why={named(`${fieldWord(field.name)}.why`, '')}
        value={value as string[]}
        isFixed={isFixed}
        onChange={onChange}
      />
    );
  const common = {
    id,
    value: String(value ?? ''),
    disabled: isFixed,
    'aria-invalid': fault !== undefined,
    'aria-describedby': fault === undefined ? undefined : `${id}-fault`,
    onChange: (event: { target: { value: string } }) => onChange(event.target.value),
  };
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {field.optional ? <span className="pencil"> {t('field.optional')}</span> : null}
      </label>
      {kind === 'long' ? (
        <textarea {...common} />
      ) : typeof kind === 'object' && 'oneOf' in kind ? (
        <select {...common}>
          {kind.oneOf.map((each) => (
            <option key={each} value={each}>
              {named(`${kind.words}.${each}`, each)}
            </option>
          ))}
        </select>
      ) : typeof kind === 'object' ? (
        <RowSelect {...common} source={kind.from()} label={kind.label} valueName={kind.value ?? 'id'} />
      ) : (
        <input
          {...common}
          type={INPUT_TYPES[kind] ?? 'text'}
          autoComplete={kind === 'password' ? 'new-password' : 'off'}
          inputMode={['whole', 'decimal', 'money', 'hours'].includes(kind) ? 'decimal' : undefined}
          className={['whole', 'decimal', 'money', 'hours', 'clock'].includes(kind) ? 'figure' : undefined}
        />
      )}
      {fault === undefined ? null : (
        <span id={`${id}-fault`} className="fault">
          {fault}
        </span>
      )}
    </div>
  );
}

interface ManyProps {
  readonly label: string;
  readonly why: string;
  readonly kind: { readonly from: () => RowsQuery; readonly label: string };
  readonly value: readonly string[];
  readonly isFixed: boolean;
  readonly onChange: (value: string[]) => void;
}

/** Rows of another kind, each to be ticked. */
function ManyRows({ label, why, kind, value, isFixed, onChange }: ManyProps) {
  const rows = (useQuery(kind.from()).data ?? []) as Row[];
  return (
    <fieldset className={style.many}>
      <legend className="small">{label}</legend>
      {why === '' ? null : <p className="pencil">{why}</p>}
      {rows.map((row) => (
        <label key={row.id} className="check">
          <input
            type="checkbox"
            disabled={isFixed}
            checked={value.includes(row.id)}
            onChange={(event) =>
              onChange(event.target.checked ? [...value, row.id] : value.filter((each) => each !== row.id))
            }
          />
          {String(row[kind.label])}
        </label>
      ))}
    </fieldset>
  );
}

interface SelectProps {
  readonly id: string;
  readonly value: string;
  readonly disabled: boolean;
  readonly source: RowsQuery;
  readonly label: string;
  readonly valueName: string;
  readonly onChange: (event: { target: { value: string } }) => void;
}

function RowSelect({ source, label, valueName, ...select }: SelectProps) {
  const { named, sentence } = useWords();
  const nameOf = (row: Row) => {
    const name = String(row[label]);
    if (valueName === 'code') return named(`class.${row['code']}`, name);
    return label === 'description' ? sentence(name) : name;
  };
  const rows = (useQuery(source).data ?? []) as Row[];
  return (
    <select {...select}>
      <option value="">–</option>
      {rows.map((row) => (
        <option key={row.id} value={String(row[valueName])}>
          {nameOf(row)}
        </option>
      ))}
    </select>
  );
}
