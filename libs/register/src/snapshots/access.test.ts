import { describe, expect, it } from '@jest/globals';
import type { Register } from '../register.js';
import { aRegister, aSite, aTechnician } from '../test-support/a-register.js';
import { hindranceOf } from './access.js';

/** Tuesday; the site is open from 07:00 to 15:30, the technician works from 07:00 to 16:00 and an hour longer at most. */
const VISIT = { siteId: 'S1', technicianId: 'T1', date: '2014-06-17', from: '08:00', to: '09:30' };
/** Of the technician; that of the site is the visit's. */
const EAST = 'America/New_York';
const later = (clock: string) => `${String(Number(clock.slice(0, 2)) + 1).padStart(2, '0')}${clock.slice(2)}`;
const closed = { from: VISIT.date, to: '2014-06-18', reason: '' };
const event = { siteId: 'S1', date: VISIT.date, name: 'fair' };
const bar = { siteId: 'S1', technicianId: 'T1', date: VISIT.date };
const why = (changes: Partial<Register> = {}, { from, to, ...visit } = VISIT) =>
  hindranceOf(aRegister(changes), {
    ...visit,
    clock: (zone) => (zone === EAST ? { from: later(from), to: later(to) } : { from, to }),
  });
const working = (startMinute: number, endMinute: number, timeZone = 'America/Chicago') => ({
  technicians: [aTechnician({ timeZone, shifts: [{ weekday: 2, startMinute, endMinute }], maxOvertimeMinutes: 60 })],
});

/** Around a rest on Tuesday: overtime comes after the second stretch alone. */
const resting = (restStart: number, restEnd: number) => ({
  technicians: [
    aTechnician({
      shifts: [
        { weekday: 2, startMinute: restEnd, endMinute: 960 },
        { weekday: 2, startMinute: 420, endMinute: restStart },
      ],
      maxOvertimeMinutes: 60,
    }),
  ],
});

describe('a visit where it stands', () => {
  it('can be made', () => {
    expect(why()).toBeNull();
    expect(why({}, { ...VISIT, from: '07:00', to: '15:30' })).toBeNull();
  });

  it.each<[string, Partial<Register>, string | null]>([
    ['its technician is away', { technicians: [aTechnician({ absences: [closed] })] }, 'technician-away'],
    [
      'its technician was away before',
      { technicians: [aTechnician({ absences: [{ ...closed, to: '2014-06-16' }] })] },
      null,
    ],
    ['its technician has left', { technicians: [aTechnician({ id: 'T2' })] }, 'technician-off'],
    [
      'its technician works on other days',
      { technicians: [aTechnician({ shifts: [{ weekday: 1, startMinute: 420, endMinute: 960 }] })] },
      'technician-off',
    ],
    ['its technician begins later by now', working(481, 960), 'technician-off'],
    ['its technician begins when it begins', working(480, 960), null],
    ['its technician goes before it ends', working(420, 509), 'technician-off'],
    ['its technician can stay so long', working(420, 510), null],
    ['its technician begins earlier on another clock', working(540, 960, EAST), null],
    ['its technician begins later on another clock', working(541, 960, EAST), 'technician-off'],
    ['its technician rests once it has ended', resting(570, 780), null],
    ['its technician rests before it ends', resting(569, 780), 'technician-off'],
    ['its technician has rested when it begins', resting(450, 480), null],
    ['its technician still rests when it begins', resting(450, 481), 'technician-off'],
    ['its site is closed', { sites: [aSite({ blackouts: [closed] })] }, 'site-closed'],
    [
      'its site opens later by now',
      { sites: [aSite({ access: [{ weekday: 2, startMinute: 481, endMinute: 930 }] })] },
      'site-closed',
    ],
    ['an event begins before it ends', { events: [{ ...event, fromMinute: 569 }] }, 'site-closed'],
    ['an event begins when it ends', { events: [{ ...event, fromMinute: 570 }] }, null],
    ['its technician is barred that day', { bars: [bar] }, 'barred'],
    ['everybody is barred that day', { bars: [{ ...bar, technicianId: null }] }, 'barred'],
    ['its technician is barred for good', { bars: [{ ...bar, date: null }] }, 'barred'],
    ['somebody else is barred', { bars: [{ ...bar, technicianId: 'T2' }] }, null],
    ['it is barred on another day', { bars: [{ ...bar, date: '2014-06-18' }] }, null],
    ['another site is barred', { bars: [{ ...bar, siteId: 'S2' }] }, null],
  ])('%s', (_name, changes, expected) => {
    expect(why(changes)).toBe(expected);
  });
});
