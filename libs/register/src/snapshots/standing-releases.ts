import type { Register } from '../register.js';
import { stopgapItemId } from './machine-items.js';
import { releaseDates } from './parts-in-turn.js';
import { partsNeeded, standingFrom } from './planned-elsewhere.js';

/**
 * When the parts of planned visits are there, as the shop knows it today, each given out once in the order of the visits
 * from today on, whatever week they belong to.
 *
 * @param days those whose visits are wanted
 * @returns by item; null = now
 */
export function standingReleases(
  register: Register,
  days: readonly string[],
  today: string,
): ReadonlyMap<string, string | null> {
  const visits = standingFrom(register, today);
  const siteIds = new Set(visits.map(({ siteId }) => siteId));
  // Where nobody goes nothing is needed: the items of all machines are many.
  const visited = register.machines.filter(({ siteId }) => siteIds.has(siteId));
  const needed = partsNeeded({ ...register, machines: visited });
  const toldOn = new Map(register.stopgaps.map((stopgap) => [stopgapItemId(stopgap.id), stopgap.partExpectedOn]));
  const work = visits
    .sort((a, b) => (`${a.date} ${a.start}` < `${b.date} ${b.start}` ? -1 : 1))
    .flatMap(({ visitId, date, itemIds }) => itemIds.map((itemId) => ({ id: `${visitId} ${itemId}`, itemId, date })));
  const releases = releaseDates(
    work.map(({ id, itemId }) => {
      const parts = needed.get(itemId) ?? [];
      return { id, parts, toldOn: toldOn.get(itemId) ?? null, fixedOn: null };
    }),
    register.parts,
    today,
  );
  return new Map(
    work.filter(({ date }) => days.includes(date)).map(({ id, itemId }) => [itemId, releases.get(id)!.date]),
  );
}
