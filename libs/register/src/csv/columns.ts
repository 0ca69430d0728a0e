import { type Clause, clause } from '@deckround/planning';
import { isLocalDate } from '../local-date.js';
import type { WeeklyWindow } from '../register.js';
import { InvalidWindows, parseWeeklyWindows } from '../weekly-windows.js';

/** Why a cell cannot be used, and what to write instead: as a sentence, and as its key for another language. */
export class CellFault extends Error {
  readonly clause: Clause;

  constructor(message: string, key: string, values: Clause['values'] = {}) {
    super(message);
    this.clause = clause(key, values);
  }
}

/** How one column is read. `optional` columns may be missing from the header; their cells then read as ''. */
export interface Column<T> {
  readonly optional?: boolean;
  read(text: string): T;
}

/** Cells may be empty. */
function orNull<T>(inner: Column<T>): Column<T | null> {
  return { ...inner, read: (cell) => (cell === '' ? null : inner.read(cell)) };
}

/** The column may be missing, and its cells empty. */
export function mayLack<T>(inner: Column<T>): Column<T | null> {
  return { ...orNull(inner), optional: true };
}

const MAX_TEXT = 500;

/** Years before and after are slips of the pen, and would stretch every calendar to them. */
const FIRST_YEAR = 1950;
const LAST_YEAR = 2100;

export function text(options: { required?: boolean; max?: number } = {}): Column<string> {
  const max = options.max ?? MAX_TEXT;
  return {
    read: (cell) => {
      if (options.required && cell === '') throw new CellFault('is empty: fill it in', 'cell-empty');
      if (cell.length > max)
        throw new CellFault(`is ${cell.length} characters long: at most ${max} fit`, 'cell-long', {
          length: cell.length,
          max,
        });
      // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what is looked for
      if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/.test(cell))
        throw new CellFault('holds control characters: retype it as plain text', 'cell-control');
      return cell;
    },
  };
}

export function identifier(): Column<string> {
  return {
    read: (cell) => {
      if (cell === '') throw new CellFault('is empty: every row needs its identifier', 'cell-no-id');
      if (!/^[\p{L}\p{N}._/-]{1,64}$/u.test(cell)) {
        throw new CellFault(
          `"${short(cell)}" is not an identifier: letters, digits and . _ / - only, at most 64`,
          'cell-bad-id',
          { cell: short(cell) },
        );
      }
      return cell;
    },
  };
}

export function number(range: { min: number; max: number; unit: string }): Column<number> {
  return {
    read: (cell) => {
      if (!/^[+-]?\d{1,9}(\.\d{1,8})?$/.test(cell)) {
        throw new CellFault(
          `"${short(cell)}" is not a number: write it like 412.6 (${range.unit}), with a point and no thousands mark`,
          'cell-no-number',
          { cell: short(cell), unit: range.unit },
        );
      }
      const value = Number(cell);
      if (value < range.min || value > range.max) {
        throw new CellFault(
          `${cell} ${range.unit} is outside ${range.min} to ${range.max}: correct it`,
          'cell-outside',
          {
            cell,
            ...range,
          },
        );
      }
      return value;
    },
  };
}

export function optionalNumber(range: { min: number; max: number; unit: string }): Column<number | null> {
  return orNull(number(range));
}

export function integer(range: { min: number; max: number; unit: string }): Column<number> {
  const inner = number(range);
  return {
    read: (cell) => {
      const value = inner.read(cell);
      if (!Number.isInteger(value))
        throw new CellFault(`${cell} must be a whole number of ${range.unit}`, 'cell-not-whole', {
          cell,
          unit: range.unit,
        });
      return value;
    },
  };
}

/** Money as a decimal with at most two places; read into integer cents. */
export function cents(max = 100_000): Column<number> {
  return {
    read: (cell) => {
      const match = /^(\d{1,7})(?:\.(\d{1,2}))?$/.exec(cell);
      if (!match)
        throw new CellFault(
          `"${short(cell)}" is not an amount: write it like 14.50, without a currency sign`,
          'cell-no-amount',
          { cell: short(cell) },
        );
      const value = Number(match[1]) * 100 + Number((match[2] ?? '0').padEnd(2, '0'));
      if (value > max * 100) throw new CellFault(`${cell} is above ${max}: correct it`, 'cell-above', { cell, max });
      return value;
    },
  };
}

export function date(): Column<string> {
  return {
    read: (cell) => {
      if (!isLocalDate(cell))
        throw new CellFault(`"${short(cell)}" is not a date: write it like 2014-06-16`, 'cell-no-date', {
          cell: short(cell),
        });
      refuseFarYear(cell);
      return cell;
    },
  };
}

function refuseFarYear(cell: string): void {
  const year = Number(cell.slice(0, 4));
  if (year < FIRST_YEAR || year > LAST_YEAR)
    throw new CellFault(
      `"${short(cell)}" is outside ${FIRST_YEAR} to ${LAST_YEAR}: correct the year`,
      'cell-far-year',
      {
        cell: short(cell),
        // As text: a year takes no thousands mark.
        min: String(FIRST_YEAR),
        max: String(LAST_YEAR),
      },
    );
}

export function optionalDate(): Column<string | null> {
  return orNull(date());
}

/** Wall clock of the site, `2014-06-16T07:45:00`; seconds may be left out, a blank may stand for the T. */
export function localDateTime(): Column<string> {
  return {
    read: (cell) => {
      const match = /^(\d{4}-\d{2}-\d{2})[T ]([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d))?$/.exec(cell);
      if (!match || !isLocalDate(match[1]!)) {
        throw new CellFault(
          `"${short(cell)}" is not a date and time: write it like 2014-06-16T07:45:00, the site's own clock`,
          'cell-no-time',
          { cell: short(cell) },
        );
      }
      refuseFarYear(cell);
      return `${match[1]}T${match[2]}:${match[3]}:${match[4] ?? '00'}`;
    },
  };
}

export function yesNo(): Column<boolean> {
  return {
    read: (cell) => {
      if (/^(yes|true|1)$/i.test(cell)) return true;
      if (/^(no|false|0|)$/i.test(cell)) return false;
      throw new CellFault(`"${short(cell)}" is neither yes nor no`, 'cell-yes-no', { cell: short(cell) });
    },
  };
}

export function oneOf<T extends string>(choices: readonly T[], fallback?: T): Column<T> {
  return {
    read: (cell) => {
      if (cell === '' && fallback !== undefined) return fallback;
      const found = choices.find((choice) => choice === cell.toLowerCase());
      if (!found)
        throw new CellFault(`"${short(cell)}" is not one of: ${choices.join(', ')}`, 'cell-not-one-of', {
          cell: short(cell),
          choices: choices.join(', '),
        });
      return found;
    },
  };
}

export function weeklyWindows(mostPerDay?: number): Column<WeeklyWindow[]> {
  return {
    read: (cell) => {
      try {
        return parseWeeklyWindows(cell, mostPerDay);
      } catch (error) {
        if (error instanceof InvalidWindows)
          throw new CellFault(
            `${error.message}; write it like Mon-Fri 07:00-15:30; Sat 08:00-12:00`,
            `windows-${error.kind}`,
            { part: short(error.part) },
          );
        throw error;
      }
    },
  };
}

export function list(): Column<string[]> {
  return {
    read: (cell) =>
      cell
        .split(';')
        .map((each) => each.trim().toLowerCase())
        .filter((each) => each !== ''),
  };
}

export function timeZone(): Column<string> {
  return {
    read: (cell) => {
      if (!isTimeZone(cell))
        throw new CellFault(`"${short(cell)}" is not a time zone: write it like America/Chicago`, 'cell-no-zone', {
          cell: short(cell),
        });
      return cell;
    },
  };
}

/** Whether a place's zone has that name. An offset is not one: it knows no summer time. */
export function isTimeZone(name: string): boolean {
  if (/^[+-]/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

function short(cell: string): string {
  return cell.length > 40 ? `${cell.slice(0, 40)}…` : cell;
}
