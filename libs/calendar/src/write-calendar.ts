import ical, { ICalCalendarMethod, ICalEventStatus } from 'ical-generator';
import type { Calendar, CalendarEntry } from './calendar-entry.js';

/** How often a subscriber is asked to look again, seconds. */
const REFRESH_SECONDS = 15 * 60;
const DOMAIN = 'visits.deckround.example';

const STATUS = {
  confirmed: ICalEventStatus.CONFIRMED,
  tentative: ICalEventStatus.TENTATIVE,
  cancelled: ICalEventStatus.CANCELLED,
} as const;

/**
 * An iCalendar object (RFC 5545; REFRESH-INTERVAL by RFC 7986) to be published. Times are UTC: the library writes local
 * ones without their zone. It also leaves out the line end after the last line, which is put there.
 */
export function writeCalendar({ name, timeZone, entries }: Calendar): string {
  const calendar = ical({
    name: plain(name),
    prodId: { company: 'Deckround', product: 'Visits', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    ttl: REFRESH_SECONDS,
  });
  calendar.x('X-WR-TIMEZONE', timeZone);
  for (const entry of entries) calendar.createEvent(eventOf(entry));
  return `${calendar.toString()}\r\n`;
}

function eventOf({ uid, sequence, changedAt, start, end, status, summary, description, place }: CalendarEntry) {
  return {
    id: `${uid}@${DOMAIN}`,
    sequence,
    stamp: changedAt,
    lastModified: changedAt,
    start,
    end,
    status: STATUS[status],
    summary: plain(summary),
    ...(description !== '' && { description: plain(description) }),
    location: { title: plain(place.name), geo: { lat: place.latitude, lon: place.longitude } },
  };
}

/** RFC 5545, 3.1: text holds no control characters but tab; line ends are written as \n. */
function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is taken out
  return text.replace(/\r\n?/g, '\n').replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');
}
