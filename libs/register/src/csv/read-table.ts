import { Readable } from 'node:stream';
import { clause } from '@deckround/planning';
import { type CsvError, parse } from 'csv-parse';
import { CellFault, type Column } from './columns.js';
import type { FaultList, RegisterFault } from './fault.js';
import { NotText, utf8Lines } from './utf8-lines.js';

/** Longest row in characters; anything longer is a broken quote or not a register. */
const MAX_ROW = 64 * 1024;

export type Columns = Readonly<Record<string, Column<unknown>>>;
export type Row<C extends Columns> = { readonly [K in keyof C]: C[K] extends Column<infer T> ? T : never };

/**
 * Streams one CSV file: every sound row goes to `onRow` with its line number, every fault into `faults`.
 * Column order is free; a missing or unknown column, a row of another length and an unreadable cell are faults.
 *
 * @param onFaultyRow gets the cells of a row that is not sound, as they stand
 * @returns whether the file was read to its end; rows of one that was not may be missing
 */
export async function readTable<C extends Columns>(
  file: string,
  bytes: AsyncIterable<Uint8Array>,
  columns: C,
  faults: FaultList,
  onRow: (row: Row<C>, line: number) => void,
  onFaultyRow: (cell: (name: keyof C & string) => string) => void = () => {},
): Promise<boolean> {
  const names = Object.keys(columns);
  // Counted as rows are parsed: those waiting to be read are lost when the parser gives up.
  let lastSoundLine = 0;
  const parser = parse({
    bom: true,
    info: true,
    relax_column_count: true,
    skip_empty_lines: true,
    max_record_size: MAX_ROW,
    // Said, not found out from the first line: files edited on several systems mix them.
    record_delimiter: ['\r\n', '\n', '\r'],
    trim: true,
    on_record: (record, { lines }) => {
      lastSoundLine = lines;
      return record;
    },
  });
  const text = Readable.from(utf8Lines(bytes));
  text.on('error', (error) => parser.destroy(error));
  text.pipe(parser);

  let places: number[] | null = null;
  let width = 0;
  const cellsOf = (record: string[]) => (name: string) => record[places?.[names.indexOf(name)] ?? -1] ?? '';
  try {
    for await (const { record, info } of parser as AsyncIterable<{ record: string[]; info: { lines: number } }>) {
      if (places === null) {
        places = headerPlaces(file, record, columns, names, faults);
        if (places === null) return false;
        width = record.length;
        continue;
      }
      if (record.length !== width) {
        faults.add({
          file,
          line: info.lines,
          column: null,
          message: `has ${record.length} cells where the header has ${width}: look for a missing comma or quote`,
          clause: clause('row-cells', { cells: record.length, width }),
        });
        onFaultyRow(cellsOf(record));
        continue;
      }
      const row = readRow(file, info.lines, record, places, columns, names, faults);
      if (row) onRow(row as Row<C>, info.lines);
      else onFaultyRow(cellsOf(record));
    }
    if (places !== null) return true;
    const expected = names.filter((name) => !columns[name]!.optional);
    const columnsWanted = expected.join(',');
    faults.add({
      file,
      line: 0,
      column: null,
      message: `is empty: its first line must be ${columnsWanted}`,
      clause: clause('file-empty', { columns: columnsWanted }),
    });
    return false;
  } catch (error) {
    faults.add(fileFault(file, error, lastSoundLine + 1));
    return false;
  } finally {
    text.destroy();
    parser.destroy();
  }
}

function headerPlaces(
  file: string,
  header: string[],
  columns: Columns,
  names: string[],
  faults: FaultList,
): number[] | null {
  const before = faults.total;
  const expected = names.filter((name) => !columns[name]!.optional);
  const missing = expected.filter((name) => !header.includes(name));
  if (missing.length > 0) {
    faults.add({
      file,
      line: 1,
      column: missing.join(', '),
      message: `the header lacks it; the first line must be ${expected.join(',')}`,
      clause: clause('header-lacks', { columns: expected.join(',') }),
    });
  }
  for (const name of header) {
    if (!names.includes(name)) {
      faults.add({
        file,
        line: 1,
        column: name.slice(0, 60),
        message: `is not known; the columns are ${names.join(', ')}: rename or remove it`,
        clause: clause('header-unknown', { columns: names.join(', ') }),
      });
    } else if (header.indexOf(name) !== header.lastIndexOf(name)) {
      const message = 'stands twice in the header: remove one';
      faults.add({ file, line: 1, column: name, message, clause: clause('header-twice') });
      break;
    }
  }
  return faults.total > before ? null : names.map((name) => header.indexOf(name));
}

function readRow(
  file: string,
  line: number,
  record: string[],
  places: number[],
  columns: Columns,
  names: string[],
  faults: FaultList,
): Record<string, unknown> | null {
  const row: Record<string, unknown> = {};
  let sound = true;
  names.forEach((name, index) => {
    const place = places[index]!;
    try {
      row[name] = columns[name]!.read(place < 0 ? '' : (record[place] ?? ''));
    } catch (error) {
      if (!(error instanceof CellFault)) throw error;
      sound = false;
      faults.add({ file, line, column: name, message: error.message, clause: error.clause });
    }
  });
  return sound ? row : null;
}

/** @param line where the row begins that could not be read */
function fileFault(file: string, error: unknown, line: number): RegisterFault {
  const place = { file, line, column: null };
  if (error instanceof NotText)
    return { ...place, line: error.line, message: error.message, clause: clause(`file-${error.kind}`) };
  const { code, message } = error as CsvError;
  switch (code as string) {
    case 'CSV_MAX_RECORD_SIZE':
      return {
        ...place,
        message: `is longer than ${MAX_ROW} characters: look for a quote that is never closed`,
        clause: clause('row-long', { max: MAX_ROW }),
      };
    case 'CSV_QUOTE_NOT_CLOSED':
      return {
        ...place,
        message: 'a quoted cell is never closed: add the missing quote',
        clause: clause('quote-open'),
      };
    case 'CSV_INVALID_CLOSING_QUOTE':
    case 'INVALID_OPENING_QUOTE':
      return {
        ...place,
        message: 'a quote stands inside a cell: double it ("") or remove it',
        clause: clause('quote-inside'),
      };
    case 'EISDIR':
      return {
        ...place,
        line: 0,
        message: 'is a folder: put the CSV file of this name in its place',
        clause: clause('file-folder'),
      };
    case 'EACCES':
    case 'EPERM':
      return {
        ...place,
        line: 0,
        message: 'may not be read: give this user the right to read it',
        clause: clause('file-forbidden'),
      };
    default:
      return { ...place, message: `cannot be read: ${message}`, clause: null };
  }
}
