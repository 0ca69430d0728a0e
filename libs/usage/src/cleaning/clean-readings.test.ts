import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { simulatedFleet } from '../simulated-fleet.js';
import type { Reading } from '../snapshot.js';
import { cleanReadings } from './clean-readings.js';

/** One machine, a reading every ten days from 1 May 2025. */
function everyTenDays(...hours: number[]): Reading[] {
  return hours.map((each, k) => {
    const date = new Date(Date.UTC(2025, 4, 1 + 10 * k)).toISOString().slice(0, 10);
    return { id: `r${k}`, machineId: 'm', readAt: `${date}T12:00:00`, hours: each, source: 'test' };
  });
}

const codes = (readings: Reading[]) =>
  cleanReadings(readings, []).setAside.map((each) => [each.readingId, each.code, each.suggestedHours]);

describe('one wrong reading', () => {
  test('a slipped decimal is set aside with what was meant', () => {
    expect(codes(everyTenDays(100, 120, 1395, 160, 180))).toEqual([['r2', 'slipped-decimal', 139.5]]);
  });
  test('swapped digits are recognised', () => {
    expect(codes(everyTenDays(300, 320, 430, 360, 380))).toEqual([['r2', 'swapped-digits', 340]]);
  });
  test('a reading below the one before it is backwards; the straight line is suggested', () => {
    expect(codes(everyTenDays(300, 320, 299, 360, 380))).toEqual([['r2', 'backwards', 340]]);
  });
  test('a wrong first or last reading does not condemn the others', () => {
    expect(codes(everyTenDays(4857, 505, 525, 545)).map(([id]) => id)).toEqual(['r0']);
    expect(codes(everyTenDays(485, 505, 525, 5450)).map(([id]) => id)).toEqual(['r3']);
  });
  test('a reading a little too high costs itself, not the good ones after it', () => {
    expect(codes(everyTenDays(100, 120, 171, 160, 170, 190)).map(([id]) => id)).toEqual(['r2']);
  });
});

test('a reading that a person has confirmed is believed, however odd', () => {
  const odd = everyTenDays(300, 320, 299, 360, 380);
  expect(codes(odd)).not.toEqual([]);
  const confirmed = cleanReadings(
    odd.map((each) => (each.id === 'r2' ? { ...each, confirmed: true } : each)),
    [],
  );
  expect(confirmed.setAside.map((each) => each.readingId)).not.toContain('r2');
  expect(confirmed.believed.get('m')!.map((each) => each.readingId)).toContain('r2');
});

test('more than 24 h a day cannot be', () => {
  expect(codes(everyTenDays(100, 110, 120, 400)).map(([, code]) => code)).toEqual(['impossible-rate']);
});

test('a new meter nobody told of is proposed once later readings confirm it', () => {
  const doubtful = cleanReadings(everyTenDays(900, 920, 940, 8), []);
  expect(doubtful.proposedMeterChanges).toEqual([]);
  expect(doubtful.setAside.map((each) => each.readingId)).toEqual(['r3']);
  const confirmed = cleanReadings(everyTenDays(900, 920, 940, 8, 27, 45), []);
  expect(confirmed.setAside).toEqual([]);
  expect(confirmed.proposedMeterChanges).toEqual([
    { machineId: 'm', changedAt: '2025-05-31', oldHours: 940, newHours: 0 },
  ]);
  expect(confirmed.believed.get('m')!.at(-1)!.lifetimeHours).toBeCloseTo(985, 9);
});

test('a first reading far above those after it tells of a meter changed, unless a slipped decimal explains it', () => {
  const changed = cleanReadings(everyTenDays(583, 0, 0, 9, 31), []);
  expect(changed.setAside).toEqual([]);
  expect(changed.proposedMeterChanges.map((each) => each.oldHours)).toEqual([583]);
  expect(changed.believed.get('m')!.at(-1)!.lifetimeHours).toBeCloseTo(614, 9);
  const slipped = cleanReadings(everyTenDays(58, 6.1, 7, 9, 31), []);
  expect(slipped.proposedMeterChanges).toEqual([]);
  expect(slipped.setAside.map((each) => each.code)).toEqual(['slipped-decimal']);
});

test('a five-figure meter rolls over', () => {
  const { believed, setAside, proposedMeterChanges } = cleanReadings(everyTenDays(9970, 9990, 10, 30), []);
  expect(setAside).toEqual([]);
  expect(proposedMeterChanges).toEqual([]);
  expect(believed.get('m')!.map((each) => each.lifetimeHours)).toEqual([9970, 9990, 10010, 10030]);
});

test('a meter of which the rollover is told starts again there, and nowhere else', () => {
  const lifetimes = (readings: Reading[], meterRolloverHours: number | null) =>
    cleanReadings(readings, [], { machines: [{ id: 'm', meterRolloverHours }] }).believed.get('m')!;
  const inThousands = everyTenDays(960, 980, 0.5, 21, 41);
  expect(lifetimes(inThousands, 1000).map((each) => each.lifetimeHours)).toEqual([960, 980, 1000.5, 1021, 1041]);
  // told of nothing, it looks like a new meter, which had no hours to run before it was fitted
  expect(lifetimes(inThousands, null).map((each) => each.lifetimeHours)).toEqual([960, 980, 980.5, 1001, 1021]);
  const inTenThousands = everyTenDays(9970, 9990, 10, 30);
  expect(lifetimes(inTenThousands, 100_000).at(-1)!.lifetimeHours).toBe(10_020);
  // what it shows beyond that figure is no rollover's doing
  expect(lifetimes(everyTenDays(1480, 1500, 1520, 1540), 1000).at(-1)!.lifetimeHours).toBe(1540);
});

test('the same reading twice is one; a reading of tomorrow waits', () => {
  const [a, b] = everyTenDays(100, 120);
  expect(codes([a!, { ...a!, id: 'again' }, b!]).map(([, code]) => code)).toEqual(['duplicate']);
  const late = cleanReadings([a!, b!], [], { asOf: '2025-05-05' });
  expect(late.setAside.map((each) => each.code)).toEqual(['in-future']);
});

test('a told meter change never changes lifetime hours', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 4, maxLength: 30 }),
      fc.nat(),
      fc.integer({ min: 0, max: 50 }),
      (tenths, where, newHours) => {
        let sum = 5000;
        const lifetimes = tenths.map((step) => {
          sum += step;
          return sum / 10;
        });
        const plain = everyTenDays(...lifetimes);
        const at = 1 + (where % (lifetimes.length - 1));
        const old = lifetimes[at - 1]!;
        const changed = plain.map((each, k) => (k < at ? each : { ...each, hours: each.hours - old + newHours }));
        const changedAt = new Date(Date.UTC(2025, 4, 1 + 10 * at - 5)).toISOString().slice(0, 10);
        const run = cleanReadings(changed, [{ machineId: 'm', changedAt, oldHours: old, newHours }]);
        run.believed.get('m')!.forEach((each, k) => {
          expect(each.lifetimeHours).toBeCloseTo(lifetimes[k]!, 6);
        });
        expect(run.setAside).toEqual([]);
      },
    ),
    { seed: 7, numRuns: 200 },
  );
});

test('order of arrival does not matter, lifetime hours never fall, every reading is judged', () => {
  const reading = fc.record({
    day: fc.integer({ min: 0, max: 90 }),
    hours: fc.float({ min: 0, max: 3000, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(reading, { maxLength: 40 }), fc.infiniteStream(fc.nat()), (rows, keys) => {
      const readings = rows.map(({ day, hours }, k): Reading => {
        const date = new Date(Date.UTC(2025, 4, 1 + day)).toISOString().slice(0, 10);
        return { id: `r${k}`, machineId: 'm', readAt: `${date}T12:00:00`, hours, source: 'test' };
      });
      const shuffled = readings
        .map((each) => ({ each, key: keys.next().value as number }))
        .sort((a, b) => a.key - b.key)
        .map(({ each }) => each);
      const one = cleanReadings(readings, []);
      expect(cleanReadings(shuffled, [])).toEqual(one);
      const line = one.believed.get('m') ?? [];
      expect(line.length + one.setAside.length).toBe(readings.length);
      line.forEach((each, k) => {
        if (k > 0) expect(each.lifetimeHours).toBeGreaterThanOrEqual(line[k - 1]!.lifetimeHours);
      });
    }),
    { seed: 11, numRuns: 150 },
  );
});

test.each([
  { seed: 1, latitude: 52 },
  { seed: 2, latitude: -35 },
])('in a simulated fleet (seed $seed) nearly all wrong readings are found and hardly a good one is lost', (place) => {
  const { snapshot, wrong } = simulatedFleet({
    ...place,
    machines: 120,
    from: '2023-03-01',
    asOf: '2025-02-20',
    errorShare: 0.01,
  });
  const aside = cleanReadings(snapshot.readings, []).setAside;
  const found = aside.filter((each) => wrong.has(each.readingId)).length;
  expect(wrong.size).toBeGreaterThan(50);
  console.info(
    `found ${found} of ${wrong.size}, wrongly set aside ${aside.length - found} of ${snapshot.readings.length}`,
  );
  expect(found / wrong.size).toBeGreaterThan(0.85);
  expect((aside.length - found) / snapshot.readings.length).toBeLessThan(0.003);
});
