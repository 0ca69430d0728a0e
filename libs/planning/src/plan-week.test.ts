import { describe, expect, it } from '@jest/globals';
import { checkPlan } from './check/check-plan.js';
import { planWeek } from './plan-week.js';
import type { PlanningSnapshot } from './snapshot.js';
import { anItem, aSite, aTechnician, aWeek } from './test-support/a-week.js';
import { generateSnapshot } from './test-support/generate-snapshot.js';
import { datesFrom } from './wall-clock.js';
import { WeekPlan } from './week-plan.js';

const head = { snapshotHash: 'hash', seed: 1 };

function plan(snapshot: PlanningSnapshot, iterations = 300) {
  const week = planWeek(snapshot, { ...head, stop: { iterations } });
  expect(checkPlan(snapshot, week)).toEqual([]);
  expect(WeekPlan.parse(week)).toEqual(week);
  return week;
}

const shop = generateSnapshot({
  seed: 12,
  sites: 14,
  machinesPerSite: 5,
  items: 90,
  technicians: 2,
  days: 5,
  promises: true,
});

describe('planWeek', () => {
  it('gives the same plan twice', () => {
    expect(plan(shop, 1500)).toEqual(plan(shop, 1500));
  });

  describe('with a day in two stretches', () => {
    const dates = datesFrom('2014-06-16', 1);
    const rest = { from: '10:00', to: '13:00' };
    const shifts = [{ date: '2014-06-16', start: '07:00', end: '16:00', rest }];
    const twice = (minutes: number, changes: Partial<PlanningSnapshot> = {}) =>
      aWeek({
        days: 1,
        technicians: [aTechnician(dates, { shifts, maxOvertimeMinutes: 0 })],
        sites: [aSite(dates), aSite(dates, { id: 'S2' })],
        machines: ['S1', 'S2'].map((siteId) => ({ ...aWeek().machines[0]!, id: `M-${siteId}`, siteId })),
        items: ['S1', 'S2'].map((siteId) => anItem(1, { id: `I-${siteId}`, machineId: `M-${siteId}`, minutes })),
        ...changes,
      });

    it('works before and after the rest, and takes it once in place of lunch', () => {
      const { visits, routes, leftOut } = plan(twice(120));
      expect(leftOut).toEqual([]);
      expect(visits.map(({ startAt, endAt }) => endAt < '2014-06-16T10:01' || startAt >= '2014-06-16T13:00')).toEqual([
        true,
        true,
      ]);
      expect(routes).toHaveLength(1);
      expect(routes[0]!.lunch).toEqual({ from: '2014-06-16T10:00:00-05:00', to: '2014-06-16T13:00:00-05:00' });
    });

    it('leaves a visit that fits into neither of them', () => {
      const { leftOut } = plan(twice(200));
      expect(leftOut.map((row) => row.obstacle?.key)).toEqual(['too-long-for-shifts', 'too-long-for-shifts']);
    });

    it('does not keep what was held fast in the rest', () => {
      const held = { kind: 'frozen' as const, siteId: 'S1', technicianId: 'T1', date: '2014-06-16', moveCents: 0 };
      const promise = { ...held, visitId: 'V1', itemIds: ['I-S1'], from: '11:00', to: '11:00' };
      const { visits } = plan(twice(60, { promises: [promise] }));
      expect(visits.map((visit) => visit.promisedVisitId)).toEqual([null, null]);
    });

    it('is written as one shift, not as two', () => {
      const two = [
        { date: '2014-06-16', start: '07:00', end: '10:00' },
        { date: '2014-06-16', start: '13:00', end: '16:00' },
      ];
      expect(() => plan(twice(60, { technicians: [aTechnician(dates, { shifts: two })] }))).toThrow(
        'technician T1 has two shifts on 2014-06-16: write one with a rest',
      );
    });
  });

  it('has no lunch where the shift begins after its hours', () => {
    const shifts = [{ date: '2014-06-16', start: '14:00', end: '18:00' }];
    const late = aWeek({ technicians: [aTechnician([], { shifts })] });
    const { routes, leftOut } = plan(late);
    expect(leftOut).toEqual([]);
    expect(routes.map((route) => route.lunch)).toEqual([null]);
  });

  it('does not miss a visit held fast over all the hours of lunch', () => {
    const held = { kind: 'frozen' as const, siteId: 'S1', technicianId: 'T1', date: '2014-06-16', moveCents: 0 };
    const promises = [{ ...held, visitId: 'V1', itemIds: ['I1'], from: '10:30', to: '10:30' }];
    const { visits } = plan(aWeek({ items: [anItem(5, { minutes: 150 })], promises }));
    expect(visits.map((visit) => visit.promisedVisitId)).toEqual([null]);
  });

  describe('with visits held fast that exclude each other', () => {
    const held = { kind: 'frozen' as const, siteId: 'S1', technicianId: 'T1', date: '2014-06-16' };
    const dates = datesFrom('2014-06-16', 5);
    const week = aWeek({
      sites: [aSite(dates), aSite(dates, { id: 'S2' })],
      machines: ['S1', 'S2'].map((siteId, k) => ({ ...aWeek().machines[0]!, id: `M${k + 1}`, siteId })),
      items: [anItem(5), anItem(5, { id: 'I2', machineId: 'M2' })],
      promises: [
        { ...held, visitId: 'V1', itemIds: ['I1'], from: '09:00', to: '09:00', moveCents: 1000 },
        { ...held, visitId: 'V2', siteId: 'S2', itemIds: ['I2'], from: '09:15', to: '09:15', moveCents: 9000 },
      ],
    });
    const keptIn = ({ visits }: WeekPlan) => visits.flatMap((visit) => visit.promisedVisitId ?? []);

    it('keeps the dearest, and plans the work of the others anew', () => {
      const found = plan(week);
      expect(keptIn(found)).toEqual(['V2']);
      expect(found.leftOut).toEqual([]);
    });

    it('leaves their work where it is on a day under way', () => {
      const found = plan({ ...week, isUnderWay: true });
      expect(keptIn(found)).toHaveLength(1);
      expect(found.visits).toHaveLength(1);
      expect(found.leftOut).toHaveLength(1);
    });
  });

  it('repeats a run by the clock from its iterations', () => {
    let clock = 0;
    const timed = planWeek(shop, { ...head, stop: { seconds: 2, now: () => (clock += 97) } });
    expect(timed.iterations % 1000).toBe(0);
    expect(planWeek(shop, { ...head, stop: { iterations: timed.iterations } })).toEqual(timed);
  });

  it('returns a valid plan when cancelled, which can be repeated', () => {
    let asked = 0;
    const cut = planWeek(shop, { ...head, stop: { iterations: 50_000 }, shouldCancel: () => ++asked > 4 });
    expect(cut.iterations).toBe(4 * 256);
    expect(cut.plannedIterations).toBe(50_000);
    expect(checkPlan(shop, cut)).toEqual([]);
    const again = planWeek(shop, { ...head, stop: { iterations: 50_000, cutAt: cut.iterations } });
    expect(again).toEqual(cut);
  });

  it('tells its progress, with falling cost', () => {
    const totals: number[] = [];
    planWeek(shop, {
      ...head,
      stop: { iterations: 2000 },
      onProgress: (progress) => {
        const { cost, mustDoMissing } = progress();
        totals.push(cost.total + mustDoMissing * 1e7);
      },
    });
    expect(totals.length).toBeGreaterThan(2);
    // Labour is rounded per route, so the told cost may differ from the searched one by a cent per route.
    for (let k = 1; k < totals.length; k++) expect(totals[k]!).toBeLessThanOrEqual(totals[k - 1]! + 20);
  });

  it('plans the single item and leaves as late as possible', () => {
    const week = plan(aWeek());
    expect(week.leftOut).toEqual([]);
    expect(week.visits[0]).toMatchObject({ siteId: 'S1', setupMinutes: 10, preparationMinutes: 0 });
    expect(week.visits[0]!.items[0]).toMatchObject({ itemId: 'I1', role: 'anchor' });
    expect(week.visits[0]!.marginalCents).toBeLessThan(0);
  });

  it('plans a week without items, sites or technicians', () => {
    expect(plan(aWeek({ items: [] })).visits).toEqual([]);
    expect(plan(aWeek({ technicians: [] })).leftOut[0]).toMatchObject({ code: 'skill' });
    expect(plan(aWeek({ items: [], machines: [], sites: [] })).cost.total).toBe(0);
  });

  it('shares preparation: the rider says so', () => {
    const items = [
      anItem(5, { preparations: ['blades off'] }),
      anItem(5, { id: 'I2', minutes: 6, preparations: ['deck raised'], deferralCents: 1500, title: 'Grease spindles' }),
    ];
    const week = plan(aWeek({ items }));
    const visit = week.visits[0]!;
    expect(visit.preparationMinutes).toBe(15);
    expect(visit.items.find((item) => item.itemId === 'I2')).toMatchObject({ role: 'rider', sharedMinutes: 5 });
    expect(visit.items.find((item) => item.itemId === 'I2')!.reason).toContain('5 min of preparation are shared');
  });

  it.each<[string, Partial<PlanningSnapshot>]>([
    ['skill', { items: [anItem(5, { mustDo: true, skill: 'hydraulic' })] }],
    ['part', { items: [anItem(5, { mustDo: true, releaseDate: '2014-06-21' })] }],
    ['access', { items: [anItem(5, { mustDo: true })], sites: [aSite([])] }],
    ['time', { items: [anItem(5, { mustDo: true, minutes: 900 })] }],
    ['cheaper-later', { items: [anItem(5, { deferralCents: 10 })] }],
  ])('says why an item is left out: %s', (code, changes) => {
    const week = plan(aWeek(changes));
    expect(week.visits).toEqual([]);
    expect(week.leftOut[0]).toMatchObject({ itemId: 'I1', code });
    expect(week.leftOut[0]!.reason).not.toBe('');
  });

  it('says access when the window is too short for the visit', () => {
    const dates = datesFrom('2014-06-16', 5);
    const sites = [aSite(dates, { windows: dates.map((date) => ({ date, open: '08:00', close: '08:30' })) })];
    expect(plan(aWeek({ sites })).leftOut[0]).toMatchObject({ code: 'access' });
  });

  it('plans both changeover weekends', () => {
    for (const firstDate of ['2014-03-08', '2014-11-01']) {
      const week = plan(aWeek({ firstDate, days: 2 }));
      expect(week.visits).toHaveLength(1);
    }
  });

  it('plans a night shift across the hour that is missing', () => {
    const firstDate = '2014-03-09';
    const dates = datesFrom(firstDate, 1);
    const technicians = [
      aTechnician(dates, {
        lunch: null,
        shifts: [{ date: firstDate, start: '00:00', end: '04:30' }],
        maxOvertimeMinutes: 0,
      }),
    ];
    const sites = [aSite(dates, { windows: [{ date: firstDate, open: '00:00', close: '24:00' }] })];
    // 00:00 to 04:30 has 210 minutes on that day: 190 on site do not fit beside two drives of 10.
    const fits = (minutes: number) => {
      const items = [anItem(1, { minutes })];
      return plan(aWeek({ firstDate, days: 1, technicians, sites, items })).visits.length;
    };
    expect([fits(160), fits(190)]).toEqual([1, 0]);
  });

  it('shows a site in another zone its own clock', () => {
    const dates = datesFrom('2014-06-16', 5);
    const week = plan(aWeek({ sites: [aSite(dates, { zone: 'America/Denver' })] }));
    expect(week.visits[0]!.startAt).toMatch(/-06:00$/);
    expect(week.routes[0]!.leaveAt).toMatch(/-05:00$/);
  });

  it('never moves a frozen visit, whatever it costs', () => {
    const promise = {
      visitId: 'announced',
      kind: 'frozen' as const,
      siteId: 'S1',
      technicianId: 'T1',
      date: '2014-06-18',
      from: '14:00',
      to: '14:30',
      itemIds: ['I1'],
      moveCents: 0,
    };
    const items = [anItem(5, { timingCostCents: [0, 0, 90_000, 0, 0], deferralCents: 0 })];
    const week = plan(aWeek({ items, promises: [promise] }));
    expect(week.visits).toHaveLength(1);
    expect(week.visits[0]).toMatchObject({ promisedVisitId: 'announced', startAt: '2014-06-18T14:00:00-05:00' });
    expect(week.visits[0]!.reason).toContain('Announced to the customer and fixed');
    const begun = plan(aWeek({ items, promises: [promise], asOf: '2014-06-18', isUnderWay: true }));
    expect(begun.visits[0]!.reason).toContain('Its day is under way');
  });

  it('keeps a confirmed visit until moving it is cheaper', () => {
    const promise = (moveCents: number) => ({
      visitId: 'announced',
      kind: 'confirmed' as const,
      siteId: 'S1',
      technicianId: 'T1',
      date: '2014-06-18',
      from: '14:00',
      to: '14:30',
      itemIds: ['I1'],
      moveCents,
    });
    const items = [anItem(5, { timingCostCents: [0, 0, 3000, 0, 0] })];
    const kept = plan(aWeek({ items, promises: [promise(4000)] }));
    expect(kept.visits[0]).toMatchObject({ date: '2014-06-18', promisedVisitId: 'announced' });
    const moved = plan(aWeek({ items, promises: [promise(2000)] }));
    expect(moved.visits[0]).toMatchObject({ promisedVisitId: null });
    expect(moved.cost.disruption).toBe(2000);
  });

  it('gives up a frozen visit whose technician is ill, at its price, and does the work on another day', () => {
    const promises = [
      {
        visitId: 'announced',
        kind: 'frozen' as const,
        siteId: 'S1',
        technicianId: 'T1',
        date: '2014-06-17',
        from: '09:00',
        to: '10:00',
        itemIds: ['I1'],
        moveCents: 4000,
      },
    ];
    const dates = datesFrom('2014-06-16', 5).filter((date) => date !== '2014-06-17');
    const week = plan(aWeek({ technicians: [aTechnician(dates)], promises }));
    expect(week.visits).toHaveLength(1);
    expect(week.cost.disruption).toBe(4000);
  });

  it('starts from the former plan', () => {
    const former = plan(shop, 3000);
    const previous = former.visits.map(({ siteId, technicianId, date, items }) => ({
      siteId,
      technicianId,
      date,
      itemIds: items.map((item) => item.itemId),
    }));
    const gone = { siteId: 'gone', technicianId: 'gone', date: '2014-06-16', itemIds: ['gone'] };
    const again = plan({ ...shop, previous: [gone, ...previous] }, 1);
    // The former visits are kept, their items chosen anew: nearly as good at once, and far better than from nothing.
    expect(again.cost.total).toBeLessThan(former.cost.total * 1.04);
    expect(again.cost.total).toBeLessThan(plan(shop, 1).cost.total);
  });

  it('takes nothing away from the week that stands when it is stopped at once', () => {
    const former = plan(shop, 3000);
    const clock = (instant: string) => instant.slice(11, 16);
    const itemIds = (visit: (typeof former.visits)[number]) => visit.items.map((item) => item.itemId);
    const [announced, proposed] = [
      former.visits.filter((_, k) => k % 2 === 0),
      former.visits.filter((_, k) => k % 2 === 1),
    ];
    const standing: PlanningSnapshot = {
      ...shop,
      promises: announced.map((visit, k) => ({
        ...{ visitId: `V${k}`, kind: 'confirmed', siteId: visit.siteId, technicianId: visit.technicianId },
        ...{
          date: visit.date,
          from: clock(visit.startAt),
          to: clock(visit.startAt),
          itemIds: itemIds(visit),
          moveCents: 2500,
        },
      })),
      previous: proposed.map((visit) => ({
        ...{ siteId: visit.siteId, technicianId: visit.technicianId, date: visit.date, itemIds: itemIds(visit) },
      })),
    };
    const cut = planWeek(standing, { ...head, stop: { iterations: 50_000 }, shouldCancel: () => true });
    expect(checkPlan(standing, cut)).toEqual([]);
    expect(cut.iterations).toBe(0);
    expect(cut.cost.disruption).toBe(0);
    expect(cut.cost.total).toBeLessThanOrEqual(former.cost.total);
  });

  it('allots scarce stock in order of date', () => {
    const dates = datesFrom('2014-06-16', 5);
    const part = (date: string) => dates.map((other) => (other === date ? 0 : 40_000));
    const items = [
      anItem(5, { parts: [{ partId: 'belt', quantity: 2 }], timingCostCents: part(dates[0]!) }),
      anItem(5, { id: 'I2', parts: [{ partId: 'belt', quantity: 2 }], timingCostCents: part(dates[1]!) }),
      anItem(5, { id: 'I3', parts: [{ partId: 'belt', quantity: 2 }], timingCostCents: part(dates[3]!) }),
    ];
    const parts = [
      {
        id: 'belt',
        description: 'Deck belt',
        designation: null,
        unit: 'pcs',
        onHand: 3,
        // The first should have come long ago, and nobody knows whether it still will.
        arrivals: [
          { date: '2014-06-10', quantity: 5 },
          { date: dates[2]!, quantity: 5 },
        ],
        leadDays: 2,
      },
    ];
    const week = plan(aWeek({ items, parts }));
    expect(week.routes.map((route) => [route.date, route.load[0]!.missing])).toEqual([
      [dates[0], 0],
      [dates[1], 1],
      [dates[3], 0],
    ]);
  });

  it('refuses a snapshot that names what it does not hold', () => {
    expect(() => plan(aWeek({ items: [anItem(5, { machineId: 'gone' })] }))).toThrow(/machine gone/);
    expect(() => plan(aWeek({ items: [anItem(3)] }))).toThrow(/needs 5 timing costs/);
  });
});
