import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useRef, useState } from 'react';
import { useShop } from '../../app/shop-words.js';
import { api, Refused } from '../../data/api.js';
import { useDraft } from '../../data/draft.js';
import { Failure } from '../../design/failure.js';
import { SureButton } from '../../design/sure-button.js';
import { faultsOf } from '../../words/faults.js';
import { useWords } from '../../words/words.js';
import { FieldInput } from './field-input.js';
import { type Field, fieldWord, type Kind, type KindName, type Row } from './kinds.js';
import style from './register.module.css';
import { fromTyped, shownValue, toTyped } from './row-values.js';
import { useLabels } from './use-labels.js';

type Typed = Record<string, unknown>;

interface Props {
  readonly name: KindName;
  readonly kind: Kind;
  readonly row: Row | null;
}

/** A form for any kind of row. What is typed survives a reload; a change by somebody else is shown, never overwritten. */
export function RecordForm({ name, kind, row }: Props) {
  const words = useWords();
  const { t, currencyDigits } = words;
  const shop = useShop();
  const client = useQueryClient();
  const navigate = useNavigate();
  const labelOf = useLabels(kind);
  const fields = (kind.fields as readonly Field[]).filter((field) => row !== null || !field.onlyLater);
  const secrets = fields.filter((field) => field.kind === 'password').map((field) => field.name);
  const typedOf = (from: Row | null): Typed =>
    Object.fromEntries(
      fields.map((field) => [
        field.name,
        toTyped(
          field,
          from === null ? (field.kind === 'zone' ? shop?.timeZone : field.start) : from[field.name],
          words,
        ),
      ]),
    );
  const draft = useDraft<Typed>(`${name}.${row?.id ?? 'new'}`, typedOf(row), secrets);
  // The row as it was when this form was opened: what the reader has seen.
  const [seen, setSeen] = useState(row);
  const [theirs, setTheirs] = useState<Row | null>(null);
  const key = useRef(crypto.randomUUID());
  const canWrite = row === null ? kind.canCreate : kind.canChange;
  // What is not asked is not sent either; if it was filled in before, it is there again when it is asked.
  const asked = fields.filter(
    ({ onlyIf }) => onlyIf === undefined || onlyIf.isOneOf.includes(String(draft.value[onlyIf.field])),
  );
  const isFixed = (field: Field) => !canWrite || (row !== null && field.onlyNew === true);

  const changed = asked.filter(
    (field) =>
      !isFixed(field) && (seen === null || !isSame(draft.value[field.name], toTyped(field, seen[field.name], words))),
  );
  const save = useMutation({
    mutationFn: (version: number | undefined) => {
      const body = Object.fromEntries(
        changed
          .map((field) => [field.name, fromTyped(field, draft.value[field.name], currencyDigits)] as const)
          .filter(([, value]) => value !== undefined),
      );
      return row === null
        ? api.post<Row>(`/v1/${kind.path}`, body, key.current)
        : api.patch<Row>(`/v1/${kind.path}/${row.id}`, body, version!);
    },
    onSuccess: async (saved) => {
      draft.drop(typedOf(saved));
      setSeen(saved);
      setTheirs(null);
      await client.invalidateQueries();
      if (row === null) await navigate({ to: '/register/$kind', params: { kind: name } });
    },
    onError: async (error) => {
      // Another body under the same key would be refused; the same body was not taken.
      if (error instanceof Refused) key.current = crypto.randomUUID();
      if (error instanceof Refused && error.code === 'version-stale' && row !== null)
        setTheirs(await api.get<Row>(`/v1/${kind.path}/${row.id}`));
    },
  });
  const remove = useMutation({
    mutationFn: () => api.remove(`/v1/${kind.path}/${row!.id}`),
    onSuccess: async () => {
      await client.invalidateQueries();
      await navigate({ to: '/register/$kind', params: { kind: name } });
    },
  });
  const faults = faultsOf(save.error, words);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    save.mutate(seen?.version);
  };
  return (
    <form className="stack" onSubmit={submit} noValidate>
      {draft.wasFound && draft.touched ? <p className="note">{t('draft.found')}</p> : null}
      <div className={style.form}>
        {asked.map((field) => (
          <FieldInput
            key={field.name}
            field={field}
            value={draft.value[field.name]}
            isFixed={isFixed(field)}
            isNew={row === null}
            fault={faults.get(field.name)}
            onChange={(value) => draft.change({ [field.name]: value })}
          />
        ))}
      </div>
      {theirs === null ? null : (
        <div className="note straw" role="alert">
          <p>{t('conflict.stale')}</p>
          <ul>
            {fields
              .filter((field) => !isSame(theirs[field.name], seen?.[field.name]))
              .map((field) => (
                <li key={field.name}>
                  {t('conflict.field', {
                    field: t(fieldWord(field.name)),
                    theirs: shownValue(field, theirs[field.name], words, labelOf),
                  })}
                </li>
              ))}
          </ul>
          <div className="row">
            <button
              type="button"
              className="press"
              onClick={() => {
                setSeen(theirs);
                save.mutate(theirs.version);
              }}
            >
              {t('conflict.mine')}
            </button>
            <button
              type="button"
              className="press-quiet"
              onClick={() => {
                draft.drop(typedOf(theirs));
                setSeen(theirs);
                setTheirs(null);
                save.reset();
              }}
            >
              {t('conflict.theirs')}
            </button>
          </div>
        </div>
      )}
      {theirs === null ? <Failure error={save.error ?? remove.error} /> : null}
      {save.isSuccess ? <p role="status">{t('register.saved')}</p> : null}
      {canWrite ? (
        <div className="row">
          <button type="submit" className="press" disabled={save.isPending || changed.length === 0}>
            {t('save')}
          </button>
          {draft.touched ? (
            <button type="button" className="press-plain" onClick={() => draft.drop(typedOf(seen))}>
              {t('draft.drop')}
            </button>
          ) : null}
        </div>
      ) : null}
      {kind.canRemove && row !== null ? (
        <p>
          <SureButton
            label={t('register.remove')}
            sureLabel={t('register.remove-sure')}
            isPending={remove.isPending}
            onSure={() => remove.mutate()}
          />
        </p>
      ) : null}
    </form>
  );
}

const isSame = (a: unknown, b: unknown) => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
