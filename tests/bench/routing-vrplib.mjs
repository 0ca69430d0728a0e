/**
 * Reads a VRPLIB file into a routing problem. Distances, times and windows ×10, truncated (one-decimal convention); in
 * site-dependent files ×1000, rounded, for so their best known values are told (re-added from the routes given there).
 */
import { SingleOptionMenus } from '@deckround/routing';

const MUST = 1_000_000_000;

export function readVrplib(text) {
  const head = {};
  const sections = {};
  let current = null;
  for (const raw of text.split('\n')) {
    const line = raw.trim();
    if (line === '' || line === 'EOF') continue;
    const section = /^([A-Z_]+_SECTION)\b/.exec(line);
    const pair = /^([A-Z_]+)\s*:\s*(.*)$/.exec(line);
    if (section) {
      current = section[1];
      sections[current] = [];
    } else if (pair) {
      head[pair[1]] = pair[2];
    } else if (current) {
      sections[current].push(line.split(/\s+/).map(Number));
    }
  }
  for (const name of ['NODE_COORD', 'DEMAND', 'TIME_WINDOW']) {
    if (!sections[`${name}_SECTION`])
      throw new Error(`It has no ${name}_SECTION; a CVRPTW file with all three is wanted.`);
  }
  const nodes = sections.NODE_COORD_SECTION;
  const n = nodes.length;
  const clients = n - 1;
  const isSiteDependent = head.TYPE === 'SDVRPTW';
  const whole = isSiteDependent ? (value) => Math.round(value * 1000) : (value) => Math.trunc(value * 10 + 1e-9);
  const minutes = new Int32Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      minutes[i * n + j] = whole(Math.hypot(nodes[i][1] - nodes[j][1], nodes[i][2] - nodes[j][2]));
    }
  }
  const service = sections.SERVICE_TIME_SECTION
    ? sections.SERVICE_TIME_SECTION.map((row) => whole(row[1]))
    : Array.from({ length: n }, (_, i) => (i === 0 ? 0 : whole(Number(head.SERVICE_TIME ?? 0))));
  const windows = sections.TIME_WINDOW_SECTION.map((row) => [whole(row[1]), whole(row[2])]);
  const prizes = sections.PRIZE_SECTION?.map((row) => whole(row[1]));
  const vehicles = Number(head.VEHICLES ?? clients);
  const all = (value) => new Int32Array(vehicles).fill(value);
  const allowed = sections.VEHICLES_ALLOWED_CLIENTS_SECTION?.map((row) => row.slice(1));
  const capacity = sections.CAPACITY_SECTION
    ? Int32Array.from(sections.CAPACITY_SECTION, (row) => row[1])
    : all(Number(head.CAPACITY));
  const kinds = new Map();
  const kind = Int32Array.from({ length: vehicles }, (_, v) => {
    const key = `${capacity[v]}|${allowed?.[v]?.join() ?? ''}`;
    if (!kinds.has(key)) kinds.set(key, kinds.size);
    return kinds.get(key);
  });
  const windowList = new Int32Array(clients * vehicles).fill(allowed ? -1 : 0);
  for (let v = 0; v < vehicles; v++) {
    if (allowed) for (const node of allowed[v]) if (node > 1) windowList[(node - 2) * vehicles + v] = node - 2;
  }
  if (!allowed) for (let s = 0; s < clients; s++) windowList.fill(s, s * vehicles, (s + 1) * vehicles);
  const problem = {
    places: n,
    minutes,
    arcCost: [minutes],
    vehicles: {
      count: vehicles,
      startPlace: all(0),
      endPlace: all(0),
      shiftStart: all(windows[0][0]),
      shiftEnd: all(windows[0][1]),
      latestReturn: all(windows[0][1]),
      lunchMinutes: all(0),
      lunchFrom: all(0),
      lunchTo: all(0),
      costClass: all(0),
      kind,
      overtimeCost: all(0),
      capacity,
      day: all(0),
      ...(head.VEHICLES_MAX_DURATION && { longest: all(whole(Number(head.VEHICLES_MAX_DURATION))) }),
    },
    stops: {
      count: clients,
      place: Int32Array.from({ length: clients }, (_, s) => s + 1),
      load: Int32Array.from({ length: clients }, (_, s) => sections.DEMAND_SECTION[s + 1][1]),
      visits: new Int32Array(clients).fill(1),
      crowd: Int32Array.from({ length: clients }, (_, s) => s),
    },
    days: 1,
    visitsPerDay: new Int32Array(clients).fill(1),
    windowList,
    windowStart: Int32Array.from({ length: clients + 1 }, (_, s) => s),
    windowOpen: Int32Array.from({ length: clients }, (_, s) => windows[s + 1][0]),
    // The format's windows are for the start of service.
    windowLast: Int32Array.from({ length: clients }, (_, s) => windows[s + 1][1]),
    windowClose: Int32Array.from({ length: clients }, (_, s) => windows[s + 1][1] + service[s + 1]),
    fixedCost: new Int32Array(clients * vehicles),
    menus: new SingleOptionMenus(service.slice(1), prizes ? prizes.slice(1) : new Array(clients).fill(MUST), MUST),
  };
  return {
    name: head.NAME,
    problem,
    optional: prizes !== undefined,
    judge: (routes) => {
      const { total, feasible } = judge(problem, routes, service, windows, prizes);
      // As the best known values of each family are told: Solomon's and Homberger's in units, the others' in whole numbers.
      return { objective: isSiteDependent || prizes ? total : total / 10, feasible };
    },
    print: (routes, objective) =>
      routes
        .filter((route) => route.length > 0)
        .map((route, k) => `Route #${k + 1}: ${route.map((visit) => visit.stop + 1).join(' ')}`)
        .concat(`Cost ${objective}`)
        .join('\n'),
  };
}

/** Own arithmetic: distance, windows at the start of service, capacity, longest time away, each client at most once. */
function judge(problem, routes, service, windows, prizes) {
  const n = problem.places;
  let total = 0;
  let feasible = true;
  const seen = new Set();
  routes.forEach((route, v) => {
    if (route.length === 0) return;
    let time = windows[0][0];
    let at = 0;
    let load = 0;
    for (const { stop } of route) {
      const node = stop + 1;
      if (seen.has(node) || problem.windowList[stop * problem.vehicles.count + v] < 0) feasible = false;
      seen.add(node);
      total += problem.minutes[at * n + node];
      time = Math.max(time + problem.minutes[at * n + node], windows[node][0]);
      if (time > windows[node][1]) feasible = false;
      time += service[node];
      load += problem.stops.load[stop];
      at = node;
    }
    total += problem.minutes[at * n];
    const back = time + problem.minutes[at * n];
    if (back > windows[0][1] || load > problem.vehicles.capacity[v]) feasible = false;
    if (problem.vehicles.longest && leastAway(problem, route, service, windows) > problem.vehicles.longest[v])
      feasible = false;
  });
  for (let node = 1; node < n; node++) {
    if (seen.has(node)) continue;
    if (prizes) total += prizes[node];
    else feasible = false;
  }
  return { total, feasible };
}

/** Driven so that the last stop and the end are reached as early as can be, then backwards from there: least time away. */
function leastAway(problem, route, service, windows) {
  const nodes = [0, ...route.map((visit) => visit.stop + 1), 0];
  const leg = (k) => problem.minutes[nodes[k - 1] * problem.places + nodes[k]];
  let end = windows[0][0];
  for (let k = 1; k < nodes.length; k++) end = Math.max(end + service[nodes[k - 1]] + leg(k), windows[nodes[k]][0]);
  let begin = end;
  for (let k = nodes.length - 1; k > 0; k--)
    begin = Math.min(begin - leg(k) - service[nodes[k - 1]], windows[nodes[k - 1]][1]);
  return end - begin;
}
