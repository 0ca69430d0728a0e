import { useMutation, useQueryClient } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Failure } from '../../design/failure.js';
import { useWords } from '../../words/words.js';

interface Props<T> {
  readonly title: string;
  readonly press: string;
  readonly isReady: boolean;
  readonly make: () => Promise<T>;
  readonly onMade: () => void;
  /** The list that it then stands in. */
  readonly listKey: readonly string[];
  /** What the service tells only now. */
  readonly secretOf?: (made: T) => string;
  readonly children: ReactNode;
}

/** A form that makes a connection and, where there is one, shows its secret this once. */
export function NewConnection<T>({ title, press, isReady, make, onMade, listKey, secretOf, children }: Props<T>) {
  const client = useQueryClient();
  const add = useMutation({
    mutationFn: make,
    onSuccess: onMade,
    onSettled: () => client.invalidateQueries({ queryKey: listKey }),
  });
  return (
    <details>
      <summary>{title}</summary>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          add.mutate();
        }}
      >
        {children}
        <Failure error={add.error} />
        {add.data !== undefined && secretOf !== undefined ? <ShownOnce secret={secretOf(add.data)} /> : null}
        <p>
          <button type="submit" className="press" disabled={!isReady || add.isPending}>
            {press}
          </button>
        </p>
      </form>
    </details>
  );
}

/** A secret that is never shown again. */
export function ShownOnce({ secret }: { readonly secret: string }) {
  const { t } = useWords();
  return (
    <label className="field note straw">
      <span className="label">{t('connect.once')}</span>
      <input className="figure" readOnly value={secret} onFocus={(event) => event.target.select()} />
    </label>
  );
}
