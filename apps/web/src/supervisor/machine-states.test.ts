import { expect, test } from '@jest/globals';
import type { DueItem, Machine } from '../data/types.js';
import { canMowUntil, dayOfState, saturdayFrom, stateOf } from './machine-states.js';

test('the Saturday to be ready for', () => {
  // 4 June 2026 was a Thursday (ISO 8601 calendar).
  expect(saturdayFrom('2026-06-04')).toBe('2026-06-06');
  expect(saturdayFrom('2026-06-06')).toBe('2026-06-06');
  expect(saturdayFrom('2026-06-07')).toBe('2026-06-13');
});

test('a machine is as its worst', () => {
  const machine = (condition: string) => ({ condition }) as Machine;
  const item = (kind: string, ...probabilityOverdue: number[]) =>
    ({ kind, costFrom: '2026-06-08', probabilityOverdue }) as unknown as DueItem;
  const service = (...chances: number[]) => item('service', ...chances);
  const stopgap = item('stopgap', 0);
  expect(stateOf(machine('down'), [stopgap], '2026-06-08')).toBe('down');
  expect(stateOf(machine('at-shop'), [], '2026-06-08')).toBe('in-our-hands');
  expect(stateOf(machine('working'), [service(0.9), stopgap], '2026-06-08')).toBe('stopgap');
  expect(stateOf(machine('working'), [service(0.5)], '2026-06-08')).toBe('overdue');
  expect(stateOf(machine('working'), [service(0.1)], '2026-06-08')).toBe('service-soon');
  expect(stateOf(machine('working'), [], '2026-06-08')).toBe('ready');
  // Today is not the day from which an older forecast was reckoned.
  const ageing = [service(0.1, 0.3, 0.6)];
  for (const [today, state] of [
    ['2026-06-04', 'service-soon'],
    ['2026-06-09', 'service-soon'],
    ['2026-06-10', 'overdue'],
    ['2026-07-01', 'overdue'],
  ] as const)
    expect(stateOf(machine('working'), ageing, today)).toBe(state);
});

test('a machine is counted on only as long as its stopgap holds', () => {
  const stopgap = (p50: string | null) => [{ kind: 'stopgap', p50 } as unknown as DueItem];
  expect(canMowUntil('2026-06-06', 'stopgap', stopgap('2026-06-05'))).toBe(false);
  expect(canMowUntil('2026-06-06', 'stopgap', stopgap('2026-06-06'))).toBe(false);
  expect(canMowUntil('2026-06-06', 'stopgap', stopgap('2026-06-09'))).toBe(true);
  expect(canMowUntil('2026-06-06', 'stopgap', stopgap(null))).toBe(true);
  expect(canMowUntil('2026-06-06', 'overdue', [])).toBe(true);
  expect(canMowUntil('2026-06-06', 'down', [])).toBe(false);
});

test('the day beside a state is of what makes the machine so, not of other work', () => {
  const item = (kind: string, p50: string, chance: number) =>
    ({ kind, p50, costFrom: '2026-06-04', probabilityOverdue: [chance] }) as unknown as DueItem;
  const due = [
    item('service', '2026-06-05', 0.1),
    item('service', '2026-05-20', 0.9),
    item('service', '2026-05-02', 0.7),
    item('stopgap', '2026-06-15', 0),
  ];
  const dayOf = (state: Parameters<typeof dayOfState>[0]) => dayOfState(state, due, '2026-06-04');
  expect(dayOf('stopgap')).toBe('2026-06-15');
  expect(dayOf('overdue')).toBe('2026-05-02');
  expect(dayOfState('service-soon', due.slice(0, 1), '2026-06-04')).toBe('2026-06-05');
  expect([dayOf('down'), dayOf('in-our-hands'), dayOf('ready')]).toEqual([null, null, null]);
});
