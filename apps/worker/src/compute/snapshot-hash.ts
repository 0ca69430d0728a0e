import { createHash } from 'node:crypto';

/** SHA-256 of a document with its keys in order, so that equal snapshots have equal hashes. */
export function snapshotHash(document: unknown): string {
  return createHash('sha256')
    .update(JSON.stringify(ordered(document)))
    .digest('hex');
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, ordered(inner)]),
  );
}
