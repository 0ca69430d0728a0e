import { describe, expect, it } from '@jest/globals';
import { planWeek } from '../plan-week.js';
import type { PlanningSnapshot } from '../snapshot.js';
import { generateSnapshot } from '../test-support/generate-snapshot.js';
import type { PlannedVisit, WeekPlan } from '../week-plan.js';
import { checkPlan } from './check-plan.js';
import type { PlanFaultCode } from './plan-fault.js';

const shop = generateSnapshot({
  seed: 4,
  sites: 16,
  machinesPerSite: 5,
  items: 110,
  technicians: 3,
  days: 5,
  promises: true,
});
const good = planWeek(shop, { snapshotHash: '', seed: 1, stop: { iterations: 800 } });

function later(instant: string, minutes: number): string {
  const offset = instant.slice(-6);
  const sign = offset[0] === '-' ? -1 : 1;
  const east = sign * (Number(offset.slice(1, 3)) * 60 + Number(offset.slice(4)));
  const local = new Date(Date.parse(instant) + (minutes + east) * 60_000).toISOString().slice(0, 19);
  return local + offset;
}

function shifted(visit: PlannedVisit, minutes: number): void {
  visit.arriveAt = later(visit.arriveAt, minutes);
  visit.startAt = later(visit.startAt, minutes);
  visit.endAt = later(visit.endAt, minutes);
}

/** Breaks a copy of the plan, or of the snapshot it is checked against, and returns the codes found. */
function codesAfter(spoil: (plan: WeekPlan, snapshot: PlanningSnapshot) => void): Set<PlanFaultCode> {
  const plan = structuredClone(good);
  const snapshot = structuredClone(shop);
  spoil(plan, snapshot);
  return new Set(checkPlan(snapshot, plan).map((fault) => fault.code));
}

const siteOf = (snapshot: PlanningSnapshot, visit: PlannedVisit) =>
  snapshot.sites.find((site) => site.id === visit.siteId)!;

const breakages: [string, PlanFaultCode, (plan: WeekPlan, snapshot: PlanningSnapshot) => void][] = [
  ['a visit in no route', 'structure', (plan) => plan.routes[0]!.visitIds.pop()],
  [
    'an unknown item',
    'structure',
    (plan) => {
      plan.visits[0]!.items[0]!.itemId = 'nothing';
    },
  ],
  ['an item done twice', 'item', (plan) => plan.visits[1]!.items.push(plan.visits[0]!.items[0]!)],
  ['an item forgotten', 'item', (plan) => plan.leftOut.pop()],
  [
    'an item at the wrong machine',
    'item',
    (plan) => {
      plan.visits[0]!.items[0]!.machineId = 'M0';
    },
  ],
  [
    'a missing skill',
    'skill',
    (plan, snapshot) => {
      const itemId = plan.visits.find((visit) => visit.promisedVisitId === null)!.items[0]!.itemId;
      snapshot.items.find((item) => item.id === itemId)!.skill = 'welding';
    },
  ],
  [
    'a part that comes later',
    'release',
    (plan, snapshot) => {
      const itemId = plan.visits.find((visit) => visit.promisedVisitId === null)!.items[0]!.itemId;
      snapshot.items.find((item) => item.id === itemId)!.releaseDate = '2014-07-01';
    },
  ],
  [
    'an item that takes longer',
    'minutes',
    (plan, snapshot) => {
      snapshot.items.find((item) => item.id === plan.visits[0]!.items[0]!.itemId)!.minutes += 7;
    },
  ],
  [
    'preparation that is not counted',
    'minutes',
    (plan) => {
      plan.visits.find((visit) => visit.preparationMinutes > 0)!.preparationMinutes -= 5;
    },
  ],
  [
    'sharing that is not there',
    'minutes',
    (plan) => {
      plan.visits[0]!.items[0]!.sharedMinutes += 5;
    },
  ],
  [
    'a site closed on that day',
    'access',
    (plan, snapshot) => {
      const visit = plan.visits.find((row) => row.promisedVisitId === null)!;
      siteOf(snapshot, visit).windows = siteOf(snapshot, visit).windows.filter((window) => window.date !== visit.date);
    },
  ],
  [
    'work that starts before arrival',
    'access',
    (plan) => {
      const visit = plan.visits.find((row) => row.promisedVisitId === null)!;
      visit.arriveAt = later(visit.startAt, 1);
    },
  ],
  [
    'a wrong offset',
    'access',
    (plan) => {
      plan.visits[0]!.startAt = plan.visits[0]!.startAt.replace('-05:00', '-04:00');
    },
  ],
  [
    'a start before the shift',
    'shift',
    (plan) => {
      plan.routes[0]!.leaveAt = later(plan.routes[0]!.leaveAt, -600);
    },
  ],
  [
    'a day off',
    'shift',
    (plan, snapshot) => {
      const technician = snapshot.technicians.find((row) => row.id === plan.routes[0]!.technicianId)!;
      technician.shifts = technician.shifts.filter((shift) => shift.date !== plan.routes[0]!.date);
    },
  ],
  [
    'a return after overtime',
    'shift',
    (plan) => {
      plan.routes[0]!.returnAt = later(plan.routes[0]!.returnAt, 400);
    },
  ],
  [
    'overtime that is not told',
    'overtime',
    (plan) => {
      plan.routes[0]!.overtimeMinutes += 1;
    },
  ],
  [
    'a drive too fast',
    'drive',
    (plan) => {
      plan.routes[0]!.leaveAt = later(plan.routes[0]!.leaveAt, 5);
    },
  ],
  [
    'a visit too soon after the other',
    'drive',
    (plan) => {
      const route = plan.routes.find((row) => row.visitIds.length > 1)!;
      shifted(plan.visits.find((visit) => visit.id === route.visitIds[1])!, -120);
    },
  ],
  [
    'no lunch',
    'lunch',
    (plan) => {
      plan.routes.find((route) => route.lunch)!.lunch = null;
    },
  ],
  [
    'a late lunch',
    'lunch',
    (plan) => {
      const { lunch } = plan.routes.find((route) => route.lunch)!;
      lunch!.from = later(lunch!.from, 180);
      lunch!.to = later(lunch!.to, 180);
    },
  ],
  [
    'a short lunch',
    'lunch',
    (plan) => {
      const { lunch } = plan.routes.find((route) => route.lunch)!;
      lunch!.to = later(lunch!.to, -5);
    },
  ],
  [
    'kilometres that do not add up',
    'route-sums',
    (plan) => {
      plan.routes[0]!.driveMetres += 1;
    },
  ],
  [
    'waiting that does not add up',
    'route-sums',
    (plan) => {
      plan.routes[0]!.waitMinutes += 1;
    },
  ],
  [
    'too many machines down',
    'machines-down',
    (plan, snapshot) => {
      const visit = plan.visits.find((row) => new Set(row.items.map((item) => item.machineId)).size > 1)!;
      Object.assign(siteOf(snapshot, visit), { downRule: 'whole-visit', maxMachinesDown: 1 });
    },
  ],
  [
    'a frozen visit moved',
    'promise',
    (plan, snapshot) => {
      const visit = plan.visits[0]!;
      snapshot.promises = [
        {
          visitId: 'fixed',
          kind: 'frozen',
          siteId: visit.siteId,
          technicianId: visit.technicianId,
          date: visit.date,
          from: '00:00',
          to: '23:59',
          itemIds: visit.items.map((item) => item.itemId),
          moveCents: 100,
        },
      ];
    },
  ],
  [
    'a promise claimed out of its slot',
    'promise',
    (plan) => {
      shifted(plan.visits.find((visit) => visit.promisedVisitId !== null)!, 180);
    },
  ],
  [
    'a promise nobody gave',
    'promise',
    (plan) => {
      plan.visits.find((visit) => visit.promisedVisitId === null)!.promisedVisitId = 'never';
    },
  ],
  [
    'a wrong price of leaving out',
    'left-out',
    (plan) => {
      plan.leftOut[0]!.cents += 1;
    },
  ],
  [
    'a must-do that is not called one',
    'left-out',
    (plan) => {
      plan.leftOut[0]!.mustDo = !plan.leftOut[0]!.mustDo;
    },
  ],
  [
    'a part not on the load list',
    'load',
    (plan) => {
      plan.routes.find((route) => route.load.length > 0)!.load.pop();
    },
  ],
  [
    'a missing part not told',
    'load',
    (_plan, snapshot) => {
      for (const part of snapshot.parts) Object.assign(part, { onHand: 0, arrivals: [] });
    },
  ],
  [
    'a visit whose own share is wrong by a cent',
    'cost',
    (plan) => {
      plan.visits[0]!.marginalCents += 1;
    },
  ],
  [
    'the share of a visit on a day with overtime that is wrong by a cent',
    'cost',
    (plan) => {
      const late = plan.routes.find((route) => route.overtimeMinutes > 0)!;
      plan.visits.find((visit) => visit.id === late.visitIds[0])!.marginalCents += 1;
    },
  ],
  [
    'waiting that is wrong by a cent',
    'cost',
    (plan) => {
      plan.visits[0]!.items[0]!.waitingCents += 1;
    },
  ],
  ...(
    ['total', 'travel', 'labour', 'overtime', 'visitFees', 'preference', 'timing', 'deferral', 'disruption'] as const
  ).map((part): [string, PlanFaultCode, (plan: WeekPlan) => void] => [
    `${part} wrong by a cent`,
    'cost',
    (plan) => {
      plan.cost[part] += 1;
    },
  ]),
];

describe('checkPlan', () => {
  it('has nothing against the plan itself', () => {
    expect(checkPlan(shop, good)).toEqual([]);
    expect(good.visits.some((visit) => visit.promisedVisitId !== null)).toBe(true);
  });

  it.each(breakages)('finds %s', (_name, code, spoil) => {
    expect(codesAfter(spoil)).toContain(code);
  });
});
