import { describe, expect, it } from '@jest/globals';
import { learnTravel, type RecordedDrive } from './learn-travel.js';
import { Random } from './random.js';
import { estimateTrip, type TravelSettings } from './travel.js';

const present: TravelSettings = {
  ...{ detourShort: 1.4, detourMedium: 1.3, detourLong: 1.2, townKmh: 40, openKmh: 72, centsPerKm: 42 },
};
const truth: TravelSettings = { ...present, detourShort: 1.6, detourMedium: 1.45, townKmh: 30, openKmh: 85 };

/** Drives as they are where the truth holds, each a little off. */
function drives(count: number, withMetres: boolean): RecordedDrive[] {
  const random = new Random(5);
  const place = () => ({ latitude: 41 + random.below(400) / 1000, longitude: -94 + random.below(400) / 1000 });
  return Array.from({ length: count }, () => {
    const [from, to] = [place(), place()];
    const { metres } = estimateTrip(from, to, truth);
    const town = Math.min(metres, 10_000);
    const exact = (town / truth.townKmh + (metres - town) / truth.openKmh) * 0.06;
    return { from, to, minutes: exact * (0.9 + random.below(200) / 1000), metres: withMetres ? metres : null };
  });
}

describe('travel settings from recorded drives', () => {
  it('come near the truth with many drives, and tell how much better they are', () => {
    const { settings, errorBefore, errorAfter } = learnTravel(present, drives(400, true));
    expect(settings.townKmh).toBeGreaterThan(28.5);
    expect(settings.townKmh).toBeLessThan(31.5);
    // most of these drives lie in town: the open road is learned at least half-way
    expect(settings.openKmh).toBeGreaterThan(78.5);
    expect(settings.openKmh).toBeLessThan(90);
    expect(settings.detourMedium).toBeGreaterThan(1.42);
    // drives vary by a tenth: no settings could foresee that
    expect(errorAfter).toBeLessThan(0.6 * errorBefore);
  });

  it('move little after three drives, and not at all after none', () => {
    const few = learnTravel(present, drives(3, true)).settings;
    expect(Math.abs(few.townKmh - present.townKmh)).toBeLessThan(5);
    expect(learnTravel(present, []).settings).toEqual(present);
  });

  it('leave out drives with a stop on the way, and drives to the same place', () => {
    const [first] = drives(1, true);
    const odd = [
      { ...first!, minutes: first!.minutes * 10 },
      { ...first!, to: first!.from },
      { ...first!, minutes: Number.NaN },
    ];
    expect(learnTravel(present, odd)).toMatchObject({ settings: present, used: 0 });
  });

  it('learn speeds without any road length', () => {
    const { settings, errorBefore, errorAfter } = learnTravel(present, drives(300, false));
    expect(errorAfter).toBeLessThan(errorBefore);
    expect(settings.detourShort).toBeCloseTo(present.detourShort, 12);
  });
});
