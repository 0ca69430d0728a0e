import { describe, expect, it } from '@jest/globals';
import ICAL from 'ical.js';
import type { CalendarEntry } from './calendar-entry.js';
import { writeCalendar } from './write-calendar.js';

const entry = (changes: Partial<CalendarEntry> = {}): CalendarEntry => ({
  uid: '6b1f6f0e-2d6a-4c5e-9d55-0f6a3a1c0001',
  sequence: 3,
  changedAt: new Date('2026-04-01T08:00:00Z'),
  start: new Date('2026-04-07T13:00:00Z'),
  end: new Date('2026-04-07T15:30:00Z'),
  status: 'confirmed',
  summary: 'Depot: M1',
  description: 'M1: Sharpen blades',
  place: { name: 'Depot', latitude: 30.2672, longitude: -97.7431 },
  ...changes,
});
const write = (...entries: CalendarEntry[]) => writeCalendar({ name: 'Visits', timeZone: 'America/Chicago', entries });
const unfold = (text: string) => text.replace(/\r\n[ \t]/g, '');
const line = (text: string, name: string) =>
  unfold(text)
    .split('\r\n')
    .find((each) => each.startsWith(`${name}:`) || each.startsWith(`${name};`));

describe('a calendar', () => {
  it('reads back equal in ical.js', () => {
    const entries = [
      entry(),
      entry({ uid: 'b', status: 'tentative', description: '' }),
      entry({ uid: 'c', status: 'cancelled' }),
    ];
    const calendar = new ICAL.Component(ICAL.parse(write(...entries)));
    const events = calendar.getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));
    expect(
      events.map((event) => ({
        uid: event.uid.replace('@visits.deckround.example', ''),
        sequence: event.sequence,
        start: event.startDate.toJSDate(),
        end: event.endDate.toJSDate(),
        status: String(event.component.getFirstPropertyValue('status')).toLowerCase(),
        summary: event.summary,
        description: event.description ?? '',
        location: event.location,
        changedAt: (event.component.getFirstPropertyValue('dtstamp') as ICAL.Time).toJSDate(),
        geo: event.component.getFirstPropertyValue('geo'),
      })),
    ).toEqual(
      entries.map(({ place, ...each }) => ({
        ...each,
        location: place.name,
        geo: [place.latitude, place.longitude],
      })),
    );
  });

  // ical.js takes an event without them (RFC 5545, 3.6.1 demands UID and DTSTAMP).
  it('has what RFC 5545 demands, ends with a line end and holds no bare line feed', () => {
    const text = write(entry());
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
    for (const name of ['PRODID', 'UID', 'DTSTAMP', 'DTSTART', 'DTEND', 'SEQUENCE', 'STATUS'])
      expect(line(text, name)).toBeDefined();
    expect(line(text, 'VERSION')).toBe('VERSION:2.0');
    expect(line(text, 'METHOD')).toBe('METHOD:PUBLISH');
    expect(line(text, 'DTSTAMP')).toMatch(/Z$/);
    expect(line(text, 'REFRESH-INTERVAL')).toBe('REFRESH-INTERVAL;VALUE=DURATION:PT15M');
    expect(line(text, 'X-PUBLISHED-TTL')).toBe('X-PUBLISHED-TTL:PT15M');
  });

  // RFC 5545, 3.3.5, form 2.
  it('tells instants in UTC', () => {
    expect(line(write(entry()), 'DTSTART')).toBe('DTSTART:20260407T130000Z');
  });

  // RFC 5545, 3.3.11.
  it.each([
    ['12 Depot Rd; Gate B, Anytown', '12 Depot Rd\\; Gate B\\, Anytown'],
    ['deck \\ spindles', 'deck \\\\ spindles'],
    ['Line1\nLine2', 'Line1\\nLine2'],
    ['Line1\r\nLine2', 'Line1\\nLine2'],
    ['a: "b"', 'a: "b"'],
    ['bell\u0007 and nothing\u0000', 'bell and nothing'],
  ])('escapes %j', (text, value) => {
    expect(line(write(entry({ summary: text })), 'SUMMARY')).toBe(`SUMMARY:${value}`);
  });

  // RFC 5545, 3.1: at most 75 octets a line, and no character is split.
  it('folds by octets', () => {
    const summary = 'é'.repeat(80) + '€'.repeat(40) + '😀'.repeat(30);
    const text = write(entry({ summary }));
    for (const each of text.split('\r\n')) expect(Buffer.byteLength(each)).toBeLessThanOrEqual(75);
    expect(text).not.toContain('\ufffd');
    expect(Buffer.from(text).toString('utf8')).toBe(text);
    expect(line(text, 'SUMMARY')).toBe(`SUMMARY:${summary}`);
  });

  it('is the same to the byte when nothing has changed', () => {
    expect(write(entry())).toBe(write(entry()));
  });
});
