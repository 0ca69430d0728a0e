import type { MachineForUsage } from '../snapshot.js';

/** Radius within which sites share one season, km. */
const NEIGHBOURHOOD_KM = 120;
const KM_PER_DEGREE = 111.2;

/**
 * Gathers machines whose sites share a climate: each joins the first group whose founding site lies within 120 km,
 * machines without a place form one group.
 *
 * @returns for each machine the number of its group, and each group's latitude in degrees (null when unknown)
 * @source flat-earth distance; the radius is an own assumption
 */
export function climateGroups(machines: readonly MachineForUsage[]): {
  groupOf: Int32Array;
  latitudes: (number | null)[];
} {
  const latitudes: (number | null)[] = [];
  const founders: { latitude: number; longitude: number; group: number }[] = [];
  const known = new Map<string, number>();
  let nowhere = -1;
  const groupOf = Int32Array.from(machines, ({ latitude, longitude }) => {
    if (latitude === null) {
      if (nowhere < 0) nowhere = latitudes.push(null) - 1;
      return nowhere;
    }
    const place = { latitude, longitude: longitude ?? 0 };
    const key = `${place.latitude},${place.longitude}`;
    const seen = known.get(key);
    if (seen !== undefined) return seen;
    const near = founders.find((other) => kilometres(other, place) < NEIGHBOURHOOD_KM);
    const group = near?.group ?? latitudes.push(latitude) - 1;
    if (!near) founders.push({ ...place, group });
    known.set(key, group);
    return group;
  });
  return { groupOf, latitudes };
}

function kilometres(a: { latitude: number; longitude: number }, b: { latitude: number; longitude: number }): number {
  const east = (((a.longitude - b.longitude + 540) % 360) - 180) * Math.cos((a.latitude * Math.PI) / 180);
  return KM_PER_DEGREE * Math.hypot(a.latitude - b.latitude, east);
}
