import { type Menu, type MenuBook, SingleOptionMenus } from '../menu.js';
import type { RoutingProblem } from '../problem.js';
import { Random } from '../random.js';

export interface RandomProblemSettings {
  seed: number;
  stops: number;
  vehicles: number;
  days?: number;
  lunch?: boolean;
  overtime?: boolean;
  windowsPerDay?: number;
  options?: number;
  asymmetric?: boolean;
  nonMetric?: boolean;
  prize?: number;
  /** Minutes away at most, for each vehicle between this and an hour more. */
  longest?: number;
}

/** Menus of several options for every stop, the same on every vehicle, one visit per stop. */
class FixedMenus implements MenuBook {
  readonly isSingle = false;
  constructor(private readonly menus: Menu[]) {}
  menu(stop: number, open: number): Menu {
    return open === 0 ? this.menus[stop]! : { count: 0, minutes: new Int32Array(0), worth: new Float64Array(0) };
  }
  take(): number {
    return 1;
  }
  giveBack(): number {
    return 0;
  }
  token(_stop: number, _open: number, _vehicle: number, option: number): number {
    return option;
  }
  units(stop: number): readonly number[] {
    return [stop];
  }
  tokenOf(): number {
    return 0;
  }
  isMust(): boolean {
    return false;
  }
  mustPrice(): number {
    return 0;
  }
  isPrepared(stop: number): boolean {
    return stop % 2 === 0;
  }
  least(stop: number): number {
    return this.menus[stop]!.minutes[0]!;
  }
  ceiling(stop: number, open: number): number {
    const menu = this.menus[stop]!;
    return open === 0 ? menu.worth[menu.count - 1]! : 0;
  }
  ceilingOn(stop: number, open: number): number {
    return this.ceiling(stop, open);
  }
}

/** A small made-up problem with every feature that is asked for. */
export function randomProblem(settings: RandomProblemSettings): RoutingProblem {
  const random = new Random(settings.seed);
  const { stops, vehicles } = settings;
  const days = settings.days ?? 1;
  const places = stops + 1;
  const x = Array.from({ length: places }, () => random.below(60));
  const y = Array.from({ length: places }, () => random.below(60));
  const minutes = new Int32Array(places * places);
  for (let i = 0; i < places; i++) {
    for (let j = 0; j < places; j++) {
      if (i === j) continue;
      let t = Math.ceil(Math.hypot(x[i]! - x[j]!, y[i]! - y[j]!));
      if (settings.asymmetric && i < j) t += random.below(15);
      if (settings.nonMetric && random.chance(0.2)) t *= 3;
      minutes[i * places + j] = t;
    }
  }
  const cost = minutes.map((t) => 50 * t);
  const ints = (make: (v: number) => number) => Int32Array.from({ length: vehicles }, (_, v) => make(v));
  const dayOf = ints((v) => v % days);
  const begin = ints((v) => dayOf[v]! * 1440 + 420);
  const end = ints((v) => begin[v]! + 300 + 30 * random.below(7));
  const overtime = ints(() => (settings.overtime ? 45 : 0));
  const open: number[] = [];
  const last: number[] = [];
  const close: number[] = [];
  const start = [0];
  const list = new Int32Array(stops * vehicles);
  for (let s = 0; s < stops; s++) {
    const perDay = Array.from({ length: days }, (_, d) => {
      let at = d * 1440 + 400;
      for (let w = 0; w < (settings.windowsPerDay ?? 1); w++) {
        at += random.below(160);
        open.push(at);
        at += 60 + random.below(240);
        close.push(at);
        last.push(random.chance(0.2) ? open.at(-1)! + 30 : at);
        at += 1;
      }
      start.push(open.length);
      return start.length - 2;
    });
    for (let v = 0; v < vehicles; v++) list[s * vehicles + v] = random.chance(0.1) ? -1 : perDay[dayOf[v]!]!;
  }
  const prize = settings.prize ?? 6000;
  const count = settings.options ?? 1;
  const service = Array.from({ length: stops }, () => 5 + random.below(40));
  const price = Array.from({ length: stops }, () => random.below(prize) + prize / 4);
  const menus =
    count === 1
      ? new SingleOptionMenus(service, price)
      : new FixedMenus(
          service.map((minutes, s) => ({
            count,
            minutes: Int32Array.from({ length: count }, (_, k) => minutes + 11 * k),
            worth: Float64Array.from({ length: count }, (_, k) => price[s]! + 700 * k),
          })),
        );
  return {
    places,
    minutes,
    arcCost: [cost],
    vehicles: {
      count: vehicles,
      startPlace: ints(() => 0),
      endPlace: ints(() => 0),
      shiftStart: begin,
      shiftEnd: end,
      latestReturn: ints((v) => end[v]! + overtime[v]!),
      lunchMinutes: ints(() => (settings.lunch ? 30 : 0)),
      lunchFrom: ints((v) => dayOf[v]! * 1440 + 600),
      lunchTo: ints((v) => dayOf[v]! * 1440 + 690),
      costClass: ints(() => 0),
      kind: ints((v) => v),
      overtimeCost: ints(() => 80),
      capacity: ints(() => 1000),
      day: dayOf,
      ...(settings.longest !== undefined && { longest: ints(() => settings.longest! + random.below(60)) }),
    },
    stops: {
      count: stops,
      place: Int32Array.from({ length: stops }, (_, s) => s + 1),
      load: new Int32Array(stops),
      visits: new Int32Array(stops).fill(1),
      crowd: Int32Array.from({ length: stops }, (_, s) => s),
    },
    days,
    visitsPerDay: new Int32Array(stops).fill(1),
    windowList: list,
    windowStart: Int32Array.from(start),
    windowOpen: Int32Array.from(open),
    windowLast: Int32Array.from(last),
    windowClose: Int32Array.from(close),
    fixedCost: Int32Array.from({ length: stops * vehicles }, () => random.below(400)),
    menus,
  };
}
