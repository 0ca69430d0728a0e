import { estimateTravel, type TravelMatrix } from '@deckround/routing';
import type { PlanningSnapshot } from './snapshot.js';

/** Travel between the sites, in order, then the technicians' bases: known drives where there are any, else estimates. */
export function travelOf({ sites, technicians, travel, drives }: PlanningSnapshot): TravelMatrix {
  const positions = [...sites, ...technicians];
  if (!drives) return estimateTravel(positions, travel);
  const count = drives.places.length;
  const index = new Map(drives.places.map((id, k) => [id, k]));
  const places = positions.map(({ id }) => index.get(id));
  return estimateTravel(positions, travel, (from, to) => {
    const [a, b] = [places[from], places[to]];
    if (a === undefined || b === undefined) return null;
    const seconds = drives.seconds[a * count + b];
    const metres = drives.metres[a * count + b];
    return seconds == null || metres == null ? null : { seconds, metres };
  });
}
