/** Reads a week-plan instance: technician-days as vehicles, one node per visit, a price for each deferral. */
import { SingleOptionMenus } from '@deckround/routing';

const MUST = 1_000_000;

export function readWeekPlan(text) {
  const instance = JSON.parse(text);
  const { visits, vehicles, travel, minutesPerDay } = instance;
  const n = travel.length;
  const minutes = Int32Array.from(travel.flat());
  const column = (pick) => Int32Array.from(vehicles, pick);
  const windowList = new Int32Array(visits.length * vehicles.length).fill(-1);
  const windowStart = [0];
  const open = [];
  const last = [];
  const close = [];
  const lists = new Map();
  visits.forEach((visit, s) => {
    vehicles.forEach((vehicle, v) => {
      if (visit.allowedTechnicians && !visit.allowedTechnicians.includes(vehicle.technician)) return;
      const key = `${s}|${vehicle.day}`;
      if (!lists.has(key)) {
        const begin = vehicle.day * minutesPerDay;
        const today = visit.windows.filter(([from]) => from >= begin && from < begin + minutesPerDay);
        if (today.length === 0) {
          lists.set(key, -1);
        } else {
          lists.set(key, windowStart.length - 1);
          for (const [from, to] of today) {
            open.push(from);
            last.push(to);
            close.push(to + visit.service);
          }
          windowStart.push(open.length);
        }
      }
      windowList[s * vehicles.length + v] = lists.get(key);
    });
  });
  const problem = {
    places: n,
    minutes,
    arcCost: [minutes],
    vehicles: {
      count: vehicles.length,
      startPlace: column(() => 0),
      endPlace: column(() => 0),
      shiftStart: column((v) => v.start),
      shiftEnd: column((v) => v.end),
      latestReturn: column((v) => v.end),
      lunchMinutes: column(() => 0),
      lunchFrom: column(() => 0),
      lunchTo: column(() => 0),
      costClass: column(() => 0),
      kind: column((_, v) => v),
      overtimeCost: column(() => 0),
      capacity: column(() => 1_000_000),
      day: column((v) => v.day),
    },
    stops: {
      count: visits.length,
      place: Int32Array.from(visits, (_, s) => s + 1),
      load: new Int32Array(visits.length),
      visits: new Int32Array(visits.length).fill(1),
      crowd: Int32Array.from(visits, (_, s) => s),
    },
    days: instance.days,
    visitsPerDay: new Int32Array(visits.length).fill(1),
    windowList,
    windowStart: Int32Array.from(windowStart),
    windowOpen: Int32Array.from(open),
    // The format's windows are for the start of service.
    windowLast: Int32Array.from(last),
    windowClose: Int32Array.from(close),
    fixedCost: new Int32Array(visits.length * vehicles.length),
    menus: new SingleOptionMenus(
      visits.map((visit) => visit.service),
      visits.map((visit) => (visit.mustDo ? MUST : visit.deferralCost)),
      MUST,
    ),
  };
  return {
    name: instance.name,
    problem,
    optional: true,
    judge: (routes) => judge(instance, routes),
    print: (routes) =>
      JSON.stringify({
        routes: routes
          .map((route, v) => ({ vehicle: vehicles[v].id, visits: route.map((visit) => visits[visit.stop].id) }))
          .filter((route) => route.visits.length > 0),
      }),
  };
}

/** Own arithmetic, after the folder's evaluate.py. */
function judge({ visits, vehicles, travel, minutesPerDay }, routes) {
  let objective = 0;
  let feasible = true;
  const seen = new Set();
  routes.forEach((route, v) => {
    if (route.length === 0) return;
    const vehicle = vehicles[v];
    let time = vehicle.start;
    let at = 0;
    for (const { stop } of route) {
      const visit = visits[stop];
      if (seen.has(stop)) feasible = false;
      if (visit.allowedTechnicians && !visit.allowedTechnicians.includes(vehicle.technician)) feasible = false;
      seen.add(stop);
      objective += travel[at][stop + 1];
      time += travel[at][stop + 1];
      at = stop + 1;
      const day = vehicle.day * minutesPerDay;
      const window = visit.windows.find(([from, to]) => from >= day && from < day + minutesPerDay && time <= to);
      if (!window) feasible = false;
      else time = Math.max(time, window[0]) + visit.service;
    }
    objective += travel[at][0];
    if (time + travel[at][0] > vehicle.end) feasible = false;
  });
  visits.forEach((visit, s) => {
    if (seen.has(s)) return;
    if (visit.mustDo) feasible = false;
    objective += visit.deferralCost;
  });
  return { objective, feasible };
}
