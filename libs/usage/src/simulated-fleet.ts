import { dateOfDay, dayNumber } from './calendar.js';
import type { MachineForUsage, Reading, UsageSnapshot } from './snapshot.js';

/**
 * A made-up fleet for tests, on other assumptions than any benchmark: smooth daily hours on weekdays, a season that
 * follows a raised cosine, wet weeks shared by a site, weekly to fortnightly readings, keying errors on some of them.
 */
export interface SimulatedFleet {
  readonly snapshot: UsageSnapshot;
  /** Lifetime hours at the end of a day number. */
  readonly truth: (machineId: string, day: number) => number;
  /** Ids of readings that were written down wrong and differ from the truth by more than an hour. */
  readonly wrong: ReadonlySet<string>;
}

export interface FleetOptions {
  readonly seed: number;
  readonly machines: number;
  readonly latitude: number;
  readonly from: string;
  readonly asOf: string;
  readonly horizonDays?: number;
  readonly errorShare?: number;
}

export function simulatedFleet(options: FleetOptions): SimulatedFleet {
  const { machines: count, latitude, errorShare = 0, horizonDays = 60 } = options;
  const random = mulberry32(options.seed);
  const start = dayNumber(options.from);
  const origin = dayNumber(options.asOf);
  const end = origin + horizonDays + 1;
  const machines: MachineForUsage[] = [];
  const readings: Reading[] = [];
  const paths = new Map<string, Float64Array>();
  const wrong = new Set<string>();
  let wet: number[] = [];
  for (let m = 0; m < count; m++) {
    const id = `m${m}`;
    if (m % 6 === 0) wet = Array.from({ length: Math.ceil((end - start) / 7) + 1 }, () => 0.4 + 1.2 * random());
    const siteId = `s${Math.floor(m / 6)}`;
    machines.push({
      id,
      siteId,
      machineClass: m % 2 ? 'zero-turn' : 'front-deck',
      latitude,
      longitude: 10,
      inServiceOn: null,
    });
    const pace = 1 + 3 * random();
    const path = new Float64Array(end - start + 1);
    let hours = 50 + 900 * random();
    let next = start + Math.floor(random() * 7);
    for (let day = start; day <= end; day++) {
      const season = Math.max(0, Math.cos((2 * Math.PI * (day - (latitude < 0 ? 15 : 197))) / 365.25) + 0.3);
      const works = (day + 3) % 7 < 5 ? 0.5 + random() : 0;
      hours += pace * season * works * wet[Math.floor((day - start) / 7)]!;
      path[day - start] = hours;
      if (day !== next || day > origin) continue;
      next = day + 5 + Math.floor(random() * 10);
      let shown = Math.round(hours * 10) / 10;
      const readingId = `${id}-${day}`;
      if (random() < errorShare) {
        const right = shown;
        shown = misread(shown, random);
        if (Math.abs(shown - right) > 1) wrong.add(readingId);
      }
      readings.push({
        id: readingId,
        machineId: id,
        readAt: `${dateOfDay(day)}T17:30:00`,
        hours: shown,
        source: 'test',
      });
    }
    paths.set(id, path);
  }
  return {
    snapshot: { version: 1, asOf: options.asOf, horizonDays, machines, readings, meterChanges: [] },
    truth: (machineId, day) => paths.get(machineId)![day - start]!,
    wrong,
  };
}

function misread(hours: number, random: () => number): number {
  const kind = random();
  if (kind < 0.4) return Math.round(hours * 100) / 10;
  if (kind < 0.6) return Math.max(0, Math.round(hours * 10 - 300 - 2000 * random()) / 10);
  const digits = hours.toFixed(1).replace('.', '');
  const at = Math.floor(random() * (digits.length - 2));
  const swapped = digits.slice(0, at) + digits[at + 1] + digits[at] + digits.slice(at + 2);
  return +swapped / 10;
}

/** Small seeded generator, uniform in [0, 1). Source: Tommy Ettinger's mulberry32, public domain, from memory. */
export function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
