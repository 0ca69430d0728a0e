import { estimateTravel, type TravelMatrix } from '@deckround/routing';
import type { PlanningSnapshot } from './snapshot.js';

/** Travel between the sites, in order, then the technicians' bases: known drives where there are any, else estimates. */
export function travelOf({ sites, technicians, travel, drives }: PlanningSnapshot): TravelMatrix {
  const positions = [...sites, ...technicians];
  if (!drives) return estimated(positions, travel);
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

const KEPT = 4;
const made = new Map<string, TravelMatrix>();

/**
 * The estimates made last are kept by what they were made of: a shop's places stay where they are, every price of a move
 * asks for them, and 500 places take a second.
 */
function estimated(positions: Parameters<typeof estimateTravel>[0], travel: PlanningSnapshot['travel']): TravelMatrix {
  const key = JSON.stringify([travel, positions.map(({ latitude, longitude }) => [latitude, longitude])]);
  const matrix = made.get(key) ?? estimateTravel(positions, travel);
  made.delete(key);
  made.set(key, matrix);
  if (made.size > KEPT) made.delete(made.keys().next().value!);
  return matrix;
}
