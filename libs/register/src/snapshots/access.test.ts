import { describe, expect, it } from '@jest/globals';
import type { Register } from '../register.js';
import { aRegister, aSite, aTechnician } from '../test-support/a-register.js';
import { hindranceOf } from './access.js';

/** Tuesday; the site is open from 07:00 to 15:30, the technician works. */
const VISIT = { siteId: 'S1', technicianId: 'T1', date: '2014-06-17', from: '08:00', to: '09:30' };
const closed = { from: VISIT.date, to: '2014-06-18', reason: '' };
const event = { siteId: 'S1', date: VISIT.date, name: 'fair' };
const bar = { siteId: 'S1', technicianId: 'T1', date: VISIT.date };
const why = (changes: Partial<Register> = {}, visit = VISIT) => hindranceOf(aRegister(changes), visit);

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
