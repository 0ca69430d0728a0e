import { DomainError } from '@deckround/platform';
import { readCursor, writeCursor } from '../http/paging.js';

/** A page of a computed list: the cursor carries the place of the last row sent, and an id to recognise it by. */
export function listPage<R, V>(
  rows: readonly R[],
  query: { readonly cursor?: string | undefined; readonly limit: number },
  idOf: (row: R) => string,
  view: (row: R) => V,
): { items: V[]; next: string | null } {
  const cursor = readCursor(query.cursor);
  let from = 0;
  if (cursor) {
    from = Number(cursor.key) + 1;
    const last = rows[from - 1];
    if (!last || idOf(last) !== cursor.id)
      throw new DomainError('invalid-input', 'The list has changed since that cursor: start again without it.');
  }
  const to = from + query.limit;
  const shown = rows.slice(from, to);
  const last = shown.at(-1);
  return {
    items: shown.map(view),
    next: to < rows.length && last ? writeCursor({ key: String(to - 1), id: idOf(last) }) : null,
  };
}
