import { arrivalAfterLunch, departureBeforeLunch, IMPOSSIBLE, NEVER } from './schedule.js';

export interface TimetableDay {
  shiftStart: number;
  latestReturn: number;
  lunch: { minutes: number; from: number; to: number } | null;
}

export interface TimetableVisit {
  /** Drive from the place before. */
  drive: number;
  service: number;
  /** Service begins from `open` to `last`, if that is set, and ends by `close`. */
  windows: readonly { open: number; last?: number; close: number }[];
}

export interface Timetable {
  leave: number;
  /** One entry per visit, in driving order. */
  arrive: number[];
  start: number[];
  end: number[];
  return: number;
  lunch: { from: number; to: number } | null;
}

/**
 * Times of a day route: the earliest possible return, and among those the latest departure from the base.
 * Lunch is taken before, on or after one of the drives; a route back by the latest lunch start has none.
 *
 * @param home drive from the last visit to the base
 * @returns null when the route cannot be driven
 */
export function timetable(day: TimetableDay, visits: readonly TimetableVisit[], home: number): Timetable | null {
  const back = earliestReturn(day, visits, home);
  if (back === null) return null;
  const leave = Math.max(day.shiftStart, latestLeave(day, visits, home, back));
  const pass = forward(day, visits, home, leave);
  const n = visits.length;
  const drives = [...visits.map((visit) => visit.drive), home];

  let lunchLeg = -1;
  const { lunch } = day;
  if (lunch && !(pass.in0[n]! <= lunch.to)) {
    for (lunchLeg = n; lunchLeg > 0; lunchLeg--) {
      const rested = arrivalAfterLunch(pass.out0[lunchLeg]!, drives[lunchLeg]!, lunch.minutes, lunch.from, lunch.to);
      if (rested <= pass.out1[lunchLeg]! + drives[lunchLeg]!) break;
    }
  }
  const result: Timetable = { leave, arrive: [], start: [], end: [], return: 0, lunch: null };
  let time = leave;
  for (let leg = 0; leg <= n; leg++) {
    let arrival = time + drives[leg]!;
    let ready = arrival;
    if (leg === lunchLeg && lunch) {
      const from = Math.max(time, lunch.from);
      ready = Math.max(arrival, lunch.from) + lunch.minutes;
      if (arrival > lunch.from || time >= lunch.from) arrival = ready;
      result.lunch = { from, to: from + lunch.minutes };
    }
    const visit = visits[leg];
    if (!visit) {
      result.return = ready;
      break;
    }
    const end = departure(ready, visit);
    result.arrive.push(arrival);
    result.start.push(end - visit.service);
    result.end.push(end);
    time = end;
  }
  return result;
}

interface Pass {
  in0: number[];
  in1: number[];
  out0: number[];
  out1: number[];
}

/** When a route leaving as early as it can is back at the base; null when it cannot be driven. */
export function earliestReturn(day: TimetableDay, visits: readonly TimetableVisit[], home: number): number | null {
  const { lunch } = day;
  let out0 = lunch ? day.shiftStart : NEVER;
  let out1 = lunch ? NEVER : day.shiftStart;
  for (let p = 0; ; p++) {
    const visit = visits[p];
    const drive = visit ? visit.drive : home;
    const in0 = Math.min(NEVER, out0 + drive);
    const rested = lunch ? arrivalAfterLunch(out0, drive, lunch.minutes, lunch.from, lunch.to) : NEVER;
    const in1 = Math.min(NEVER, out1 + drive, rested);
    if (!visit) {
      const back = lunch && in0 <= lunch.to ? in0 : in1;
      return back > day.latestReturn ? null : back;
    }
    out0 = in0 >= NEVER ? NEVER : departure(in0, visit);
    out1 = in1 >= NEVER ? NEVER : departure(in1, visit);
  }
}

/** Arrival at and departure from every position, lunch not yet taken (0) and taken (1); entry n = the base. */
function forward(day: TimetableDay, visits: readonly TimetableVisit[], home: number, leave: number): Pass {
  const { lunch } = day;
  const pass: Pass = { in0: [], in1: [], out0: [lunch ? leave : NEVER], out1: [lunch ? NEVER : leave] };
  for (let p = 0; p <= visits.length; p++) {
    const visit = visits[p];
    const drive = visit ? visit.drive : home;
    const in0 = Math.min(NEVER, pass.out0[p]! + drive);
    const rested = lunch ? arrivalAfterLunch(pass.out0[p]!, drive, lunch.minutes, lunch.from, lunch.to) : NEVER;
    const in1 = Math.min(NEVER, pass.out1[p]! + drive, rested);
    pass.in0.push(in0);
    pass.in1.push(in1);
    if (visit) {
      pass.out0.push(in0 >= NEVER ? NEVER : departure(in0, visit));
      pass.out1.push(in1 >= NEVER ? NEVER : departure(in1, visit));
    }
  }
  return pass;
}

/** Latest departure from the base that still returns by `by`. */
function latestLeave(day: TimetableDay, visits: readonly TimetableVisit[], home: number, by: number): number {
  const { lunch } = day;
  let done = by;
  let toCome = lunch ? Math.min(lunch.to, by) : IMPOSSIBLE;
  for (let p = visits.length; p >= 0; p--) {
    const drive = p === visits.length ? home : visits[p]!.drive;
    const now = lunch ? departureBeforeLunch(done, drive, lunch.minutes, lunch.from, lunch.to) : IMPOSSIBLE;
    const leave0 = lunch ? Math.max(toCome - drive, now) : IMPOSSIBLE;
    const leave1 = done - drive;
    if (p === 0) return lunch ? leave0 : leave1;
    const visit = visits[p - 1]!;
    toCome = arrivalBy(leave0, visit);
    done = arrivalBy(leave1, visit);
  }
  return IMPOSSIBLE;
}

function departure(arrival: number, { service, windows }: TimetableVisit): number {
  for (const { open, last, close } of windows) {
    const begin = Math.max(arrival, open);
    if ((last === undefined || begin <= last) && begin + service <= close) return begin + service;
  }
  return NEVER;
}

function arrivalBy(by: number, { service, windows }: TimetableVisit): number {
  for (let w = windows.length - 1; w >= 0; w--) {
    const { open, last, close } = windows[w]!;
    const begin = Math.min(last ?? close, Math.min(by, close) - service);
    if (begin >= open) return begin;
  }
  return IMPOSSIBLE;
}
