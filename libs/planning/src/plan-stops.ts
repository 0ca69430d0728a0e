import { frozenVisits } from './frozen-visits.js';
import type { InstancePromise, PlanningInstance } from './instance.js';
import { visitMinutes } from './visit-minutes.js';

/** What the search may visit: a site with its open items, or a frozen visit that is pinned as announced. */
export interface PlanStop {
  kind: 'site' | 'frozen';
  site: number;
  items: number[];
  /** The frozen promise. */
  promise: InstancePromise | null;
  /** Promises at this site that a visit in their slot keeps. */
  confirmed: InstancePromise[];
  /** Most that keeping one of them saves, cents. */
  mostBonus: number;
  /** How many visits the site may get. */
  visits: number;
}

const MOST_VISITS = 8;
/** Minutes of open work per visit from which on a site may get more than the usual two. */
const LONG_VISIT = 240;

/** Frozen promises that stand first, in order of their slot (`frozen-visits`), then every site with open items. */
export function planStops(instance: PlanningInstance): PlanStop[] {
  const pinnedItems = new Set<number>();
  const stops: PlanStop[] = [];
  for (const promise of frozenVisits(instance)) {
    for (const item of promise.items) pinnedItems.add(item);
    const items = [...new Set(promise.items)].sort((a, b) => a - b);
    stops.push({ kind: 'frozen', site: promise.site, items, promise, confirmed: [], mostBonus: 0, visits: 1 });
  }
  const bySite: number[][] = instance.snapshot.sites.map(() => []);
  for (const item of instance.items) if (!pinnedItems.has(item.index)) bySite[item.site]!.push(item.index);
  bySite.forEach((items, site) => {
    if (items.length === 0) return;
    items.sort((a, b) => instance.items[a]!.machine - instance.items[b]!.machine || a - b);
    const confirmed = keepablePromises(instance, site);
    const { total } = visitMinutes(instance, site, items);
    const { downRule, maxMachinesDown } = instance.snapshot.sites[site]!;
    const machines = new Set(items.map((item) => instance.items[item]!.machine)).size;
    const rounds = downRule === 'whole-visit' ? Math.ceil(machines / maxMachinesDown) : 1;
    stops.push({
      kind: 'site',
      site,
      items,
      promise: null,
      confirmed,
      mostBonus: Math.max(0, ...confirmed.map((promise) => promise.moveCents)),
      visits: Math.min(MOST_VISITS, Math.max(1 + Math.ceil(total / LONG_VISIT), rounds + 1), Math.max(1, items.length)),
    });
  });
  return stops;
}

/** Confirmed promises of a site, at most one per technician and day: the earliest slot counts. */
function keepablePromises(instance: PlanningInstance, site: number): InstancePromise[] {
  const seen = new Set<string>();
  return instance.promises
    .filter((promise) => promise.kind === 'confirmed' && promise.site === site)
    .sort((a, b) => a.slot.open - b.slot.open || a.index - b.index)
    .filter((promise) => {
      const key = `${promise.technician}|${promise.day}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
}
