import { describe, expect, it } from '@jest/globals';
import { baselineDrafts } from './baseline.js';
import { type Addition, canDo, cheapestAddition, SiteAdditions, withItem } from './cheapest-addition.js';
import { type Draft, type DraftVisit, evaluateDraft, routeCents } from './draft.js';
import { busyMinutes, canEndInTime, leastCents } from './insertion-bounds.js';
import { buildInstance, type PlanningInstance } from './instance.js';
import { respectsMachines, visitsPerDay } from './machines-down.js';
import { planStops } from './plan-stops.js';
import { generateSnapshot } from './test-support/generate-snapshot.js';
import { visitMinutes } from './visit-minutes.js';

/** Half full weeks: some of what is left out fits, some does not. */
function someWeeks() {
  return [1, 2, 3, 4, 5, 6].map((seed) => {
    const shop = generateSnapshot({
      ...{ seed, sites: 9 + seed, machinesPerSite: 4, items: 90, technicians: 2, days: 3, reachKm: 40 },
      ...{ promises: seed % 2 === 0, mustDos: true, lunch: seed % 3 > 0 },
    });
    const instance = buildInstance(shop);
    const [draft] = baselineDrafts(instance, planStops(instance));
    const routes = draft!.map((visits, v) => (v % 3 === seed % 3 ? visits.slice(1) : visits));
    return { instance, draft: routes, present: routes.map((visits, v) => routeCents(instance, v, visits)) };
  });
}

/** Every way tried and worked out. */
function byTrial(instance: PlanningInstance, draft: Draft, index: number, present: readonly number[]): Addition | null {
  const { site } = instance.items[index]!;
  const alone: DraftVisit = { site, items: [index], promise: null };
  let best: Addition | null = null;
  const offer = (v: number, visits: DraftVisit[], joins: Addition['joins']) => {
    const cents = routeCents(instance, v, visits) - present[v]!;
    if (cents < (best?.cents ?? Infinity)) best = { v, visits, cents, joins };
  };
  draft.forEach((visits, v) => {
    if (!canDo(instance, index, v)) return;
    const here = visits.findIndex((visit) => visit.site === site && visit.promise?.kind !== 'frozen');
    if (here >= 0) {
      const joined = withItem(visits[here]!, index);
      if (respectsMachines(instance, joined)) offer(v, visits.with(here, joined), 'visit');
      return;
    }
    const { day, technician } = instance.technicianDays[v]!;
    const sameDay = draft.filter((_, w) => instance.technicianDays[w]!.day === day).flat();
    const already = sameDay.filter((visit) => visit.site === site).length;
    if (visits.some((visit) => visit.site === site)) return;
    if (already >= visitsPerDay(instance.snapshot.sites[site]!)) return;
    if (instance.promises.some((p) => p.site === site && p.technician === technician && p.day === day)) return;
    for (let p = 0; p <= visits.length; p++) offer(v, visits.toSpliced(p, 0, alone), 'new-visit');
  });
  return best;
}

describe('the cheapest addition of a left-out item', () => {
  it('is the one that trying every way finds, or none', () => {
    const found = { visit: 0, 'new-visit': 0, none: 0 };
    for (const { instance, draft, present } of someWeeks()) {
      const at = instance.snapshot.sites.map((_, site) => new SiteAdditions(instance, draft, present, site));
      for (const index of evaluateDraft(instance, draft)!.leftOut) {
        const addition = cheapestAddition(instance, draft, index, present);
        expect(addition).toEqual(byTrial(instance, draft, index, present));
        // what was found out for other items of the site changes nothing
        expect(at[instance.items[index]!.site]!.cheapest(index)).toEqual(addition);
        found[addition?.joins ?? 'none']++;
        if (addition === null) continue;
        // a limit just above it changes nothing, one at it leaves no way
        expect(cheapestAddition(instance, draft, index, present, addition.cents + 1)).toEqual(addition);
        expect(cheapestAddition(instance, draft, index, present, addition.cents)).toBeNull();
      }
    }
    expect(Math.min(...Object.values(found))).toBeGreaterThan(10);
  });
});

describe('what a new visit costs at least', () => {
  it('is never more than it costs, and infinite only where the day cannot be driven with it', () => {
    let told = 0;
    let driven = 0;
    for (const { instance, draft, present } of someWeeks()) {
      for (const index of evaluateDraft(instance, draft)!.leftOut) {
        const visit: DraftVisit = { site: instance.items[index]!.site, items: [index], promise: null };
        draft.forEach((visits, v) => {
          const { total } = visitMinutes(instance, visit.site, visit.items);
          const leastAt = leastCents(instance, v, visits, visit.site, total);
          const timing = instance.items[index]!.timingCents[instance.technicianDays[v]!.day]!;
          for (let p = 0; p <= visits.length; p++) {
            const longer = visits.toSpliced(p, 0, visit);
            const cents = routeCents(instance, v, longer) - present[v]!;
            expect(leastAt(p) + timing).toBeLessThanOrEqual(cents);
            if (cents < Infinity) {
              expect(canEndInTime(instance, v, busyMinutes(instance, v, longer))).toBe(true);
              driven++;
            } else if (leastAt(p) === Infinity) {
              told++;
            }
          }
        });
      }
    }
    expect(Math.min(told, driven)).toBeGreaterThan(1000);
  });
});
