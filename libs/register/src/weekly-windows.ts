import type { WeeklyWindow } from './register.js';

const DAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const FULL_NAMES = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const PART = /^([A-Za-z, -]+?)\s+(\d{1,2}):(\d{2})\s*-\s*(\d{1,2}):(\d{2})$/;

/** Why hours cannot be read, and the part or the day at fault. */
export class InvalidWindows extends Error {
  override readonly name = 'InvalidWindows';

  constructor(
    message: string,
    readonly kind: 'form' | 'order' | 'overlap' | 'time' | 'days' | 'sunday' | 'twice' | 'day' | 'stretches',
    readonly part: string,
  ) {
    super(message);
  }
}

/** Stretches of work in a technician's day: two, with one rest between them, which is lunch as well. */
export const MOST_STRETCHES = 2;

/**
 * Reads `Mon-Fri 07:00-15:30; Sat 08:00-12:00` or `Tue,Thu 08:00-16:00`. An empty text means no access at all.
 * @throws InvalidWindows naming the part that cannot be read
 */
export function parseWeeklyWindows(text: string, mostPerDay = Infinity): WeeklyWindow[] {
  const windows: WeeklyWindow[] = [];
  for (const part of text.split(';').map((each) => each.trim())) {
    if (part === '') continue;
    const match = PART.exec(part);
    if (!match) throw new InvalidWindows(`"${part}" is not like "Mon-Fri 07:00-15:30"`, 'form', part);
    const [, days, h1, m1, h2, m2] = match as unknown as [string, string, string, string, string, string];
    const startMinute = minuteOf(h1, m1, part);
    const endMinute = minuteOf(h2, m2, part);
    if (startMinute >= endMinute) throw new InvalidWindows(`"${part}" ends before it begins`, 'order', part);
    for (const weekday of weekdaysOf(days, part)) windows.push({ weekday, startMinute, endMinute });
  }
  windows.sort((a, b) => a.weekday - b.weekday || a.startMinute - b.startMinute);
  for (let i = 1; i < windows.length; i += 1) {
    const before = windows[i - 1]!;
    const after = windows[i]!;
    if (before.weekday === after.weekday && after.startMinute < before.endMinute) {
      const day = DAYS[after.weekday - 1]!;
      throw new InvalidWindows(`two windows overlap on ${day}`, 'overlap', day);
    }
    if (windows[i - mostPerDay]?.weekday === after.weekday) {
      const day = DAYS[after.weekday - 1]!;
      throw new InvalidWindows(`${day} has more than ${mostPerDay} stretches`, 'stretches', day);
    }
  }
  return windows;
}

function minuteOf(hour: string, minute: string, part: string): number {
  const total = Number(hour) * 60 + Number(minute);
  if (Number(minute) > 59 || total > 1440)
    throw new InvalidWindows(`"${part}" holds a time that does not exist`, 'time', part);
  return total;
}

function weekdaysOf(text: string, part: string): number[] {
  const found = new Set<number>();
  for (const piece of text.split(',').map((each) => each.trim())) {
    const ends = piece.split('-').map((name) => dayIndex(name.trim(), part));
    if (ends.length > 2) throw new InvalidWindows(`"${part}" names days that cannot be read`, 'days', part);
    const [from, to = from] = ends as [number, number?];
    if (to! < from) throw new InvalidWindows(`"${part}" runs past Sunday: write two ranges`, 'sunday', part);
    for (let day = from; day <= to!; day += 1) {
      if (found.has(day)) throw new InvalidWindows(`"${part}" names ${DAYS[day - 1]} twice`, 'twice', part);
      found.add(day);
    }
  }
  return [...found];
}

function dayIndex(name: string, part: string): number {
  const index = name.length < 3 ? -1 : FULL_NAMES.findIndex((day) => day.startsWith(name.toLowerCase()));
  if (index < 0)
    throw new InvalidWindows(
      `"${part}" names a day that cannot be read: use Mon, Tue, Wed, Thu, Fri, Sat, Sun`,
      'day',
      part,
    );
  return index + 1;
}
