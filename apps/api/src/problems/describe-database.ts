import type { Prisma } from '@deckround/store';
import { type Found, PROBLEMS, problemType } from './problem-map.js';

/**
 * Rules that live in the database: uniqueness, references, checks.
 *
 * @param body of the request, so that what it names wrongly can be pointed to
 */
export function describeDatabase(error: Prisma.PrismaClientKnownRequestError, body: unknown): Found {
  const refusal = (code: 'conflict' | 'invalid-input', detail: string): Found => ({
    type: problemType(code),
    ...PROBLEMS[code],
    detail,
  });
  const at = (kind: 'key' | 'fkey', detail: string): Pick<Found, 'errors'> => {
    const field = fieldNamed(kind, error.meta, body);
    return field === undefined ? {} : { errors: [{ pointer: `/${field}`, detail }] };
  };
  switch (error.code) {
    case 'P2002':
      return {
        ...refusal(
          'conflict',
          'There is one with the same code or key already: change that one, or choose another code.',
        ),
        ...at('key', 'another has it already'),
      };
    case 'P2003':
      if (!isMissing(error.meta)) return refusal('invalid-input', 'Others still need it. Nothing was changed.');
      return {
        ...refusal('invalid-input', 'It names something that does not exist. Nothing was changed.'),
        ...at('fkey', 'there is none with this id'),
      };
    case 'P2025':
      return { type: problemType('not-found'), ...PROBLEMS['not-found'], detail: 'It is not there, or not yours.' };
    case 'P2034':
      return refusal('conflict', 'Somebody changed the same thing at the same moment: try again.');
    default:
      if (/23514|check constraint/.test(error.message))
        return refusal('invalid-input', 'A value is outside what is allowed.');
      return {
        type: problemType('internal'),
        title: 'Something went wrong here',
        status: 500,
        detail: 'Nothing was changed. Try again later.',
      };
  }
}

type Meta = Prisma.PrismaClientKnownRequestError['meta'];

/** A reference that leads nowhere: `insert or update on table …`; `update or delete on table …` is one still needed. */
function isMissing(meta: Meta): boolean {
  return /insert or update on table/.test(JSON.stringify(meta ?? {}));
}

/** The field of the body that a broken rule is named after: `…_technician_id_fkey` of `technicianId`, `…_code_key` of `code`. */
function fieldNamed(kind: 'key' | 'fkey', meta: Meta, body: unknown): string | undefined {
  const rule = /\w+_f?key/.exec(JSON.stringify(meta ?? {}))?.[0] ?? '';
  const column = (field: string) => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  return Object.keys(body ?? {})
    .filter((field) => rule.endsWith(`_${column(field)}_${kind}`))
    .sort((a, b) => b.length - a.length)[0];
}
