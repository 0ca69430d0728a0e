/**
 * An expected refusal, understood where it is thrown and turned into HTTP, an exit code or a failed job elsewhere.
 * `code` is one of the closed list; `detail` says what happened and what to do next.
 */
export class DomainError extends Error {
  override readonly name = 'DomainError';

  constructor(
    readonly code: DomainErrorCode,
    readonly detail: string,
    readonly errors: readonly FieldFault[] = [],
    /** When asking again makes sense; null = the code alone does not say. */
    readonly retryAfterSeconds: number | null = null,
  ) {
    super(detail);
  }
}

/** One faulty place: a JSON pointer into a body, or `file:line:column` of a register. */
export interface FieldFault {
  readonly pointer: string;
  readonly detail: string;
  /** The detail as a key with its values, for those who word it in another language. */
  readonly clause?: { readonly key: string; readonly values: Record<string, string | number> };
}

export type DomainErrorCode =
  | 'not-found'
  | 'not-allowed'
  | 'sign-in-failed'
  | 'signed-out'
  | 'invalid-input'
  | 'conflict'
  | 'version-missing'
  | 'version-stale'
  | 'idempotency-key-missing'
  | 'idempotency-key-reused'
  | 'plan-not-ready'
  | 'visit-closed'
  | 'document-issued'
  | 'document-incomplete'
  | 'quota-exceeded'
  | 'too-many-sign-ins'
  | 'label-revoked'
  | 'too-many-readings';
