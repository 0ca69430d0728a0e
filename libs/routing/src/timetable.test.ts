import { describe, expect, it } from '@jest/globals';
import { Random } from './random.js';
import { earliestReturn, type TimetableVisit, timetable } from './timetable.js';

const anyTime = [{ open: 0, last: 1440, close: 1440 }];

describe('timetable', () => {
  it('leaves as late as the first window allows', () => {
    const day = { shiftStart: 420, latestReturn: 960, lunch: null };
    const visits: TimetableVisit[] = [{ drive: 30, service: 60, windows: [{ open: 540, last: 600, close: 700 }] }];
    expect(timetable(day, visits, 30)).toMatchObject({
      leave: 510,
      arrive: [540],
      start: [540],
      end: [600],
      return: 630,
    });
  });

  it('needs no lunch when it is back before lunch must start', () => {
    const day = { shiftStart: 420, latestReturn: 720, lunch: { minutes: 30, from: 660, to: 720 } };
    expect(timetable(day, [{ drive: 10, service: 200, windows: anyTime }], 10)?.lunch).toBeNull();
  });

  it('rests once, within its hours, and never during work, on 3,000 random routes', () => {
    const random = new Random(9);
    let drivable = 0;
    for (let n = 0; n < 3000; n++) {
      const day = { shiftStart: 420, latestReturn: 930, lunch: { minutes: 30, from: 660, to: 750 } };
      const visits: TimetableVisit[] = Array.from({ length: 1 + random.below(5) }, () => {
        const open = 400 + random.below(300);
        const close = open + 60 + random.below(300);
        return { drive: random.below(50), service: 10 + random.below(80), windows: [{ open, last: close, close }] };
      });
      const home = random.below(40);
      const times = timetable(day, visits, home);
      // However late it leaves, it is back no later than when it leaves at once.
      expect(earliestReturn(day, visits, home)).toBe(times?.return ?? null);
      const unbounded = visits.map((visit) => ({
        ...visit,
        windows: visit.windows.map(({ open, close }) => ({ open, close })),
      }));
      expect(timetable(day, unbounded, home)).toEqual(times);
      if (!times) continue;
      drivable++;
      expect(times.leave).toBeGreaterThanOrEqual(day.shiftStart);
      expect(times.return).toBeLessThanOrEqual(day.latestReturn);
      if (times.return > 750) expect(times.lunch).not.toBeNull();
      if (!times.lunch) continue;
      expect(times.lunch.from).toBeGreaterThanOrEqual(660);
      expect(times.lunch.from).toBeLessThanOrEqual(750);
      visits.forEach((_, k) => {
        expect(times.lunch!.from >= times.end[k]! || times.lunch!.to <= times.start[k]!).toBe(true);
      });
    }
    expect(drivable).toBeGreaterThan(300);
  });

  it('says so when a route cannot be driven', () => {
    const day = { shiftStart: 420, latestReturn: 500, lunch: null };
    expect(timetable(day, [{ drive: 60, service: 60, windows: anyTime }], 60)).toBeNull();
  });
});
