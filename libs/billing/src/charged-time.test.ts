import { expect, test } from '@jest/globals';
import { isByTheHour, minutesOf } from './charged-time.js';

test('time that is charged is told in minutes, whichever unit the line counts in', () => {
  expect(minutesOf({ quantity: '0.15', unitCode: 'HUR' })).toBe(9);
  expect(minutesOf({ quantity: '1.1', unitCode: 'HUR' })).toBe(66); // 1.1 × 60 is not 66 in binary
  expect(minutesOf({ quantity: '22', unitCode: 'MIN' })).toBe(22);
  expect(minutesOf({ quantity: '0.333', unitCode: 'HUR' })).toBeNull();
  expect(minutesOf({ quantity: '2', unitCode: 'C62' })).toBeNull();
  expect(isByTheHour({ priceBase: '60', unitCode: 'MIN' })).toBe(true);
  expect(isByTheHour({ priceBase: '1', unitCode: 'HUR' })).toBe(true);
  expect(isByTheHour({ priceBase: '1', unitCode: 'MIN' })).toBe(false);
});
