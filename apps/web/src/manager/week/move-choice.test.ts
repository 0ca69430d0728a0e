import { expect, test } from '@jest/globals';
import type { MovePrices } from '../../data/types.js';
import { closedDay, nearestPlace, placeAfterKey } from './move-choice.js';

const minuteOf = (text: string) => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));
const place = (technicianId: string, order: number, startAt: string) =>
  ({
    technicianId,
    date: 'mon',
    order,
    startAt,
    endAt: startAt,
    cents: 0,
    isWhereItStands: false,
    breaks: [],
    shifts: [],
  }) as MovePrices['places'][number];
const prices = {
  visitId: 'v',
  stamp: 's',
  places: [place('a', 0, '08:00'), place('a', 1, '10:00'), place('c', 0, '07:30'), place('c', 1, '09:45')],
  closed: [{ technicianId: 'b', date: 'mon', obstacle: 'time' }],
} as MovePrices;
const days = ['a', 'b', 'c'].map((technicianId) => ({ technicianId, date: 'mon' }));

test('a pointer finds the place nearest in time on the day under it, and why a day is closed', () => {
  expect(nearestPlace(prices, 'a', 'mon', 530, minuteOf)?.order).toBe(0);
  expect(nearestPlace(prices, 'a', 'mon', 560, minuteOf)?.order).toBe(1);
  expect(nearestPlace(prices, 'b', 'mon', 560, minuteOf)).toBeNull();
  expect(closedDay(prices, 'b', 'mon')?.obstacle).toBe('time');
});

test('arrow keys go through the order of a day and over closed days, and stop at the ends', () => {
  const at = (key: Parameters<typeof placeAfterKey>[3], now = prices.places[1]!) =>
    placeAfterKey(prices, days, now, key, minuteOf);
  expect(at('ArrowLeft')).toBe(prices.places[0]);
  expect(at('ArrowRight')).toBe(prices.places[1]);
  expect(at('ArrowDown')).toBe(prices.places[3]);
  expect(at('ArrowUp')).toBe(prices.places[1]);
  expect(at('ArrowUp', prices.places[2])).toBe(prices.places[0]);
});
