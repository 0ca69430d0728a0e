import type { DayRoute, LeftOut, PlannedVisit, PlanningSnapshot, WeekPlan } from '@deckround/planning';
import type { Register } from '@deckround/register';
import { clock, count, day, duration, money } from './format.js';

/** What a plan's ids are called. */
export interface WeekNames {
  readonly shop: string;
  readonly currency: string;
  readonly firstDate: string;
  readonly technician: ReadonlyMap<string, string>;
  readonly site: ReadonlyMap<string, { readonly name: string; readonly notes: string }>;
  readonly machine: ReadonlyMap<string, string>;
  readonly item: ReadonlyMap<string, { readonly title: string; readonly machineId: string }>;
}

interface Sink {
  write(text: string): unknown;
}

/** Most left-out items shown one by one; the rest are counted. */
const SHOWN_LEFT_OUT = 12;

export function weekNames(register: Register, snapshot: PlanningSnapshot): WeekNames {
  return {
    shop: snapshot.shopName,
    currency: snapshot.currency,
    firstDate: snapshot.firstDate,
    technician: new Map(snapshot.technicians.map((each) => [each.id, each.name])),
    site: new Map(register.sites.map((each) => [each.id, { name: each.name, notes: each.notes }])),
    machine: new Map(snapshot.machines.map((each) => [each.id, each.label])),
    item: new Map(snapshot.items.map((each) => [each.id, { title: each.title, machineId: each.machineId }])),
  };
}

/** The week as a shop would want to read it: the sentence first, then day by day, then what was left out and why. */
export function printWeek(plan: WeekPlan, names: WeekNames, out: Sink): void {
  const line = (text = '') => out.write(`${text}\n`);
  line(`${names.shop}: the week of ${day(names.firstDate)}`);
  line(sentence(plan, names));
  const visits = new Map(plan.visits.map((visit) => [visit.id, visit]));
  let date = '';
  for (const route of [...plan.routes].sort(
    (a, b) => compare(a.date, b.date) || compare(a.technicianId, b.technicianId),
  )) {
    if (route.visitIds.length === 0) continue;
    if (route.date !== date) {
      date = route.date;
      line();
      line(`── ${day(date)} ${'─'.repeat(90)}`);
    }
    printRoute(route, visits, names, line);
  }
  printLeftOut(plan.leftOut, names, line);
  line();
  line(
    'Work on blades, raised decks, fuel and batteries hurts people. The machine’s own manual, local codes and licensed',
  );
  line('practice come first: engine off, key out, plug lead or battery off, deck blocked, never held by a jack alone.');
}

function sentence(plan: WeekPlan, names: WeekNames): string {
  const items = plan.visits.flatMap((visit) => visit.items);
  const machines = new Set(items.map((item) => item.machineId));
  const total = (key: 'driveMinutes' | 'overtimeMinutes') => plan.routes.reduce((sum, route) => sum + route[key], 0);
  const waiting = plan.leftOut.reduce((sum, each) => sum + each.cents, 0);
  return [
    `${count(plan.visits.length, 'visit')}, ${count(machines.size, 'machine')}, ${count(items.length, 'item')}`,
    `${duration(total('driveMinutes'))} driving`,
    total('overtimeMinutes') > 0 ? `${duration(total('overtimeMinutes'))} overtime` : 'no overtime',
    `${count(plan.leftOut.length, 'item')} left for later at ${money(waiting, names.currency)}`,
    `${money(plan.cost.travel + plan.cost.labour + plan.cost.overtime + plan.cost.visitFees, names.currency)} for driving and work`,
  ].join('; ');
}

function printRoute(
  route: DayRoute,
  visits: ReadonlyMap<string, PlannedVisit>,
  names: WeekNames,
  line: (text?: string) => void,
): void {
  const lunch = route.lunch ? `, lunch ${clock(route.lunch.from)}–${clock(route.lunch.to)}` : '';
  const over = route.overtimeMinutes > 0 ? `, ${duration(route.overtimeMinutes)} overtime` : '';
  line();
  line(
    `${names.technician.get(route.technicianId)}: leaves ${clock(route.leaveAt)}, back ${clock(route.returnAt)}; ` +
      `${duration(route.driveMinutes)} driving (${Math.round(route.driveMetres / 1000)} km), ${duration(route.workMinutes)} at work${lunch}${over}`,
  );
  printLoad(route, line);
  for (const id of route.visitIds) printVisit(visits.get(id)!, names, line);
}

function printLoad(route: DayRoute, line: (text?: string) => void): void {
  const text = (each: DayRoute['load'][number]) =>
    `${each.quantity} ${each.unit === 'each' ? '×' : each.unit} ${each.name}`;
  if (route.load.length > 0) say(line, `  load: ${route.load.map(text).join('; ')}`, 8);
  const missing = route.load.filter((each) => each.missing > 0);
  if (missing.length > 0) {
    say(line, `  MISSING: ${missing.map((each) => text({ ...each, quantity: each.missing })).join('; ')}`, 11);
  }
}

function printVisit(visit: PlannedVisit, names: WeekNames, line: (text?: string) => void): void {
  const site = names.site.get(visit.siteId);
  const notes = site?.notes ? ` · ${site.notes}` : '';
  const promise = visit.promisedVisitId === null ? '' : ' · promised';
  line(
    `  ${clock(visit.startAt)}–${clock(visit.endAt)}  ${site?.name ?? visit.siteId} (${duration(visit.driveMinutes)} drive)${promise}${notes}`,
  );
  say(line, `               ${visit.reason}`, 15);
  for (const machineId of new Set(visit.items.map((item) => item.machineId))) {
    line(`      ${names.machine.get(machineId) ?? machineId}`);
    const items = visit.items.filter((item) => item.machineId === machineId);
    for (const item of items.filter((each) => each.role !== 'rider')) {
      const mark = item.role === 'must-do' ? 'must' : 'due ';
      const what = `${title(item.itemId, names)}, ${duration(item.minutes)}`;
      say(line, `        ${mark}  ${what}: ${withoutTitle(item.reason, item.itemId, names)}`, 14);
    }
    const riders = items.filter((each) => each.role === 'rider');
    if (riders.length > 0) {
      const titles = riders.map((item) => `${title(item.itemId, names)} ${item.minutes}`);
      say(line, `        also  ${titles.join(', ')} min`, 14);
    }
  }
}

function printLeftOut(leftOut: readonly LeftOut[], names: WeekNames, line: (text?: string) => void): void {
  line();
  if (leftOut.length === 0) {
    line('Nothing was left out.');
    return;
  }
  line(`── Left for later: ${count(leftOut.length, 'item')} ${'─'.repeat(74)}`);
  const dearest = [...leftOut].sort(
    (a, b) => Number(b.mustDo) - Number(a.mustDo) || b.cents - a.cents || compare(a.itemId, b.itemId),
  );
  for (const each of dearest.slice(0, SHOWN_LEFT_OUT)) {
    const machine = names.machine.get(names.item.get(each.itemId)?.machineId ?? '') ?? '';
    const what = `${each.mustDo ? 'MUST ' : ''}${title(each.itemId, names)}, ${machine}`;
    say(line, `  ${money(each.cents, names.currency).padStart(9)}  ${what}: ${each.reason}`, 13);
  }
  const rest = dearest.slice(SHOWN_LEFT_OUT);
  if (rest.length > 0) {
    const cents = rest.reduce((sum, each) => sum + each.cents, 0);
    line(`  ${money(cents, names.currency).padStart(9)}  ${count(rest.length, 'further item')}: ${reasons(rest)}`);
  }
}

const REASONS: Readonly<Record<LeftOut['code'], string>> = {
  skill: 'nobody has the skill',
  part: 'the part comes too late',
  access: 'the site is not open',
  time: 'no room in any shift',
  'cheaper-later': 'cheaper to wait',
};

function reasons(leftOut: readonly LeftOut[]): string {
  const counts = new Map<LeftOut['code'], number>();
  for (const { code } of leftOut) counts.set(code, (counts.get(code) ?? 0) + 1);
  return [...counts].map(([code, number]) => `${number} ${REASONS[code]}`).join(', ');
}

/** Reasons begin with the item's title, which stands beside them already. */
function withoutTitle(reason: string, itemId: string, names: WeekNames): string {
  const prefix = `${title(itemId, names)}: `;
  return reason.startsWith(prefix) ? reason.slice(prefix.length) : reason;
}

const WIDTH = 118;

/** A line broken between words, the rest set in under its text. */
function say(line: (text: string) => void, text: string, indent: number): void {
  let rest = text;
  while (rest.length > WIDTH) {
    const space = rest.lastIndexOf(' ', WIDTH);
    const cut = space > indent ? space : WIDTH;
    line(rest.slice(0, cut));
    rest = ' '.repeat(indent) + rest.slice(cut).trimStart();
  }
  line(rest);
}

function title(itemId: string, names: WeekNames): string {
  return names.item.get(itemId)?.title ?? itemId;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
