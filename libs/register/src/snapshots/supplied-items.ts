import type { PlanningItem, PlanningPromise } from '@deckround/planning';
import { addDays } from '../local-date.js';
import type { OpenStopgap, Part } from '../register.js';
import type { EventAhead } from './before-events.js';
import { stopgapItemId } from './machine-items.js';
import { type PartsWanted, releaseDates } from './parts-in-turn.js';
import type { PartsOfVisit } from './planned-elsewhere.js';
import type { PlanningSpan } from './planning-span.js';
import { stopgapLimit } from './stopgap-limit.js';

/** Later than any date. */
const NEVER = '9999-12-31';
/** The rank of work that nobody was promised. */
const CAN_WAIT = 3;

export interface SupplyOf {
  readonly parts: readonly Part[];
  readonly stopgaps: readonly OpenStopgap[];
  readonly promises: readonly PlanningPromise[];
  /** Visits after these days, whose parts are set aside. */
  readonly later: readonly PartsOfVisit[];
  readonly ahead: (item: PlanningItem) => EventAhead | null;
}

/**
 * Items with the day on which their parts are there, each part given out once: to what is held fast in any case, to
 * must-dos and stopgaps by their limits, to what customers were promised, in these days and later, then to what is dearest
 * to leave.
 */
export function suppliedItems(items: readonly PlanningItem[], of: SupplyOf, span: PlanningSpan): PlanningItem[] {
  const lastDate = addDays(span.firstDate, span.days - 1);
  const stopgaps = new Map(of.stopgaps.map((stopgap) => [stopgapItemId(stopgap.id), stopgap]));
  const inTurn = items
    .map((item) => ({ item, ...turnOf(item, of, stopgaps.get(item.id)) }))
    .sort((a, b) => a.rank - b.rank || (a.by === b.by ? byPrice(a.item, b.item) : a.by < b.by ? -1 : 1));
  const wanted = inTurn.map(
    ({ item, fixedOn }): PartsWanted => ({
      ...{ id: item.id, parts: item.parts, fixedOn },
      toldOn: stopgaps.get(item.id)?.partExpectedOn ?? null,
    }),
  );
  const canWait = inTurn.findIndex(({ rank }) => rank === CAN_WAIT);
  const releases = releaseDates(
    wanted.toSpliced(canWait < 0 ? wanted.length : canWait, 0, ...of.later.map(setAside)),
    of.parts,
    span.asOf,
  );
  return items.map((item) => {
    const supplied = { ...item, releaseDate: releases.get(item.id)!.date };
    const stopgap = stopgaps.get(item.id);
    return stopgap === undefined ? supplied : owedReturn(supplied, stopgap, { ...span, lastDate });
  });
}

/**
 * The return that a stopgap owes: never left out for money, as soon as the part can be there, and done before the limit
 * where that can be.
 */
function owedReturn(
  item: PlanningItem,
  stopgap: OpenStopgap,
  { asOf, firstDate, lastDate }: PlanningSpan & { readonly lastDate: string },
): PlanningItem {
  const isThereBy = (date: string) => item.releaseDate === null || item.releaseDate <= date;
  const owed = { ...item, mustDo: item.mustDo && isThereBy(lastDate) };
  const limit = stopgapLimit(stopgap, item.dueP10);
  if (!owed.mustDo || limit === null || limit < asOf || limit < firstDate || limit > lastDate) return owed;
  if (isThereBy(limit)) return { ...owed, latestDate: limit, betterLate: true };
  return { ...owed, because: `${owed.because} It cannot be done by its limit on ${limit}: its part comes later.` };
}

function setAside({ id, date, parts }: PartsOfVisit): PartsWanted {
  return { id, parts, toldOn: null, fixedOn: date };
}

/** Whose turn it is: by rank, then by day. */
function turnOf(item: PlanningItem, { promises, ahead }: SupplyOf, stopgap: OpenStopgap | undefined) {
  const promise = promises.find(({ itemIds }) => itemIds.includes(item.id));
  if (promise?.kind === 'frozen') return { rank: 0, by: promise.date, fixedOn: promise.date };
  const event = ahead(item);
  if (event !== null || stopgap || item.mustDo) {
    const limit = (stopgap ? stopgapLimit(stopgap, item.dueP10) : item.dueP50) ?? NEVER;
    return { rank: 1, by: event !== null && event.latestDate < limit ? event.latestDate : limit, fixedOn: null };
  }
  return promise ? { rank: 2, by: promise.date, fixedOn: null } : { rank: CAN_WAIT, by: '', fixedOn: null };
}

function byPrice(a: PlanningItem, b: PlanningItem): number {
  if (a.deferralCents !== b.deferralCents) return b.deferralCents - a.deferralCents;
  const key = ({ dueP50, id }: PlanningItem) => `${dueP50 ?? NEVER} ${id}`;
  return key(a) < key(b) ? -1 : 1;
}
