import { expect, test } from '@jest/globals';
import { standingAnswer } from './standing-answer.js';

const answer = {
  id: 'a',
  version: 1,
  siteId: 's',
  visitId: 'v',
  aboutStart: '2026-06-09T14:00:00.000Z',
  aboutDate: '2026-06-09',
  reason: '',
  days: [],
  saidAt: '2026-06-05T14:00:00.000Z',
  reply: '',
  repliedAt: null,
};

test('a word counts for the time of which it was said, a wish until it is answered', () => {
  const suits = { ...answer, kind: 'suits', state: 'noted' } as const;
  const wish = { ...answer, kind: 'move', state: 'open' } as const;
  expect(standingAnswer({ answer: suits, startAt: answer.aboutStart })).toBe('suits');
  expect(standingAnswer({ answer: suits, startAt: '2026-06-09T15:00:00.000Z' })).toBeNull();
  expect(standingAnswer({ answer: wish, startAt: '2026-06-09T15:00:00.000Z' })).toBe('asked');
  expect(standingAnswer({ answer: { ...wish, state: 'declined' }, startAt: answer.aboutStart })).toBeNull();
  expect(standingAnswer({ answer: null, startAt: answer.aboutStart })).toBeNull();
});
