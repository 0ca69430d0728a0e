import type { Problem } from '@deckround/contracts';
import type { DomainErrorCode } from '@deckround/platform';

/** What a problem says, but for the request that it answers. */
export type Found = Pick<Problem, 'type' | 'title' | 'status' | 'detail'> & { errors?: Problem['errors'] };

/** The only translation of domain errors into HTTP; a new code does not compile until it has its line here. */
export const PROBLEMS: Readonly<Record<DomainErrorCode, { status: number; title: string }>> = {
  'not-found': { status: 404, title: 'There is no such thing' },
  'not-allowed': { status: 403, title: 'Not allowed' },
  'sign-in-failed': { status: 401, title: 'Sign-in failed' },
  'signed-out': { status: 401, title: 'Not signed in' },
  'invalid-input': { status: 422, title: 'The input cannot be used' },
  conflict: { status: 409, title: 'It conflicts with what is there' },
  'version-missing': { status: 428, title: 'If-Match is missing' },
  'version-stale': { status: 412, title: 'It was changed meanwhile' },
  'idempotency-key-missing': { status: 400, title: 'Idempotency-Key is missing' },
  'idempotency-key-reused': { status: 422, title: 'Idempotency-Key was used for another request' },
  'plan-not-ready': { status: 409, title: 'The plan is not ready' },
  'visit-closed': { status: 409, title: 'The visit is closed' },
  'document-issued': { status: 409, title: 'The document is issued' },
  'document-incomplete': { status: 409, title: 'The document cannot be issued yet' },
  'quota-exceeded': { status: 429, title: 'Too many requests' },
  'too-many-sign-ins': { status: 429, title: 'Too many sign-ins' },
  'label-revoked': { status: 410, title: 'The label is no longer valid' },
  'too-many-readings': { status: 429, title: 'Too many readings' },
};

/** Stable address of a problem type, as RFC 9457 wants it; a name, not a page. */
export function problemType(code: string): string {
  return `urn:deckround:problem:${code}`;
}
