import type { JournalRow } from '@deckround/billing';
import { stringify } from 'csv-stringify/sync';

const COLUMNS: readonly (keyof JournalRow)[] = [
  'entryId',
  'line',
  'date',
  'document',
  'account',
  'customer',
  'item',
  'quantity',
  'unit',
  'debit',
  'credit',
  'currency',
  'taxCode',
  'memo',
];

/** RFC 4180: a header row, CRLF, quotes doubled. Texts that a spreadsheet would run as a formula get an apostrophe. */
export function journalCsv(rows: readonly JournalRow[]): string {
  return stringify(
    rows.map((row) => COLUMNS.map((column) => (typeof row[column] === 'string' ? harmless(row[column]) : row[column]))),
    { header: true, columns: [...COLUMNS], record_delimiter: 'windows' },
  );
}

export function journalLines(rows: readonly JournalRow[]): string {
  return rows.map((row) => `${JSON.stringify(row)}\n`).join('');
}

function harmless(text: string): string {
  return /^[=+\-@\t\r]/.test(text) && !/^-?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
}
