import { describe, expect, it } from '@jest/globals';
import { priceMoves } from './adjust/price-moves.js';
import { standingWeek } from './adjust/standing-week.js';
import { checkPlan } from './check/check-plan.js';
import { planWeek } from './plan-week.js';
import type { PlanningSnapshot } from './snapshot.js';
import { standingVisits } from './test-support/a-standing-week.js';
import { anItem, aSite, aWeek } from './test-support/a-week.js';
import { generateSnapshot } from './test-support/generate-snapshot.js';
import { datesFrom } from './wall-clock.js';

function plan(snapshot: PlanningSnapshot, iterations = 300) {
  const week = planWeek(snapshot, { snapshotHash: '', seed: 1, stop: { iterations } });
  expect(checkPlan(snapshot, week)).toEqual([]);
  return week;
}

describe('a must-do that had better be late than left out', () => {
  const dates = datesFrom('2014-06-16', 5);
  // Waiting is cheapest, so that nothing but its last day asks for it.
  const owed = anItem(5, { mustDo: true, latestDate: dates[1]!, betterLate: true, timingCostCents: [9, 9, 0, 0, 0] });
  const dayOf = (week: ReturnType<typeof plan>) => week.visits.find((v) => v.items.some((i) => i.itemId === 'I1'));
  /** Optional work that fills every day. */
  const filling = Array.from({ length: 12 }, (_, k) =>
    anItem(5, { id: `F${k}`, machineId: 'M2', minutes: 230, deferralCents: 90_000 }),
  );
  const full = (changes: Partial<PlanningSnapshot>) => {
    const week = aWeek({ ...changes, items: [owed, ...filling] });
    const machines = [...week.machines, { ...week.machines[0]!, id: 'M2', siteId: 'S2' }];
    return { ...week, machines, sites: [...week.sites, aSite(dates, { id: 'S2', name: 'South', latitude: 41.55 })] };
  };

  it('is done by its last day', () => {
    const week = full({});
    const planned = plan(week);
    expect(dayOf(planned)!.date <= dates[1]!).toBe(true);
  });

  it('is done on the first day after it where nobody can do it before, and says so', () => {
    const week = full({ sites: [aSite(dates.slice(2))] });
    const planned = plan(week);
    expect(dayOf(planned)).toMatchObject({ date: dates[2] });
    const item = dayOf(planned)!.items.find(({ itemId }) => itemId === 'I1')!;
    expect(item.reason).toMatch(/It should have been done by 2014-06-17, which nothing allows/);
    expect(planned.visits.length).toBeGreaterThan(2);
  });

  it('is left out where not even that can be, and without that leave where its last day cannot be kept', () => {
    const closed = full({ sites: [aSite([])] });
    expect(plan(closed).leftOut.map(({ itemId }) => itemId)).toContain('I1');
    const late = full({ sites: [aSite(dates.slice(2))] });
    const { betterLate: _, ...strict } = owed;
    const week = { ...late, items: [strict, ...late.items.slice(1)] };
    expect(plan(week).leftOut.map(({ itemId }) => itemId)).toContain('I1');
  });

  it('can be moved where it stands late', () => {
    const snapshot = full({ sites: [aSite(dates.slice(2))] });
    const planned = plan(snapshot);
    const late = dayOf(planned)!;
    const week = standingWeek(snapshot, standingVisits(planned, 100));
    expect(week.homeless).toEqual([]);
    const { places } = priceMoves(week, late.id)!;
    expect(places.filter((place) => place.isWhereItStands)).toMatchObject([{ cents: 0 }]);
  });
});

it('optional work gives way to must-dos, however short the search', () => {
  let seen = 0;
  for (let seed = 1; seed <= 12; seed++) {
    const shop = generateSnapshot({ seed, sites: 20, machinesPerSite: 5, items: 160, technicians: 2, days: 5 });
    const items = shop.items.map((item, k) => ({ ...item, mustDo: k % 5 === 0, minutes: 2 * item.minutes }));
    const { leftOut } = plan({ ...shop, items }, 20);
    const rules = leftOut.flatMap(({ remedyRules }) => remedyRules?.flat() ?? []);
    seen += leftOut.length;
    expect(rules.filter(({ key }) => key === 'other-work')).toEqual([]);
  }
  expect(seen).toBeGreaterThan(0);
});
