import { describe, expect, it } from '@jest/globals';
import { wallClockOf } from './local-time.js';
import { nowAt } from './shop-now.js';

describe('the present of a shop whose calendar stands apart', () => {
  const timeZone = 'America/Chicago';

  it('has the hour of the world in every hour of a winter day, its calendar in summer', () => {
    for (let hour = 0; hour < 24; hour++) {
      const now = new Date(Date.parse('2026-11-28T06:10:00Z') + hour * 3_600_000);
      const clock = wallClockOf(nowAt({ clockShiftDays: -177, timeZone }, now), timeZone);
      expect(clock).toBe(`2026-06-04T${String(hour).padStart(2, '0')}:10:00`);
    }
  });

  it("is the world's where it does not stand apart", () => {
    const now = new Date('2026-11-28T05:25:00.123Z');
    expect(nowAt({ clockShiftDays: 0, timeZone }, now)).toEqual(now);
  });
});
