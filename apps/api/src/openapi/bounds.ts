/** Longest value of a format, characters. */
const LENGTHS: Readonly<Record<string, number>> = { uuid: 36, date: 10, 'date-time': 40, email: 320, uri: 2048 };
/** Values held by a pattern are short words and decimal numbers. */
const PATTERN_LENGTH = 200;
/** Longest text that the service writes itself, and most entries of a list in its answers. */
const LONGEST_TEXT = 100_000;
const MOST_ENTRIES = 100_000;
const INT32 = 2 ** 31 - 1;

/** States in the document what clients can rely on anyway: how long a text, a list, a whole number can get. */
export function stateBounds(node: unknown): void {
  if (Array.isArray(node)) {
    for (const each of node) stateBounds(each);
    return;
  }
  if (node === null || typeof node !== 'object') return;
  const schema = node as Record<string, unknown>;
  if (isText(schema)) stateLength(schema);
  else if (schema.type === 'integer') schema.format ??= isInt32(schema) ? 'int32' : 'int64';
  else if (schema.type === 'array') {
    schema.maxItems ??= Array.isArray(schema.prefixItems) ? schema.prefixItems.length : MOST_ENTRIES;
    // A pair of numbers: tools that know no `prefixItems` still learn what its entries are.
    if (!schema.items && Array.isArray(schema.prefixItems)) schema.items = { ...schema.prefixItems[0] };
  }
  for (const inner of Object.values(schema)) stateBounds(inner);
}

/** `string`, alone or beside null. */
const isText = ({ type }: Record<string, unknown>) =>
  type === 'string' || (Array.isArray(type) && type.includes('string'));

function stateLength(schema: Record<string, unknown>): void {
  if (schema.enum !== undefined || schema.const !== undefined || schema.maxLength !== undefined) return;
  schema.maxLength = LENGTHS[String(schema.format)] ?? (schema.pattern === undefined ? LONGEST_TEXT : PATTERN_LENGTH);
}

function isInt32({ minimum, maximum }: Record<string, unknown>): boolean {
  return Number(minimum ?? -Infinity) >= -INT32 - 1 && Number(maximum ?? Infinity) <= INT32;
}
