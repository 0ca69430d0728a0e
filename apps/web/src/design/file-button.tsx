import { useMutation } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { saveFile } from '../data/save-file.js';
import { Failure } from './failure.js';

/** Fetches a file to print or keep; says so when it cannot be had. */
export function FileButton({ path, children }: { readonly path: string; readonly children: ReactNode }) {
  const fetching = useMutation({ mutationFn: () => saveFile(path) });
  return (
    <span className="row">
      <button type="button" className="press-quiet" disabled={fetching.isPending} onClick={() => fetching.mutate()}>
        {children}
      </button>
      <Failure error={fetching.error} />
    </span>
  );
}
