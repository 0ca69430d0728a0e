import type { TravelMatrix } from '@deckround/routing';
import type { PlanningSnapshot } from './snapshot.js';

/**
 * What a typical later trip to each site costs: visit fee + set-up labour + typical travel, where typical travel is
 * the mean over the (up to) three nearest other sites of cents + labour for the drive; with one site only, the drive
 * from the nearest base. Labour at the mean wage. An item put off pays `laterTripShare` of it, divided by the number
 * of items open at the site.
 *
 * @returns integer cents, one per site
 * @source own model; end-of-horizon section of the planner note
 */
export function laterTripCents(snapshot: PlanningSnapshot, travel: TravelMatrix): number[] {
  const { sites, technicians } = snapshot;
  const heads = Math.max(1, technicians.length);
  const wages = technicians.reduce((sum, technician) => sum + technician.wageCentsPerHour, 0);
  return sites.map((site, s) => {
    const others =
      sites.length > 1 ? sites.map((_, t) => t).filter((t) => t !== s) : technicians.map((_, k) => sites.length + k);
    const nearest = others
      .map((place) => ({ place, minutes: travel.minutes[place * travel.size + s]! }))
      .sort((a, b) => a.minutes - b.minutes || a.place - b.place)
      .slice(0, 3);
    // whole numbers throughout: half a cent must not hang on the order of a sum
    const count = Math.max(1, nearest.length);
    const part = 60 * heads * count;
    const drives = nearest.reduce(
      (sum, { place, minutes }) => sum + 60 * heads * travel.cents[place * travel.size + s]! + wages * minutes,
      0,
    );
    const doubled = 2 * (part * site.visitFeeCents + count * site.setupMinutes * wages + drives) + part;
    return (doubled - (doubled % (2 * part))) / (2 * part);
  });
}

/** Mean wage of the technicians, cents per hour: who will do the work later is not known yet. */
export function meanWage({ technicians }: PlanningSnapshot): number {
  if (technicians.length === 0) return 0;
  return technicians.reduce((sum, technician) => sum + technician.wageCentsPerHour, 0) / technicians.length;
}
