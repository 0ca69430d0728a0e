import type { PlanningSnapshot } from '@deckround/planning';
import {
  addDays,
  isDayUnderWay,
  plannedWork,
  planningSnapshot,
  type Register,
  upkeepSnapshot,
} from '@deckround/register';
import { dateText, wallClockOf } from '@deckround/register-store';
import { forecastInThread } from '../compute/compute-in-thread.js';

/** From being told of a visit on a day under way to its start, at least. Own choice. */
const MINUTES_TO_COME = 60;

/** What a plan run is for. */
export interface AskedDays {
  readonly firstDate: string;
  readonly days: number;
  /** What is only proposed on later days gives way up to here; null = it stands. */
  readonly replansTo: string | null;
}

export function daysAsked(run: { weekOf: Date; days: number; replansTo: Date | null }): AskedDays {
  return { firstDate: dateText(run.weekOf), days: run.days, replansTo: run.replansTo && dateText(run.replansTo) };
}

/**
 * The day whose knowledge the plan rests on: today, also in the middle of the week planned; or the eve of a week that is
 * over (planning it again must not know its future).
 */
function planAsOf(today: string, weekOf: string, days: number): string {
  return today > addDays(weekOf, days - 1) ? addDays(weekOf, -1) : today;
}

/** What the planner is to know: the register as of the day that counts, with the due forecast of it. */
export async function snapshotOfDays(told: Register, now: Date, asked: AskedDays): Promise<PlanningSnapshot> {
  const { firstDate, days } = asked;
  const today = wallClockOf(now, told.shop.timeZone).slice(0, 10);
  const asOf = planAsOf(today, firstDate, days);
  const lastDate = addDays(firstDate, days - 1);
  const register = withoutReplanned(asOf === today ? told : visitsUntil(told, lastDate), lastDate, asked.replansTo);
  const { due } = await forecastInThread({
    ...upkeepSnapshot(register, { asOf, costFrom: firstDate, costDays: days }),
    planned: plannedWork(register, { asOf, firstDate, days }),
  });
  const present = (zone: string) => wallClockOf(now, zone).slice(0, 16);
  const isUnderWay = asOf === today && asOf >= firstDate && isDayUnderWay(register, today, present);
  const soon = new Date(now.getTime() + MINUTES_TO_COME * 60_000);
  const soonest = (zone: string) => wallClockOf(soon, zone).slice(0, 16);
  return planningSnapshot(register, due, { asOf, firstDate, days, ...(isUnderWay && { soonest }) });
}

/** The register without the visits after a date: a week that is over did not know them. */
function visitsUntil(register: Register, date: string): Register {
  const isKnown = (visit: { readonly date: string }) => visit.date <= date;
  return {
    ...register,
    promises: register.promises.filter(isKnown),
    previous: register.previous.filter(isKnown),
  };
}

/** The register without the proposals that runs after this one plan anew. */
function withoutReplanned(register: Register, lastDate: string, replansTo: string | null): Register {
  if (replansTo === null) return register;
  return { ...register, previous: register.previous.filter(({ date }) => date <= lastDate || date > replansTo) };
}
