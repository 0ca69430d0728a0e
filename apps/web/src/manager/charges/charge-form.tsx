import type { UseMutationResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { Failure } from '../../design/failure.js';
import type { WordKey } from '../../words/en.js';
import { useWords } from '../../words/words.js';
import { firstFault } from './setting-fields.js';

interface Props {
  readonly draft: { readonly wasFound: boolean; readonly touched: boolean };
  readonly save: Pick<UseMutationResult<unknown, Error, void>, 'mutate' | 'isPending' | 'isSuccess' | 'error'>;
  readonly saveWord: WordKey;
  readonly savedWord: WordKey;
  /** Leaves what was typed. */
  readonly onLeave: () => void;
  readonly children: ReactNode;
}

/** A form of how something is charged, the shop's or a customer's: not sent while a field has a fault, kept as a draft. */
export function ChargeForm({ draft, save, saveWord, savedWord, onLeave, children }: Props) {
  const { t } = useWords();
  return (
    <form
      className="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (firstFault(event.currentTarget) === null) save.mutate();
      }}
    >
      {draft.wasFound && draft.touched ? <p className="note">{t('draft.found')}</p> : null}
      {children}
      <Failure error={save.error} />
      {save.isSuccess && !draft.touched ? <p role="status">{t(savedWord)}</p> : null}
      <div className="row">
        <button type="submit" className="press" disabled={save.isPending || !draft.touched}>
          {t(saveWord)}
        </button>
        {draft.touched ? (
          <button type="button" className="press-plain" onClick={onLeave}>
            {t('draft.drop')}
          </button>
        ) : null}
      </div>
    </form>
  );
}
