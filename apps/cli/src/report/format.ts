/** `$1,240` or `$12.40`; whole units where cents say nothing. */
export function money(cents: number, currency: string): string {
  const digits = Math.abs(cents) >= 100_000 ? 0 : 2;
  return new Intl.NumberFormat('en-US', {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(cents / 100);
}

/** `2 h 05`, `45 min`. */
export function duration(minutes: number): string {
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')}`;
}

/** The clock of an RFC 3339 instant that carries its own offset. */
export function clock(instant: string): string {
  return instant.slice(11, 16);
}

/** `Mon 8 Jun`. */
export function day(date: string): string {
  return new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' })
    .format(new Date(`${date}T00:00:00Z`))
    .replace(',', '');
}

export function count(value: number, one: string, many = `${one}s`): string {
  return `${value.toLocaleString('en-US')} ${value === 1 ? one : many}`;
}
