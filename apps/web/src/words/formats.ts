import type { Language } from './language.js';

const LOCALES: Readonly<Record<Language, string>> = { en: 'en-US', es: 'es-US' };
const METRES_PER_MILE = 1609.344;

export interface Formats {
  readonly locale: string;
  readonly timeZone: string;
  readonly units: 'us' | 'metric';
  /** How many digits of the shop's currency stand after the point. */
  readonly currencyDigits: number;
  number(value: number, digits?: number): string;
  percent(share: number): string;
  /** Minor units of the shop's currency, in full. */
  money(cents: number): string;
  /** A decimal string in the shop's currency. */
  amount(value: string): string;
  /** The same without its fraction, for sums where a cent says nothing. */
  roundMoney(cents: number): string;
  hours(value: number | string): string;
  minutes(value: number): string;
  distance(metres: number): string;
  /** `Thu, Jun 4` of a local date. */
  day(date: string): string;
  /** The same with the year. */
  dayOfYear(date: string): string;
  /** The day, with its year where that is not the reader's. */
  dayBeside(date: string, today: string): string;
  /** `Jun 4`. */
  monthDay(date: string): string;
  /** One of these: `Mon or Tue`. */
  anyOf(words: readonly string[]): string;
  weekday(date: string): string;
  /** Clock time of an instant in the shop's zone, or another. */
  time(instant: string, timeZone?: string): string;
  /** Day and time of an instant. */
  moment(instant: string): string;
  range(from: string, to: string): string;
}

/** Between a figure and its unit: no line ends there. */
const NEAR = '\u00a0';
/** After a dash: nor there. */
const JOINED = '\u2060';

/** Making a formatter takes a slow phone some ten milliseconds: each is made when it is first wanted. */
function lazily<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

function kept<T>(all: Map<string, T>, key: string, make: () => T): T {
  const found = all.get(key);
  if (found !== undefined) return found;
  const made = make();
  all.set(key, made);
  return made;
}

/** How numbers, money, times and lengths are written. Local dates are kept from any zone. */
export function formatsFor(
  language: Language,
  { timeZone, currency, units }: { timeZone: string; currency: string; units: 'us' | 'metric' },
): Formats {
  const locale = LOCALES[language];
  const numbers = new Map<string, Intl.NumberFormat>();
  const number = (digits: number, least = 0) =>
    kept(
      numbers,
      `${digits}/${least}`,
      () => new Intl.NumberFormat(locale, { maximumFractionDigits: digits, minimumFractionDigits: least }),
    );
  const money = lazily(() => new Intl.NumberFormat(locale, { style: 'currency', currency }));
  const roundMoney = lazily(
    () => new Intl.NumberFormat(locale, { style: 'currency', currency, maximumFractionDigits: 0 }),
  );
  const currencyDigits = money().resolvedOptions().maximumFractionDigits ?? 2;
  const perUnit = 10 ** currencyDigits;
  const date = (options: Intl.DateTimeFormatOptions) =>
    lazily(() => new Intl.DateTimeFormat(locale, { timeZone: 'UTC', ...options }));
  const [day, dayOfYear, weekday, monthDay] = [
    date({ weekday: 'short', month: 'short', day: 'numeric' }),
    date({ weekday: 'short', year: 'numeric', month: 'short', day: 'numeric' }),
    date({ weekday: 'long' }),
    date({ month: 'short', day: 'numeric' }),
  ];
  const clocks = new Map<string, Intl.DateTimeFormat>();
  const clock = (zone: string) =>
    kept(
      clocks,
      zone,
      () => new Intl.DateTimeFormat(locale, { timeZone: zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }),
    );
  const moment = lazily(
    () =>
      new Intl.DateTimeFormat(locale, {
        timeZone,
        weekday: 'short',
        month: 'short',
        day: 'numeric',
        year: 'numeric',
        hour: '2-digit',
        minute: '2-digit',
        hourCycle: 'h23',
      }),
  );
  const either = lazily(() => new Intl.ListFormat(locale, { type: 'disjunction' }));
  const whole = () => number(0);
  const at = (text: string) => new Date(`${text}T00:00:00Z`);
  const time = (instant: string, zone = timeZone) => clock(zone).format(new Date(instant));
  return {
    locale,
    timeZone,
    units,
    currencyDigits,
    number: (value, digits = 0) => number(digits).format(value),
    percent: (share) => `${whole().format(100 * share)}${NEAR}%`,
    money: (cents) => money().format(cents / perUnit),
    amount: (value) => money().format(Number(value)),
    roundMoney: (cents) => roundMoney().format(cents / perUnit),
    hours: (value) => `${number(1, 1).format(Number(value))}${NEAR}h`,
    minutes: (value) => {
      const all = Math.round(value);
      const [hours, rest] = [Math.floor(all / 60), all % 60];
      const inMinutes = `${rest}${NEAR}min`;
      if (hours === 0) return inMinutes;
      const inHours = `${whole().format(hours)}${NEAR}h`;
      return rest === 0 ? inHours : `${inHours}${NEAR}${inMinutes}`;
    },
    distance: (metres) =>
      units === 'us'
        ? `${whole().format(metres / METRES_PER_MILE)}${NEAR}mi`
        : `${whole().format(metres / 1000)}${NEAR}km`,
    day: (text) => day().format(at(text)),
    dayBeside: (text, today) => (text.slice(0, 4) === today.slice(0, 4) ? day : dayOfYear)().format(at(text)),
    dayOfYear: (text) => dayOfYear().format(at(text)),
    anyOf: (all) => either().format(all),
    monthDay: (text) => monthDay().format(at(text)),
    weekday: (text) => weekday().format(at(text)),
    time,
    moment: (instant) => moment().format(new Date(instant)),
    range: (from, to) => `${time(from)}–${JOINED}${time(to)}`,
  };
}

export const US_FORMATS = formatsFor('en', { timeZone: 'UTC', currency: 'USD', units: 'us' });
