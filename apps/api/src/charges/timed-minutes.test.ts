import type { Tx } from '@deckround/store';
import { describe, expect, it } from '@jest/globals';
import { timedMinutes, workedMinutes } from './timed-minutes.js';

const span = (technicianId: string | null, from: string, to: string) => ({
  technicianId,
  startedAt: new Date(`2026-06-08T${from}Z`),
  endedAt: new Date(`2026-06-08T${to}Z`),
});

describe('minutes timed at a site', () => {
  it('are those of all people, and of one person each minute once', () => {
    const spans = [
      span('a', '09:00:00', '09:30:20'),
      span('b', '09:10:00', '09:40:00'),
      span('a', '09:20:00', '09:45:00'), // started again while it ran
      span('a', '10:00:00', '10:10:00'),
      span('a', '10:02:00', '10:05:00'), // within the one before
    ];
    expect(workedMinutes(spans)).toBe(45 + 30 + 10);
    expect(workedMinutes([])).toBe(0);
  });

  it('are none where the clock was pressed twice at once: the work is charged by its standard minutes', async () => {
    const done = [{ id: 'w', minutes: 20 }];
    const timed = (...spans: unknown[]) =>
      timedMinutes({ workTime: { findMany: async () => spans } } as unknown as Tx, 'v', done, new Map());
    expect([...(await timed(span('a', '09:00:00', '09:00:20')))]).toEqual([]);
    expect([...(await timed(span('a', '09:00:00', '09:01:00')))]).toEqual([['w', 1]]);
  });
});
