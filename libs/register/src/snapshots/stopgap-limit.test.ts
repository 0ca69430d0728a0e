import { describe, expect, it } from '@jest/globals';
import type { OpenStopgap, Register } from '../register.js';
import { aForecast, aPart, aRegister, aStopgap } from '../test-support/a-register.js';
import { planningSnapshot } from './planning-snapshot.js';
import { limitAhead, stopgapLimit } from './stopgap-limit.js';

const SPAN = { asOf: '2014-06-15', firstDate: '2014-06-16', days: 7 };

function owed(stopgap: Partial<OpenStopgap>, changes: Partial<Register> = {}, p10 = '2014-06-19') {
  const due = aForecast({ itemId: 'G1', kind: 'stopgap', p10 });
  return planningSnapshot(aRegister({ stopgaps: [aStopgap(stopgap)], ...changes }), [due], SPAN).items[0]!;
}

describe('a limit set anew', () => {
  const days = (hours: number) => Array.from({ length: 5 }, (_, day) => 100 + hours * (day + 1));
  const usage = { asOf: '2014-06-15', lifetimeHoursNow: 100, p10: days(2), p50: days(4), p90: days(8) };
  const limit = { limitOn: null, limitHours: 8 };

  it('is reached when the machine has run so many hours from that day on', () => {
    expect(limitAhead(limit, '2014-06-15', usage)).toEqual({ p10: '2014-06-16', p50: '2014-06-17', p90: '2014-06-19' });
    expect(limitAhead(limit, '2014-06-17', usage)).toEqual({ p10: '2014-06-17', p50: '2014-06-19', p90: null });
  });

  it('is its date where that comes first, or where the hours are not within what is forecast', () => {
    const both = { limitOn: '2014-06-18', limitHours: 8 };
    expect(limitAhead(both, '2014-06-15', usage)).toEqual({ p10: '2014-06-16', p50: '2014-06-17', p90: '2014-06-18' });
    const byDate = { p10: '2014-06-18', p50: '2014-06-18', p90: '2014-06-18' };
    expect(limitAhead(both, '2014-06-15', null)).toEqual(byDate);
    expect(limitAhead(both, '2014-06-14', usage)).toEqual(byDate);
    expect(limitAhead(limit, '2014-06-15', null)).toEqual({ p10: null, p50: null, p90: null });
  });
});

describe('the limit of a stopgap', () => {
  it('is the date told or the early end of its hours, whichever comes first', () => {
    expect(stopgapLimit({ limitOn: '2014-06-20', limitHours: null }, '2014-06-18')).toBe('2014-06-20');
    expect(stopgapLimit({ limitOn: '2014-06-20', limitHours: 20 }, '2014-06-18')).toBe('2014-06-18');
    expect(stopgapLimit({ limitOn: '2014-06-17', limitHours: 20 }, '2014-06-18')).toBe('2014-06-17');
    expect(stopgapLimit({ limitOn: null, limitHours: 20 }, null)).toBeNull();
    expect(stopgapLimit({ limitOn: null, limitHours: null }, '2014-06-18')).toBeNull();
  });

  it('is the last day of its return, which had better be late than left out', () => {
    expect(owed({})).toMatchObject({ latestDate: '2014-06-19', betterLate: true, mustDo: true });
    expect(owed({ limitOn: '2014-06-18' })).toMatchObject({ latestDate: '2014-06-18' });
    const inTime = { parts: [aPart({ onHand: 0, leadDays: 4 })] };
    expect(owed({ partId: 'P1' }, inTime)).toMatchObject({ releaseDate: '2014-06-19', latestDate: '2014-06-19' });
  });

  it('binds nothing where it is past, after these days, or before the part is there, which is said', () => {
    expect(owed({}, {}, '2014-06-15').latestDate).toBeUndefined();
    expect(owed({}, {}, '2014-06-23').latestDate).toBeUndefined();
    const late = owed({ partId: 'P1' }, { parts: [aPart({ onHand: 0, leadDays: 5 })] });
    expect(late.latestDate).toBeUndefined();
    expect(late).toMatchObject({ releaseDate: '2014-06-20', mustDo: true });
    expect(late.because).toMatch(/It cannot be done by its limit on 2014-06-19: its part comes later\.$/);
  });

  it('comes after an event that is before it', () => {
    const events = [{ siteId: 'S1', date: '2014-06-18', fromMinute: 0, name: 'final' }];
    expect(owed({}, { events })).toMatchObject({ latestDate: '2014-06-17', betterLate: false });
    const later = [{ ...events[0]!, date: '2014-06-21' }];
    expect(owed({}, { events: later })).toMatchObject({ latestDate: '2014-06-19', betterLate: true });
  });
});
