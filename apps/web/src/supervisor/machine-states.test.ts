import { expect, test } from '@jest/globals';
import type { DueItem, Machine } from '../data/types.js';
import { canMowUntil, saturdayFrom, stateOf } from './machine-states.js';

test('the Saturday to be ready for', () => {
  // 4 June 2026 was a Thursday (ISO 8601 calendar).
  expect(saturdayFrom('2026-06-04')).toBe('2026-06-06');
  expect(saturdayFrom('2026-06-06')).toBe('2026-06-06');
  expect(saturdayFrom('2026-06-07')).toBe('2026-06-13');
});

test('a machine is as its worst', () => {
  const machine = (condition: string) => ({ condition }) as Machine;
  const service = (chance: number) => ({ kind: 'service', probabilityOverdue: [chance] }) as unknown as DueItem;
  const stopgap = { kind: 'stopgap', probabilityOverdue: [0] } as unknown as DueItem;
  expect(stateOf(machine('down'), [stopgap])).toBe('down');
  expect(stateOf(machine('at-shop'), [])).toBe('in-our-hands');
  expect(stateOf(machine('working'), [service(0.9), stopgap])).toBe('stopgap');
  expect(stateOf(machine('working'), [service(0.5)])).toBe('overdue');
  expect(stateOf(machine('working'), [service(0.1)])).toBe('service-soon');
  expect(stateOf(machine('working'), [])).toBe('ready');
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
