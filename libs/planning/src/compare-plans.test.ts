import { describe, expect, it } from '@jest/globals';
import { extraTime } from './extra-time.js';
import { planDifference } from './plan-difference.js';
import { planWeek } from './plan-week.js';
import { aStandingWeek } from './test-support/a-standing-week.js';
import { anItem, aTechnician, aWeek } from './test-support/a-week.js';
import { generateSnapshot } from './test-support/generate-snapshot.js';

const snapshot = generateSnapshot({ seed: 21, sites: 10, machinesPerSite: 4, items: 60, technicians: 2, days: 4 });
const plan = (seed: number, iterations: number) => planWeek(snapshot, { snapshotHash: '', seed, stop: { iterations } });

describe('the difference of two plans', () => {
  it('is none between a plan and itself', () => {
    const once = plan(1, 300);
    const { cents, visits, nowPlanned, nowLeftOut } = planDifference(once, once);
    expect(Object.values(cents).every((part) => part === 0)).toBe(true);
    expect(new Set(visits.map((visit) => visit.what))).toEqual(new Set(['same']));
    expect([nowPlanned, nowLeftOut]).toEqual([[], []]);
  });

  it('accounts for every visit of both plans once, and for their costs', () => {
    const [before, after] = [plan(1, 20), plan(2, 1500)];
    const difference = planDifference(before, after);
    expect(difference.cents.total).toBe(after.cost.total - before.cost.total);
    const named = (side: 'before' | 'after') => difference.visits.flatMap((visit) => visit[side] ?? []).sort();
    expect(named('before')).toEqual(before.visits.map((visit) => visit.id).sort());
    expect(named('after')).toEqual(after.visits.map((visit) => visit.id).sort());
  });
});

describe('a quarter of an hour more', () => {
  it('is worth what the item saves that just did not fit', () => {
    const date = '2014-06-16';
    // 12 min drive each way at the most; work that misses the end of the shift by some minutes.
    const short = aWeek({
      days: 1,
      technicians: [
        aTechnician([date], { maxOvertimeMinutes: 0, lunch: null, shifts: [{ date, start: '07:00', end: '08:05' }] }),
      ],
      items: [anItem(1, { minutes: 40 })],
    });
    const week = aStandingWeek(short, 50);
    expect(week.draft.flat()).toHaveLength(0);
    const [worth] = extraTime(week.instance, week.draft, 30);
    expect(worth).toMatchObject({ itemId: 'I1', date });
    expect(worth!.cents).toBeGreaterThan(40_000);
    expect(extraTime(week.instance, week.draft, 1)[0]).toMatchObject({ cents: 0, itemId: null });
  });

  it('never costs anything', () => {
    const week = aStandingWeek(snapshot, 200);
    const days = extraTime(week.instance, week.draft);
    expect(days).toHaveLength(week.instance.technicianDays.length);
    for (const { cents } of days) expect(cents).toBeGreaterThanOrEqual(0);
  });
});
