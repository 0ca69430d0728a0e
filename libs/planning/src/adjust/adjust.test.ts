import { describe, expect, it } from '@jest/globals';
import { evaluateDraft, routeCents } from '../draft.js';
import type { PlanningSnapshot } from '../snapshot.js';
import { aStandingWeek, standingAgain } from '../test-support/a-standing-week.js';
import { anItem } from '../test-support/a-week.js';
import { generateSnapshot } from '../test-support/generate-snapshot.js';
import { describeChange } from './describe-change.js';
import { placements } from './place-visit.js';
import { moveVisit, priceMoves } from './price-moves.js';
import { bestRoadCallOptions, type RoadCallKind, roadCallOptions } from './road-call.js';
import { findVisit, workedDates } from './standing-week.js';

const shop = generateSnapshot({ seed: 5, sites: 24, machinesPerSite: 4, items: 110, technicians: 4, days: 5 });
const week = aStandingWeek(shop);
const visitIds = week.draft.flat().map((visit) => visit.visitId!);

describe('a standing week', () => {
  it('stands as it was planned', () => {
    expect(week.homeless).toEqual([]);
    expect(evaluateDraft(week.instance, week.draft)).not.toBeNull();
  });

  it('lets go of what nobody can keep any more', () => {
    const ill: PlanningSnapshot = {
      ...shop,
      technicians: shop.technicians.map((each, k) => (k === 0 ? { ...each, shifts: each.shifts.slice(1) } : each)),
    };
    const lost = standingAgain(ill, week);
    expect(lost.homeless.length).toBeGreaterThan(0);
    expect(evaluateDraft(lost.instance, lost.draft)).not.toBeNull();
  });

  it('keeps the rest of a day on which several visits cannot be kept', () => {
    const v = week.draft.findIndex((visits) => new Set(visits.map(({ site }) => site)).size > 2);
    const visits = week.draft[v]!;
    const { technician, date } = week.instance.technicianDays[v]!;
    const open = shop.sites
      .map((site, s) => ({ site, s }))
      .filter(({ s }) => visits.slice(0, 2).some((each) => each.site === s));
    const barred = open.map(({ site }) => ({ siteId: site.id, technicianId: shop.technicians[technician]!.id, date }));
    const lost = standingAgain({ ...shop, barred }, week);
    const isLost = ({ site, promise }: (typeof visits)[number]) =>
      promise?.kind !== 'frozen' && open.some(({ s }) => s === site);
    expect(visits.filter(isLost).length).toBeGreaterThan(1);
    expect(lost.homeless.map((visit) => visit.visitId)).toEqual(visits.filter(isLost).map((visit) => visit.visitId));
  });

  it('has no place for a visit of which nothing is left to do', () => {
    const { items, visitId } = week.draft.flat()[0]!;
    const left = { ...shop, items: shop.items.filter((_, index) => !items.includes(index)) };
    const { draft, homeless } = standingAgain(left, week);
    expect([...draft.flat(), ...homeless].map((visit) => visit.visitId)).not.toContain(visitId);
    expect(homeless).toEqual([]);
  });
});

describe('prices of moving', () => {
  it('keep to the last day of what had better be late, unless its parts come after it', () => {
    const { visitId, items } = week.draft.find((visits) => visits.length > 0)![0]!;
    const [first, second] = workedDates(week) as [string, string];
    const datesWhen = (releaseDate: string | null) => {
      const bound = { releaseDate, latestDate: first, betterLate: true };
      const snapshot = {
        ...shop,
        items: shop.items.map((item, i) => (items.includes(i) ? { ...item, ...bound } : item)),
      };
      return new Set(priceMoves(standingAgain(snapshot, week), visitId!)!.places.map(({ date }) => date));
    };
    expect([...datesWhen(null)]).toEqual([first]);
    expect([...datesWhen(second)]).toEqual([...workedDates(week)]);
  });

  it('are the exact differences of the two plans', () => {
    for (const visitId of visitIds.slice(0, 8)) {
      const prices = priceMoves(week, visitId)!;
      expect(prices.places.filter((place) => place.isWhereItStands).map((place) => place.cents)).toEqual([0]);
      for (const place of prices.places) {
        const moved = moveVisit(week, visitId, place)!;
        expect(moved.change.cents.total).toBe(place.cents);
        const broken = moved.change.visits.flatMap((visit) => (visit.breaksPromise ? [visit.visitId] : []));
        expect([...place.breaks].sort()).toEqual(broken.sort());
      }
    }
  });

  it('charge just the promises that are broken, no more of them than must be, in a week where everybody was told', () => {
    const told = aStandingWeek(shop, 400, 1);
    const { instance, draft } = told;
    const seen = { one: 0, several: 0 };
    for (const { visitId } of draft.flat()) {
      for (const place of priceMoves(told, visitId!)!.places) {
        const { draft: after, change } = moveVisit(told, visitId!, place)!;
        expect(change.cents.total).toBe(place.cents);
        expect(change.cents.disruption).toBe(2500 * place.breaks.length);
        const others = place.breaks.filter((id) => id !== visitId);
        if (others.length > 0) seen[others.length > 1 ? 'several' : 'one']++;
        for (const id of others) {
          const { v, k } = findVisit(after, id)!;
          const kept = after[v]!.with(k, { ...after[v]![k]!, promise: told.announced.get(id)! });
          expect(routeCents(instance, v, kept)).toBe(Infinity);
        }
      }
    }
    expect(seen.one).toBeGreaterThan(5);
    expect(seen.several).toBeGreaterThan(5);
  });

  it('of a visit held fast are those of letting it go, and break only what its customer was told', () => {
    const seen = { sameDay: 0, told: 0, untold: 0 };
    for (const [v, visits] of week.draft.entries()) {
      for (const { visitId } of visits) {
        const held = standingAgain(shop, week, visitId);
        const isTold = held.announced.has(visitId);
        for (const place of priceMoves(held, visitId!)!.places) {
          const { change } = moveVisit(held, visitId!, place)!;
          expect(change.cents.total).toBe(place.cents);
          const broken = change.visits.flatMap((each) => (each.breaksPromise ? [each.visitId] : []));
          expect([...place.breaks].sort()).toEqual(broken.sort());
          const { technician, date } = week.instance.technicianDays[v]!;
          const isHome = place.date === date && place.technicianId === shop.technicians[technician]!.id;
          if (place.isWhereItStands) expect(place.cents).toBe(0);
          else if (isHome) seen.sameDay++;
          if (!isHome) expect(broken.includes(visitId)).toBe(isTold);
          seen[isTold ? 'told' : 'untold']++;
          if (!isTold) expect(broken).not.toContain(visitId);
        }
      }
    }
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0);
  });

  it('leave the way home out that a day under way has to drive all the same', () => {
    const { technician, date } = week.instance.technicianDays[1]!;
    const underWay = { siteId: shop.sites.at(-1)!.id, lunchTaken: true };
    const technicians = shop.technicians.map((each, k) => ({
      ...each,
      shifts: each.shifts.map((shift) => (k === technician && shift.date === date ? { ...shift, underWay } : shift)),
    }));
    const late = standingAgain({ ...shop, technicians }, { ...week, draft: week.draft.with(1, []) });
    expect(routeCents(late.instance, 1, [])).toBeGreaterThan(0);
    let seen = 0;
    for (const { visitId } of late.draft.flat()) {
      for (const place of priceMoves(late, visitId!)!.places) {
        expect(moveVisit(late, visitId!, place)!.change.cents.total).toBe(place.cents);
        if (place.technicianId === shop.technicians[technician]!.id && place.date === date) seen++;
      }
    }
    expect(seen).toBeGreaterThan(0);
  });

  it('are against not making it, of a visit that cannot stand where it does', () => {
    const technicians = shop.technicians.map((each, k) => (k === 0 ? { ...each, shifts: each.shifts.slice(1) } : each));
    const ill = standingAgain({ ...shop, technicians }, week);
    const seen = { places: 0, promised: 0 };
    for (const { visitId, promise } of ill.homeless) {
      const prices = priceMoves(ill, visitId!)!;
      expect(prices.places.filter((place) => place.isWhereItStands)).toEqual([]);
      seen.places += prices.places.length;
      if (promise !== null) seen.promised++;
      for (const place of prices.places) {
        const { draft, change } = moveVisit(ill, visitId!, place)!;
        expect(change.cents.total).toBe(place.cents);
        expect(change.visits.find((each) => each.visitId === visitId)).toMatchObject({
          what: 'moved',
          from: null,
          to: { technicianId: place.technicianId, date: place.date },
          breaksPromise: promise !== null,
        });
        expect(place.breaks.includes(visitId!)).toBe(promise !== null);
        expect(findVisit(draft, visitId!)).not.toBeNull();
      }
    }
    expect(seen.places).toBeGreaterThan(5);
    expect(seen.promised).toBeGreaterThan(0);
  });

  it('name what stands in the way where a visit cannot go', () => {
    const closed = visitIds.flatMap((visitId) => priceMoves(week, visitId)!.closed);
    expect(new Set(closed.map((each) => each.obstacle)).size).toBeGreaterThan(1);
  });

  it('know no visit of another week', () => {
    expect(priceMoves(week, 'v999')).toBeNull();
    expect(moveVisit(week, 'v999', { technicianId: 'T1', date: shop.firstDate })).toBeNull();
  });
});

describe('a visit that a change takes out', () => {
  const v = week.draft.findIndex((visits) => visits.some(({ items, promise }) => items.length > 1 && !promise));
  const k = week.draft[v]!.findIndex(({ items, promise }) => items.length > 1 && !promise);
  const whole = week.draft[v]![k]!;
  const rest = week.draft.with(v, week.draft[v]!.with(k, { ...whole, items: whole.items.slice(1) }));
  const parted = rest.flatMap((_, w) => {
    const found = w === v ? 'time' : placements(week.instance, rest, w, named('part', whole.items.slice(0, 1)), false);
    return Array.isArray(found) ? [rest.with(w, found[0]!.visits)] : [];
  })[0]!;
  const standing = { ...week, draft: parted };
  const dropped = (after: typeof week.draft) =>
    describeChange(standing, after).visits.find(({ visitId }) => visitId === 'part');

  function named(visitId: string, items: readonly number[]) {
    return { ...whole, visitId, items: [...items] };
  }

  it('tells which visit of its site does its work instead', () => {
    const { technician, date } = week.instance.technicianDays[v]!;
    const technicianId = shop.technicians[technician]!.id;
    const workTo = [expect.objectContaining({ technicianId, date })];
    expect(dropped(week.draft)).toMatchObject({ what: 'dropped', to: null, workTo });
  });

  it('tells no other visit where its work waits', () => {
    expect(dropped(rest)).toMatchObject({ what: 'dropped', workTo: [] });
    expect(describeChange(standing, rest).leftOut).toHaveLength(1);
  });
});

describe('road calls', () => {
  const calledAt = (site: number): PlanningSnapshot => ({
    ...shop,
    items: [
      ...shop.items,
      anItem(shop.days, {
        id: 'call',
        machineId: shop.machines.find((each) => each.siteId === shop.sites[site]!.id)!.id,
        code: 'road-call',
        minutes: 50,
        mustDo: true,
        timingCostCents: [0, 15_000, 30_000, 45_000, 60_000],
        deferralCents: 75_000,
      }),
    ],
  });
  const called = calledAt(3);
  const standing = standingAgain(called, week);
  const dates = workedDates(standing).slice(0, 3);
  const settings = { itemId: 'call', dates, iterations: 3000, seed: 1 };
  const options = roadCallOptions(standing, settings);

  it('gives at least the simplest way and does the call in every one', () => {
    expect(options.map((option) => option.kind)).toContain('squeeze-in');
    for (const { draft } of options) {
      const index = called.items.length - 1;
      expect(draft.flat().filter((visit) => visit.items.includes(index))).toHaveLength(1);
      expect(evaluateDraft(standing.instance, draft)).not.toBeNull();
    }
  });

  it('moves promises only where the option says so, and keeps every visit in the first kind', () => {
    for (const { kind, draft, change } of options) {
      const broken = new Set(change.visits.flatMap((visit) => (visit.breaksPromise ? [visit.visitId] : [])));
      for (const visit of standing.draft.flat()) {
        const there = findVisit(draft, visit.visitId!);
        if (kind === 'squeeze-in') expect(there).not.toBeNull();
        if (visit.promise && !broken.has(visit.visitId)) {
          expect(there && draft[there.v]![there.k]!.promise).toBe(visit.promise);
        }
      }
    }
  });

  describe('at a site whose visit nobody can make any more', () => {
    const lost = week.draft.flat().find(({ promise }) => !promise)!;
    const { technician, date } = week.instance.technicianDays[findVisit(week.draft, lost.visitId!)!.v]!;
    const technicians = shop.technicians.map((each, k) => ({
      ...each,
      shifts: each.shifts.filter((shift) => k !== technician || shift.date !== date),
    }));
    const ill = standingAgain({ ...calledAt(lost.site), technicians }, week);
    const found = roadCallOptions(ill, { ...settings, dates: workedDates(ill) });
    const index = called.items.length - 1;

    it('takes the work of that visit along, in that visit', () => {
      expect(ill.homeless.map(({ visitId }) => visitId)).toContain(lost.visitId);
      for (const { draft, change } of found) {
        const carrier = draft.flat().find(({ items }) => items.includes(index))!;
        expect(carrier).toMatchObject({ visitId: lost.visitId, promise: null });
        expect(carrier.items).toEqual(expect.arrayContaining([...lost.items]));
        expect(change.visits).toContainEqual(
          expect.objectContaining({ visitId: lost.visitId, what: 'moved', from: null }),
        );
      }
    });

    it('costs the exact difference of the two weeks, without the call before', () => {
      for (const { draft, change } of found) {
        const [before, after] = [ill.draft, draft].map((each) => evaluateDraft(ill.instance, each)!.cost.total);
        expect(change.cents.total).toBe(after! - before! + ill.instance.items[index]!.deferralCents);
      }
    });

    it('loses no visit of the week out of sight', () => {
      for (const { draft, change } of found) {
        const dropped = change.visits.filter(({ what }) => what === 'dropped').map(({ visitId }) => visitId);
        for (const { visitId } of ill.draft.flat())
          expect(dropped.includes(visitId) || findVisit(draft, visitId!) !== null).toBe(true);
      }
    });
  });

  it('are fit in beside visits that stand before their parts come, which stay on their days or wait for them', () => {
    const last = workedDates(standing).at(-1)!;
    const items = called.items.map((item) => (item.id === 'call' ? item : { ...item, releaseDate: last }));
    const late = standingAgain({ ...called, items }, week);
    const found = roadCallOptions(late, settings);
    expect(found.map(({ kind }) => kind)).toEqual(options.map(({ kind }) => kind));
    for (const { visits } of found.map(({ change }) => change))
      for (const { from, to } of visits) if (from && to) expect([from.date, last]).toContain(to.date);
  });

  it('answers the same twice', () => {
    expect(roadCallOptions(standing, settings)).toEqual(options);
  });

  it('looks at the days asked for alone', () => {
    const index = called.items.length - 1;
    const offered = workedDates(standing).flatMap((date) =>
      roadCallOptions(standing, { ...settings, dates: [date] }).map(({ draft }) => {
        const v = draft.findIndex((visits) => visits.some((visit) => visit.items.includes(index)));
        return [date, standing.instance.technicianDays[v]!.date];
      }),
    );
    expect(new Set(offered.map(([date]) => date)).size).toBeGreaterThan(1);
    for (const [asked, date] of offered) expect(date).toBe(asked);
    expect(roadCallOptions(standing, { ...settings, dates: [] })).toEqual([]);
  });

  it('gives the cheapest of each kind of several weeks, none that is no better than a simpler one', () => {
    const simple = options[0]!;
    const priced = (kind: RoadCallKind, total: number) => ({
      ...simple,
      ...{ kind, change: { ...simple.change, cents: { ...simple.change.cents, total } } },
    });
    const found = [
      priced('push-one', 900),
      priced('squeeze-in', 1000),
      priced('re-plan', 950),
      priced('squeeze-in', 800),
    ];
    expect(bestRoadCallOptions(found)).toEqual([found[3]]);
    expect(bestRoadCallOptions(found.slice(0, 3))).toEqual([found[1], found[0]]);
    expect(bestRoadCallOptions([])).toEqual([]);
  });
});
