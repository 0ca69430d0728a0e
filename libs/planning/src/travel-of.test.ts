import { expect, test } from '@jest/globals';
import { generateSnapshot } from './test-support/generate-snapshot.js';
import { travelOf } from './travel-of.js';

const settings = { seed: 1, sites: 4, machinesPerSite: 1, items: 2, technicians: 1, days: 1 };

test('the same places are reckoned once; a place or a speed that changes makes a table of its own', () => {
  const snapshot = generateSnapshot(settings);
  const first = travelOf(snapshot);
  expect(travelOf(generateSnapshot(settings))).toBe(first);
  const [moved, ...others] = snapshot.sites;
  const elsewhere = travelOf({ ...snapshot, sites: [{ ...moved!, latitude: moved!.latitude + 1 }, ...others] });
  expect(elsewhere.minutes[1]).not.toBe(first.minutes[1]);
  const slower = travelOf({ ...snapshot, travel: { ...snapshot.travel, townKmh: 1 } });
  expect(slower.minutes[1]).toBeGreaterThan(first.minutes[1]!);
});
