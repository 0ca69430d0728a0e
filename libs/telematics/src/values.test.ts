import { describe, expect, it } from '@jest/globals';
import { hoursOf, instantOf } from './values.js';

describe('hours', () => {
  // ISO 8601-1, 5.5.2: all three are 412 hours and 21 minutes.
  it.each(['PT412H21M', 'P17DT4H21M', 'PT1484460S', '412.35'])('of %s are 412.35', (told) => {
    expect(hoursOf(told)).toBe('412.35');
  });

  it.each([
    ['PT1S', '0.0003'],
    ['PT20M', '0.3333'],
    ['PT40M', '0.6667'],
    ['P1D', '24'],
    ['0', '0'],
  ])('of %s are %s', (told, hours) => expect(hoursOf(told)).toBe(hours));

  it.each(['P', 'PT', 'P1DT', 'P1Y', 'P1M', 'PT1000000H', '999999', '999999.999', '1.', '.5', '+5', '1e3'])(
    'of %s are none',
    (told) => {
      expect(hoursOf(told)).toBeNull();
    },
  );
});

describe('an instant', () => {
  // RFC 3339, 5.8: examples of the text.
  it.each([
    ['1996-12-19T16:39:57-08:00', '1996-12-20T00:39:57.000Z'],
    ['2026-04-07t11:58:00.123456z', '2026-04-07T11:58:00.123Z'],
    ['2028-02-29T00:00:00Z', '2028-02-29T00:00:00.000Z'],
  ])('%s is %s', (told, instant) => expect(instantOf(told)).toBe(instant));

  it.each([
    '0001-01-01T00:00:00Z',
    '1985-04-12T23:20:50.52Z',
    '2026-02-29T00:00:00Z',
    '2026-04-07 11:58:00Z',
    '2026-04-07T11:58:60Z',
    '2026-04-07T11:58:00+25:00',
  ])('%s is none', (told) => expect(instantOf(told)).toBeNull());
});
