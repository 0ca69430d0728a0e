import geodesic from 'geographiclib-geodesic';

export interface TravelSettings {
  /** Road length over geodesic length, for trips of up to 10 km, up to 50 km, and beyond. */
  detourShort: number;
  detourMedium: number;
  detourLong: number;
  /** km/h for the first 10 km of a trip, and beyond. */
  townKmh: number;
  openKmh: number;
  centsPerKm: number;
}

export interface TravelMatrix {
  readonly size: number;
  /** Row = from, column = to; whole minutes, rounded up. */
  readonly minutes: Int32Array;
  readonly metres: Int32Array;
  readonly cents: Int32Array;
}

export interface Position {
  latitude: number;
  longitude: number;
}

/** A drive from one position to another as a road network tells it. */
export type KnownDrives = (from: number, to: number) => { seconds: number; metres: number } | null;

/**
 * Estimated travel between all pairs of positions.
 * road = geodesic × detour(geodesic); hours = min(road, 10 km)/town + max(0, road − 10 km)/open; minutes rounded up.
 * Afterwards the matrix is closed: a trip over a third place is taken wherever it is shorter in minutes, with the
 * metres and cents of that path, so that leaving out a stop never takes longer.
 *
 * @param positions degrees on WGS 84
 * @param known drives that somebody knows better, by index; null = to be estimated
 * @source geodesic length: C. F. F. Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), as implemented
 *         by geographiclib-geodesic; detour and speed model: common practice, no source
 */
export function estimateTravel(
  positions: readonly Position[],
  settings: TravelSettings,
  known: KnownDrives = () => null,
): TravelMatrix {
  const size = positions.length;
  const minutes = new Int32Array(size * size);
  const metres = new Int32Array(size * size);
  const cents = new Int32Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = i + 1; j < size; j++) {
      const trip = estimateTrip(positions[i]!, positions[j]!, settings);
      for (const [from, to] of [
        [i, j],
        [j, i],
      ] as const) {
        const cell = from * size + to;
        const drive = known(from, to);
        minutes[cell] = drive ? Math.ceil(drive.seconds / 60) : trip.minutes;
        metres[cell] = drive ? Math.round(drive.metres) : trip.metres;
        cents[cell] = drive ? Math.round((drive.metres / 1000) * settings.centsPerKm) : trip.cents;
      }
    }
  }
  const matrix = { size, minutes, metres, cents };
  closeMatrix(matrix);
  return matrix;
}

/** One trip, before closing the matrix. Zero metres take zero minutes. */
export function estimateTrip(from: Position, to: Position, settings: TravelSettings) {
  const direct =
    geodesic.Geodesic.WGS84.Inverse(
      from.latitude,
      from.longitude,
      to.latitude,
      to.longitude,
      geodesic.Geodesic.DISTANCE,
    ).s12 ?? 0;
  const detour =
    direct <= 10_000 ? settings.detourShort : direct <= 50_000 ? settings.detourMedium : settings.detourLong;
  const metres = Math.round(direct * detour);
  const town = Math.min(metres, 10_000);
  const exact = (town / settings.townKmh + (metres - town) / settings.openKmh) * 0.06;
  return { metres, minutes: Math.ceil(exact - 1e-9), cents: Math.round((metres / 1000) * settings.centsPerKm) };
}

/**
 * Shortest paths in minutes between all pairs (ties: fewer cents), metres and cents along the same path.
 *
 * @source Floyd–Warshall, from memory
 */
export function closeMatrix({ size, minutes, metres, cents }: TravelMatrix): void {
  for (let k = 0; k < size; k++) {
    for (let i = 0; i < size; i++) {
      const ik = i * size + k;
      if (i === k) continue;
      for (let j = 0; j < size; j++) {
        const kj = k * size + j;
        const ij = i * size + j;
        const over = minutes[ik]! + minutes[kj]! - minutes[ij]!;
        if (over > 0 || i === j || j === k) continue;
        if (over < 0 || cents[ik]! + cents[kj]! < cents[ij]!) {
          minutes[ij] = minutes[ik]! + minutes[kj]!;
          metres[ij] = metres[ik]! + metres[kj]!;
          cents[ij] = cents[ik]! + cents[kj]!;
        }
      }
    }
  }
}
