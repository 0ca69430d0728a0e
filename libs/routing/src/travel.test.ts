import { describe, expect, it } from '@jest/globals';
import { closeMatrix, estimateTravel, estimateTrip } from './travel.js';

const settings = {
  detourShort: 1.4,
  detourMedium: 1.3,
  detourLong: 1.2,
  townKmh: 36,
  openKmh: 72,
  centsPerKm: 40,
};

describe('estimateTravel', () => {
  it('follows detour, town and open speed', () => {
    // One degree of latitude on the equator of WGS 84 is 110,574 m: long detour, 132.69 km of road.
    const trip = estimateTrip({ latitude: 0, longitude: 0 }, { latitude: 1, longitude: 0 }, settings);
    expect(trip.metres).toBe(Math.round(110_574.3886 * 1.2));
    expect(trip.minutes).toBe(Math.ceil((10 / 36) * 60 + (122.689 / 72) * 60));
    expect(trip.cents).toBe(Math.round(132.689 * 40));
  });

  it('takes no time to the same place', () => {
    const here = { latitude: 41.6, longitude: -93.6 };
    expect(Array.from(estimateTravel([here, here], settings).minutes)).toEqual([0, 0, 0, 0]);
  });

  it('leaves no detour that is faster than the direct trip', () => {
    const positions = Array.from({ length: 12 }, (_, k) => ({
      latitude: 41 + 0.07 * ((k * 7) % 12),
      longitude: -93 + 0.09 * ((k * 5) % 12),
    }));
    const { minutes, size } = estimateTravel(positions, settings);
    for (let i = 0; i < size; i++) {
      for (let j = 0; j < size; j++) {
        for (let k = 0; k < size; k++) {
          expect(minutes[i * size + j]!).toBeLessThanOrEqual(minutes[i * size + k]! + minutes[k * size + j]!);
        }
      }
    }
  });

  it('closes along the path, with its metres and cents', () => {
    const minutes = Int32Array.of(0, 5, 30, 5, 0, 6, 30, 6, 0);
    const metres = Int32Array.of(0, 50, 90, 50, 0, 60, 90, 60, 0);
    const cents = Int32Array.of(0, 2, 3, 2, 0, 2, 3, 2, 0);
    closeMatrix({ size: 3, minutes, metres, cents });
    expect([minutes[2], metres[2], cents[2]]).toEqual([11, 110, 4]);
  });
});
