import { useQueries } from '@tanstack/react-query';
import { useWords } from '../../words/words.js';
import type { Field, Kind, Row } from './kinds.js';

/** What rows of other kinds are called, for fields that name them. */
export function useLabels(kind: Kind): (field: Field, value: unknown) => string {
  const { named, sentence } = useWords();
  const fields = kind.fields.flatMap((field) =>
    typeof field.kind === 'object' && 'from' in field.kind ? [{ name: field.name, ...field.kind }] : [],
  );
  const answers = useQueries({ queries: fields.map((field) => field.from()) });
  return (field, value) => {
    const index = fields.findIndex((each) => each.name === field.name);
    const source = fields[index];
    const rows = (answers[index]?.data ?? []) as Row[];
    const row = rows.find((each) => each[source?.value ?? 'id'] === value);
    const label = row === undefined ? String(value ?? '') : String(row[source!.label]);
    if (field.name === 'machineClass') return named(`class.${value}`, label);
    return source?.label === 'description' ? sentence(label) : label;
  };
}
