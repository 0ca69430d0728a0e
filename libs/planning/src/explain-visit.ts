import { canDo, withItem } from './cheapest-addition.js';
import { type Draft, type DraftVisit, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';
import { respectsMachines } from './machines-down.js';
import { preparationMinutes } from './preparation.js';
import { money, sentences } from './sentences.js';
import { visitMinutes } from './visit-minutes.js';
import type { PlannedItem } from './week-plan.js';

export interface ExplainedVisit {
  items: PlannedItem[];
  marginalCents: number;
  reason: string;
}

/**
 * Why this visit now. All figures are differences of two evaluated plans with everything else unchanged.
 *
 * marginal = cost with the visit − cost without it, its items deferred and its promise broken;
 * waiting(i) = cheapest of leaving item i out or doing it in another visit of the site − present plan.
 * Anchors: fewest items, by falling gain (deferral price − timing cost − own labour), that pay for the trip (what
 * the visit costs apart from its items); the rest are riders. Where something must be done, that pays, and all else
 * rides along.
 */
export function explainVisit(instance: PlanningInstance, draft: Draft, v: number, k: number): ExplainedVisit {
  const { snapshot } = instance;
  const day = instance.technicianDays[v]!;
  const route = draft[v]!;
  const visit = route[k]!;
  const now = routeCents(instance, v, route);
  const without = routeCents(instance, v, route.toSpliced(k, 1));
  const deferral = visit.items.reduce((sum, item) => sum + instance.items[item]!.deferralCents, 0);
  const marginalCents = now - without - deferral - (visit.promise?.moveCents ?? 0);
  const wage = snapshot.technicians[day.technician]!.wageCentsPerHour;
  const minutes = visitMinutes(instance, visit.site, visit.items);

  const gainOf = (index: number) => {
    const item = instance.items[index]!;
    return item.deferralCents - item.timingCents[day.day]! - Math.round((wage * item.minutes) / 60);
  };
  const timing = visit.items.reduce((sum, item) => sum + instance.items[item]!.timingCents[day.day]!, 0);
  const work = Math.round((wage * (minutes.items + minutes.preparation)) / 60);
  const trip = now - without - timing - work;

  const roles = new Map<number, PlannedItem['role']>();
  const must = visit.items.filter((index) => instance.items[index]!.mustDo);
  const others = visit.items.filter((index) => !instance.items[index]!.mustDo);
  others.sort((a, b) => gainOf(b) - gainOf(a) || a - b);
  for (const index of must) roles.set(index, 'must-do');
  let paid = must.length > 0 ? Infinity : 0;
  others.forEach((index, n) => {
    const anchors = paid < trip || (must.length === 0 && n === 0);
    roles.set(index, anchors ? 'anchor' : 'rider');
    if (anchors) paid += gainOf(index);
  });

  const opened = new Map<number, number>();
  const items = [...must, ...others].map((index): PlannedItem => {
    const item = instance.items[index]!;
    const source = snapshot.items[index]!;
    const forest = instance.forests[item.machine]!;
    const before = opened.get(item.machine) ?? 0;
    opened.set(item.machine, before | item.preparationBits);
    const sharedMinutes = preparationMinutes(item.preparationBits & before, forest);
    const alone = item.minutes + preparationMinutes(item.preparationBits, forest);
    const waitingCents = waiting(instance, draft, v, k, index, now);
    const role = roles.get(index)!;
    return {
      itemId: source.id,
      machineId: source.machineId,
      role,
      minutes: item.minutes,
      sharedMinutes,
      timingCents: item.timingCents[day.day]!,
      waitingCents,
      reason: sentences(
        source.because,
        role === 'must-do' ? 'Must be done in these days' : '',
        day.day > item.latestDay && visit.promise?.kind !== 'frozen'
          ? `It should have been done by ${source.latestDate}, which nothing allows: it is done as soon after as it can be`
          : '',
        role === 'anchor' ? `Its gain of ${money(gainOf(index), snapshot)} pays for the visit` : '',
        role === 'rider' ? 'Rides along because the visit happens anyway' : '',
        sharedMinutes > 0
          ? `Takes ${alone - sharedMinutes} min here, as ${sharedMinutes} min of preparation are shared; alone it would be ${alone} min and a trip`
          : '',
        waitingCents > 0 ? `Not doing it in this visit would cost ${money(waitingCents, snapshot)}` : '',
      ),
    };
  });
  items.sort((a, b) => visitOrder(instance, visit, a) - visitOrder(instance, visit, b));
  const isUnderWay = snapshot.isUnderWay === true && day.date === snapshot.asOf;
  return { items, marginalCents, reason: visitReason(instance, visit, items, marginalCents, isUnderWay) };
}

/** Machines together, in the snapshot's order of items. */
function visitOrder(instance: PlanningInstance, visit: DraftVisit, planned: PlannedItem): number {
  const index = visit.items.find((item) => instance.snapshot.items[item]!.id === planned.itemId)!;
  return instance.items[index]!.machine * instance.items.length + index;
}

function waiting(instance: PlanningInstance, draft: Draft, v: number, k: number, index: number, now: number): number {
  const route = draft[v]!;
  const visit = route[k]!;
  const rest = visit.items.filter((item) => item !== index);
  const reduced = rest.length === 0 ? route.toSpliced(k, 1) : route.with(k, { ...visit, items: rest });
  const lostPromise = rest.length === 0 ? (visit.promise?.moveCents ?? 0) : 0;
  const saved = now - routeCents(instance, v, reduced) - lostPromise;
  let cheapest = instance.items[index]!.deferralCents;
  draft.forEach((visits, w) => {
    if (w === v || !canDo(instance, index, w)) return;
    const there = visits.findIndex((other) => other.site === visit.site && other.promise?.kind !== 'frozen');
    if (there < 0) return;
    const joined = withItem(visits[there]!, index);
    if (!respectsMachines(instance, joined)) return;
    const added = routeCents(instance, w, visits.with(there, joined)) - routeCents(instance, w, visits);
    cheapest = Math.min(cheapest, added);
  });
  return Math.round(cheapest - saved);
}

function visitReason(
  instance: PlanningInstance,
  visit: DraftVisit,
  items: readonly PlannedItem[],
  marginalCents: number,
  isUnderWay: boolean,
): string {
  const { snapshot } = instance;
  const count = (role: PlannedItem['role']) => items.filter((item) => item.role === role).length;
  const shared = items.reduce((sum, item) => sum + item.sharedMinutes, 0);
  const [must, anchors, riders] = [count('must-do'), count('anchor'), count('rider')];
  const purpose =
    must > 0
      ? `Needed for ${plural(must, 'item')} that must be done`
      : `Paid for by ${plural(anchors, 'item')} due about now`;
  return sentences(
    visit.promise?.kind === 'frozen'
      ? isUnderWay
        ? 'Its day is under way'
        : 'Announced to the customer and fixed'
      : '',
    visit.promise?.kind === 'confirmed' ? 'Kept as confirmed to the customer' : '',
    riders > 0 ? `${purpose}; ${riders === 1 ? '1 more rides' : `${riders} more ride`} along` : purpose,
    shared > 0 ? `Doing them together saves ${shared} min of preparation` : '',
    marginalCents < 0
      ? `With this visit the plan is ${money(-marginalCents, snapshot)} cheaper than without it`
      : `Without this visit the plan would be ${money(marginalCents, snapshot)} cheaper, but it has to be made`,
  );
}

function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
