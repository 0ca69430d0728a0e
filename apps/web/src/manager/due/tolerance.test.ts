import { expect, test } from '@jest/globals';
import type { DueItem, ServiceItem } from '../../data/types.js';
import { toleranceDays } from './tolerance.js';

const ITEM = { machineClass: 'zero-turn', code: 'change-engine-oil', toleranceHours: '14', toleranceDays: 3 };
const of = toleranceDays([ITEM as ServiceItem], '2026-06-04');
const due = (p50: string, why: object) =>
  of({ machineClass: 'zero-turn', code: 'change-engine-oil', p50, why } as unknown as DueItem);

test('hours become days by the pace of the machine, days stay days', () => {
  const ahead = { decidedBy: 'hours', hoursPerWeekNow: 14, dueAtHours: 700, lifetimeHoursNow: 690 };
  expect(due('2026-06-09', ahead)).toEqual({ before: 7, after: 7 });
  expect(due('2026-06-09', { decidedBy: 'days' })).toEqual({ before: 3, after: 3 });
  expect(due('2026-06-09', { decidedBy: 'hours', hoursPerWeekNow: 0 })).toBeNull();
});

test('of a mark that is passed, the end agrees with the hours of now', () => {
  // 15 h past a mark that allows 14: the end lay half a day ago, on whatever day the mark was noticed.
  const past = { decidedBy: 'hours', hoursPerWeekNow: 14, dueAtHours: 700, lifetimeHoursNow: 715 };
  expect(due('2026-05-28', past)).toEqual({ before: 7, after: 6.5 });
  expect(due('2026-06-04', { ...past, lifetimeHoursNow: 740 })).toEqual({ before: 7, after: 0 });
});
