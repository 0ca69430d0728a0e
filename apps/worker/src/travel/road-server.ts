import { z } from 'zod';

/** Positions on each side of one request: servers limit how many coordinates they take. */
const CHUNK = 50;
const TRIES = 3;

const Cell = z.number().min(0).nullable();
const Answer = z.object({
  code: z.literal('Ok'),
  durations: z.array(z.array(Cell)),
  distances: z.array(z.array(Cell)),
});

export interface Drives {
  /** Row by row; null = no way. */
  readonly seconds: (number | null)[];
  readonly metres: (number | null)[];
}

/**
 * Drives between all positions, asked in blocks of a road server with an OSRM-compatible `table` service (version 1,
 * profile `driving`); a block that fails is asked again twice.
 *
 * @param signal ends the asking, also in the middle
 * @throws Error when a block fails for good or the answer is not what the service promises
 */
export async function askRoadServer(
  root: string,
  positions: readonly { latitude: number; longitude: number }[],
  signal: AbortSignal,
): Promise<Drives> {
  const size = positions.length;
  const drives: Drives = { seconds: new Array(size * size).fill(null), metres: new Array(size * size).fill(null) };
  for (let from = 0; from < size; from += CHUNK) {
    for (let to = 0; to < size; to += CHUNK) {
      const sources = positions.slice(from, from + CHUNK);
      const targets = positions.slice(to, to + CHUNK);
      const block = await askBlock(root, sources, targets, signal);
      for (const [i, row] of block.durations.entries()) {
        for (const [j, seconds] of row.entries()) {
          const cell = (from + i) * size + to + j;
          drives.seconds[cell] = seconds;
          drives.metres[cell] = block.distances[i]![j]!;
        }
      }
    }
  }
  return drives;
}

async function askBlock(
  root: string,
  sources: readonly { latitude: number; longitude: number }[],
  targets: readonly { latitude: number; longitude: number }[],
  signal: AbortSignal,
) {
  const coordinates = [...sources, ...targets].map(({ latitude, longitude }) => `${longitude},${latitude}`).join(';');
  const numbers = (from: number, count: number) => Array.from({ length: count }, (_, k) => from + k).join(';');
  const query = `sources=${numbers(0, sources.length)}&destinations=${numbers(sources.length, targets.length)}`;
  const address = `${root.replace(/\/$/, '')}/table/v1/driving/${coordinates}?annotations=duration,distance&${query}`;
  for (let attempt = 1; ; attempt++) {
    try {
      const response = await fetch(address, { signal, redirect: 'error' });
      if (!response.ok) throw new Error(`the road server answered ${response.status}`);
      const answer = Answer.parse(await response.json());
      const fits = (rows: readonly unknown[][]) =>
        rows.length === sources.length && rows.every((row) => row.length === targets.length);
      if (!fits(answer.durations) || !fits(answer.distances)) throw new Error('the road server left out drives');
      return answer;
    } catch (error) {
      if (attempt >= TRIES || signal.aborted) throw error;
      await new Promise((done) => setTimeout(done, 200 * attempt));
    }
  }
}
