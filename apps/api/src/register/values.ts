import { DomainError } from '@deckround/platform';
import { isTimeZone } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';

export const hoursText = (value: { toString(): string } | null): string | null =>
  value === null ? null : String(value);
export const dateOrNull = (value: Date | null): string | null => (value === null ? null : dateText(value));
export const columnOrNull = (value: string | null): Date | null => (value === null ? null : dateColumn(value));
export const instantOrNull = (value: Date | null): string | null => value?.toISOString() ?? null;

/** @throws DomainError invalid-input */
export function requireTimeZone(name: string): void {
  if (!isTimeZone(name)) {
    throw new DomainError('invalid-input', 'The time zone is not known.', [
      { pointer: '/timeZone', detail: `"${name}" is not an IANA time zone: write it like America/Chicago` },
    ]);
  }
}

/** The given fields without those that are undefined, each name kept. */
export function given<T extends object>(fields: T): Partial<T> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Partial<T>;
}
