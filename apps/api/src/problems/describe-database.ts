import type { Prisma } from '@deckround/store';
import { type Found, PROBLEMS, problemType } from './problem-map.js';

/**
 * Rules that live in the database: uniqueness, references, checks.
 *
 * @param body of the request, so that what it names wrongly can be pointed to
 */
export function describeDatabase(error: Prisma.PrismaClientKnownRequestError, body: unknown): Found {
  const conflict = (detail: string): Found => ({ type: problemType('conflict'), ...PROBLEMS.conflict, detail });
  const invalid = (detail: string): Found => ({
    type: problemType('invalid-input'),
    ...PROBLEMS['invalid-input'],
    detail,
  });
  switch (error.code) {
    case 'P2002':
      return conflict('There is one with the same code or key already: change that one, or choose another code.');
    case 'P2003': {
      if (!isMissing(error.meta)) return invalid('Others still need it. Nothing was changed.');
      const field = fieldNamed(error.meta, body);
      return {
        ...invalid('It names something that does not exist. Nothing was changed.'),
        ...(field && { errors: [{ pointer: `/${field}`, detail: 'there is none with this id' }] }),
      };
    }
    case 'P2025':
      return { type: problemType('not-found'), ...PROBLEMS['not-found'], detail: 'It is not there, or not yours.' };
    case 'P2034':
      return conflict('Somebody changed the same thing at the same moment: try again.');
    default:
      if (/23514|check constraint/.test(error.message)) return invalid('A value is outside what is allowed.');
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

/** The field of the body whose column the broken reference is made of: `…_technician_id_fkey` is of `technicianId`. */
function fieldNamed(meta: Meta, body: unknown): string | undefined {
  const constraint = /\w+_fkey/.exec(JSON.stringify(meta ?? {}))?.[0] ?? '';
  const column = (field: string) => field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
  return Object.keys(body ?? {})
    .filter((field) => field.endsWith('Id') && constraint.endsWith(`_${column(field)}_fkey`))
    .sort((a, b) => b.length - a.length)[0];
}
