/** Rows of one statement: others are answered between two of them. */
const ROWS = 2000;

/**
 * Rows by the thousands, as JSON documents for `jsonb_to_recordset`: the client would take minutes to put tens of thousands of
 * them into words.
 */
export function* documentsOf(rows: readonly object[]): Generator<string> {
  for (let from = 0; from < rows.length; from += ROWS) yield JSON.stringify(rows.slice(from, from + ROWS));
}
