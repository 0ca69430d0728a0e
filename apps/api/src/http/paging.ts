import { DomainError } from '@deckround/platform';
import { z } from 'zod';

/** Rows are read in order of (key, id): a cursor names the last one sent. */
export interface Cursor {
  readonly key: string;
  readonly id: string;
}

/**
 * @param idForm of the ids of the rows
 * @throws DomainError invalid-input where it is of nobody's making
 */
export function readCursor(text: string | undefined, idForm: z.ZodType<string> = z.uuid()): Cursor | null {
  if (text === undefined) return null;
  try {
    const [key, id] = JSON.parse(Buffer.from(text, 'base64url').toString('utf8')) as [string, string];
    if (typeof key === 'string' && idForm.safeParse(id).success) return { key, id };
  } catch {
    // falls through to the fault
  }
  throw new DomainError('invalid-input', 'The cursor is not one that this service gave out: start again without it.');
}

export function writeCursor({ key, id }: Cursor): string {
  return Buffer.from(JSON.stringify([key, id])).toString('base64url');
}

/** Cuts one row too many into a page. */
export function toPage<R extends { id: string }, V>(
  rows: readonly R[],
  limit: number,
  keyOf: (row: R) => string,
  view: (row: R) => V,
) {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  return {
    items: shown.map(view),
    next: rows.length > limit && last ? writeCursor({ key: keyOf(last), id: last.id }) : null,
  };
}

/** Prisma's condition for "after the cursor" in ascending order of (column, id). */
export function afterCursor(
  column: string,
  cursor: Cursor | null,
  parse: (key: string) => unknown = (key) => key,
): object {
  if (!cursor) return {};
  const key = parse(cursor.key);
  if (key instanceof Date && Number.isNaN(key.getTime())) {
    throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
  }
  return { OR: [{ [column]: { gt: key } }, { [column]: key, id: { gt: cursor.id } }] };
}
