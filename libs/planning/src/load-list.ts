import type { Draft } from './draft.js';
import type { PlanningInstance } from './instance.js';
import type { LoadLine } from './week-plan.js';

/**
 * What to load each morning: parts and consumables of all items of the day, summed.
 * `missing`: what stock on hand plus arrivals up to that morning does not cover, after the technician-days before it
 * (in order of date, then technician) took theirs. An order that should have come before `asOf` is not counted on.
 *
 * @returns one list per technician-day
 */
export function loadLists(instance: PlanningInstance, draft: Draft): LoadLine[][] {
  const { snapshot, technicianDays } = instance;
  const left = new Map(snapshot.parts.map((part) => [part.id, part.onHand]));
  const arrivals = snapshot.parts
    .flatMap((part) => part.arrivals.map((arrival) => ({ ...arrival, partId: part.id })))
    .filter((arrival) => arrival.date >= snapshot.asOf)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  let arrived = 0;
  return draft.map((visits, v) => {
    for (; arrived < arrivals.length && arrivals[arrived]!.date <= technicianDays[v]!.date; arrived++) {
      const { partId, quantity } = arrivals[arrived]!;
      left.set(partId, rounded((left.get(partId) ?? 0) + quantity));
    }
    const items = visits.flatMap((visit) => visit.items.map((item) => snapshot.items[item]!));
    const parts = new Map<string, number>();
    const consumables = new Map<string, LoadLine>();
    for (const item of items) {
      for (const { partId, quantity } of item.parts) parts.set(partId, rounded((parts.get(partId) ?? 0) + quantity));
      for (const { name, quantity, unit } of item.consumables) {
        const key = `${name}|${unit}`;
        const line = consumables.get(key) ?? { partId: null, name, quantity: 0, unit, missing: 0 };
        line.quantity = rounded(line.quantity + quantity);
        consumables.set(key, line);
      }
    }
    const lines = [...parts].map(([partId, quantity]): LoadLine => {
      const part = snapshot.parts.find((candidate) => candidate.id === partId);
      const there = left.get(partId) ?? 0;
      left.set(partId, rounded(Math.max(0, there - quantity)));
      return {
        partId,
        name: part?.description ?? partId,
        quantity,
        unit: part?.unit ?? 'pcs',
        missing: rounded(Math.max(0, quantity - there)),
      };
    });
    return [...lines, ...consumables.values()];
  });
}

/** Quantities such as 0.1 l add up without tails. */
function rounded(quantity: number): number {
  return Math.round(quantity * 1e6) / 1e6;
}
