import { DomainError } from '@deckround/platform';

/** Strong ETag of a row (RFC 9110, 8.8.3). */
export function etagOf(version: number): string {
  return `"${version}"`;
}

/**
 * Holds a change to the version its sender has seen (RFC 9110 13.1.1, RFC 6585 3).
 * @throws DomainError version-missing without If-Match; version-stale when the row has moved on
 */
export function requireVersion(ifMatch: string | undefined, version: number): void {
  if (ifMatch === undefined) {
    throw new DomainError(
      'version-missing',
      'Read it first and send its ETag in If-Match, so that no change of somebody else is overwritten.',
    );
  }
  const seen = ifMatch.split(',').map((each) => each.trim());
  if (!seen.includes('*') && !seen.includes(etagOf(version))) {
    throw new DomainError(
      'version-stale',
      `It is at version ${version} now. Read it again, then repeat the change if it still makes sense.`,
    );
  }
}
