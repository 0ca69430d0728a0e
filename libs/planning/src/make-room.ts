import type { Draft } from './draft.js';
import type { PlanningInstance } from './instance.js';
import { withoutOptionalWork, withRoomFor } from './probe.js';

/**
 * The draft with a must-do in it, for which optional work of its technician-day gives way, and that of the same sites on
 * the same day; null where even that makes no room. If need be another must-do goes elsewhere.
 */
export function makeRoom(instance: PlanningInstance, draft: Draft, index: number): Draft | null {
  const bare = withoutOptionalWork(instance, draft);
  const made = withRoomFor({ ...bare, instance }, index)?.draft;
  if (!made) return null;
  const placeOf = (site: number, v: number) => `${site} ${instance.technicianDays[v]!.day}`;
  const taken = new Set(
    made.flatMap((visits, v) => (visits === bare.draft[v] ? [] : visits.map(({ site }) => placeOf(site, v)))),
  );
  return draft.map((visits, v) => {
    const isConcerned = made[v] !== bare.draft[v] || visits.some(({ site }) => taken.has(placeOf(site, v)));
    return isConcerned ? made[v]! : visits;
  });
}

/** The same for work that had better be late than left out: on the first day after its last one that can take it. */
export function makeRoomLate(instance: PlanningInstance, draft: Draft, index: number): Draft | null {
  const item = instance.items[index]!;
  for (let day = Math.max(item.latestDay + 1, item.releaseDay); day < instance.dates.length; day++) {
    const items = instance.items.with(index, { ...item, releaseDay: day, latestDay: day });
    const made = makeRoom({ ...instance, items }, draft, index);
    if (made !== null) return made;
  }
  return null;
}
