import type { PlanChange, RoadCallKind } from '@deckround/planning';

interface Names {
  technician: (id: string) => string;
  site: (id: string) => string;
  /** `Tuesday 10:40` of an instant with offset. */
  time: (instant: string) => string;
  money: (cents: number) => string;
}

const OPENING: Record<RoadCallKind, string> = {
  'squeeze-in': 'squeezes it in',
  'push-one': 'takes it in place of another visit',
  're-plan': 'takes it, and the day is arranged anew',
};

/** The visit that carries the call; `visitId` null = a visit of its own. */
export interface Carrier {
  visitId: string | null;
  technicianId: string;
  /** With offset. */
  startAt: string;
}

/** One option in words: who goes when, who moves and by how much, and what it costs. */
export function roadCallSentence(kind: RoadCallKind, carrier: Carrier, change: PlanChange, names: Names): string {
  const call = change.visits.find((visit) => visit.what === 'added' && visit.to !== null);
  const rescued = change.visits.find(
    (visit) => visit.from === null && visit.visitId === carrier.visitId && visit !== call,
  );
  const who = names.technician(carrier.technicianId);
  const when = names.time(carrier.startAt);
  const opening =
    carrier.visitId === null
      ? `${who} ${OPENING[kind]} on ${when}.`
      : rescued
        ? `${who} makes the visit there that nobody could make, and takes it along, on ${when}${rescued.breaksPromise ? ', which breaks its promise' : ''}.`
        : `${who} takes it along on the visit already planned there, on ${when}.`;
  const others = change.visits.filter((visit) => visit !== call && visit !== rescued);
  const moved = others.map((visit) => {
    const place = names.site(visit.siteId);
    const promise = visit.breaksPromise ? ', which breaks its promise' : '';
    if (visit.what === 'added')
      return `${place} has a new visit by ${names.technician(visit.to!.technicianId)} on ${names.time(visit.to!.startAt)}`;
    if (visit.what === 'dropped') {
      const instead = visit.workTo.map(
        (to) => `${names.technician(to.technicianId)} does its work there on ${names.time(to.startAt)}`,
      );
      return `The visit to ${place} on ${names.time(visit.from!.startAt)} is taken out${promise}: ${instead.join(' and ') || 'its work waits'}`;
    }
    if (visit.what === 'moved')
      return `${place} moves to ${names.technician(visit.to!.technicianId)} on ${names.time(visit.to!.startAt)}${promise}`;
    const minutes = Math.abs(visit.minutesLater ?? 0);
    return `${place} begins ${minutes} min ${(visit.minutesLater ?? 0) > 0 ? 'later' : 'earlier'}${promise}`;
  });
  const shifts = moved.length === 0 ? 'Nobody else moves.' : `${moved.join('; ')}.`;
  return `${opening} ${shifts} It costs ${names.money(change.cents.total)}.`;
}
