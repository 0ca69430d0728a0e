import { useMutation } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { describeFailure } from '../app/failed.js';
import { saveFile } from '../data/save-file.js';
import { useWords } from '../words/words.js';

/** Fetches a file to print or keep; says so when it cannot be had. */
export function FileButton({ path, children }: { readonly path: string; readonly children: ReactNode }) {
  const { t } = useWords();
  const fetching = useMutation({ mutationFn: () => saveFile(path) });
  return (
    <span className="row">
      <button type="button" className="press-quiet" disabled={fetching.isPending} onClick={() => fetching.mutate()}>
        {children}
      </button>
      {fetching.error ? (
        <span className="note clay" role="alert">
          {describeFailure(fetching.error, t)}
        </span>
      ) : null}
    </span>
  );
}
