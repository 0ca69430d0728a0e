import { expect, test } from '@jest/globals';
import { belowBestRule, overallSentence, qualitySentence } from './quality-sentence.js';

const nothing = {
  judged: 0,
  coverage50: null,
  coverage80: null,
  coverage95: null,
  pinballHours: null,
  baselinePinballHours: null,
  biasHours: null,
};
const judged = (daysAhead: number, count: number, pinballHours: number) => ({
  daysAhead,
  judged: count,
  coverage50: 0.5,
  coverage80: 0.7904,
  coverage95: 0.95,
  pinballHours,
  baselinePinballHours: { lastTwo: 9, wholeLife: 8, lastYear: 5 },
  biasHours: 0,
});

test('the month ahead speaks for all, with how a rule of thumb would have done', () => {
  expect(overallSentence([judged(7, 5000, 1), judged(30, 1240, 3)])).toBe(
    'Of 1,240 past forecasts 30 days ahead, 79 % fell inside the 80 % range. Their errors were 40 % smaller than those of the best rule of thumb.',
  );
  expect(overallSentence([judged(30, 10, 6)])).toMatch(/20 % larger/);
});

test('another distance speaks when the month has not been judged', () => {
  expect(overallSentence([judged(7, 12, 1), { daysAhead: 30, ...nothing }])).toMatch(/^Of 12 past forecasts 7 days/);
  expect(qualitySentence(judged(14, 1, 1))).toMatch(/^Of 1 past forecast 14 days/);
});

test('nothing is claimed when nothing was judged', () => {
  const row = { daysAhead: 30, ...nothing };
  expect(overallSentence([row])).toBe('No past forecast can be judged yet: more readings are needed.');
  expect(qualitySentence(row)).toMatch(/^No past forecast 30 days ahead/);
  expect(belowBestRule(row)).toBeNull();
});
