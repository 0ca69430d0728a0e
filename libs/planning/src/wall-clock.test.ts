import { describe, expect, it } from '@jest/globals';
import { localToMinutes } from './check/local-time.js';
import { WallClock } from './wall-clock.js';

describe('WallClock', () => {
  it('counts 23 hours on the spring changeover day and 25 on the autumn one', () => {
    const spring = new WallClock('America/Chicago', '2014-03-09');
    const autumn = new WallClock('America/Chicago', '2014-11-02');
    expect(spring.minutes('America/Chicago', '2014-03-09', '24:00')).toBe(23 * 60);
    expect(autumn.minutes('America/Chicago', '2014-11-02', '24:00')).toBe(25 * 60);
  });

  it('takes the first of two equal clocks', () => {
    const clock = new WallClock('America/Chicago', '2014-11-02');
    expect(clock.minutes('America/Chicago', '2014-11-02', '01:30')).toBe(90);
  });

  it('agrees with the checker on every half hour of a year in three zones', () => {
    for (const zone of ['America/Chicago', 'Europe/Berlin', 'Australia/Sydney']) {
      const clock = new WallClock(zone, '2014-01-01');
      const origin = localToMinutes(zone, '2014-01-01', '00:00');
      for (let day = 0; day < 365; day++) {
        const date = new Date(Date.UTC(2014, 0, 1 + day)).toISOString().slice(0, 10);
        for (const time of ['00:00', '01:30', '02:00', '02:30', '03:00', '07:00', '24:00']) {
          expect(clock.minutes(zone, date, time)).toBe(localToMinutes(zone, date, time) - origin);
        }
      }
    }
  });

  it('writes instants with the offset of the place', () => {
    const clock = new WallClock('America/Chicago', '2014-06-16');
    expect(clock.instant(485, 'America/Chicago')).toBe('2014-06-16T08:05:00-05:00');
    expect(clock.instant(485, 'America/Denver')).toBe('2014-06-16T07:05:00-06:00');
  });
});
