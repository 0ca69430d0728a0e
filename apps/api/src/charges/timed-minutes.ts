import { shareOut } from '@deckround/billing';
import type { Tx } from '@deckround/store';

interface Work {
  readonly id: string;
  /** Standard minutes of the work. */
  readonly minutes: number;
}

/**
 * Minutes that were timed at the site, shared over the work done in proportion to its standard minutes, to the whole
 * minute and without losing one. What a person states of a piece of work comes first and takes part of the time.
 *
 * @returns minutes by work; empty when nothing was timed, or not a minute: a clock pressed twice has timed no work
 */
export async function timedMinutes(
  tx: Tx,
  visitId: string,
  done: readonly Work[],
  stated: ReadonlyMap<string, { readonly minutes?: number | undefined }>,
): Promise<ReadonlyMap<string, number>> {
  const spans = await tx.workTime.findMany({ where: { visitId }, orderBy: { startedAt: 'asc' } });
  const worked = workedMinutes(spans);
  if (worked === 0) return new Map();
  const open = done.filter((work) => stated.get(work.id)?.minutes === undefined);
  const taken = [...stated.values()].reduce((sum, { minutes }) => sum + (minutes ?? 0), 0);
  const left = Math.max(0, worked - taken);
  const weights = open.map((work) => Math.max(1, work.minutes));
  return new Map(shareOut(left, weights).map((minutes, index) => [open[index]!.id, minutes]));
}

interface Span {
  readonly technicianId: string | null;
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Whole minutes of all people together; a time that one person started twice counts once. Spans in order of their start. */
export function workedMinutes(spans: readonly Span[]): number {
  const until = new Map<string | null, number>();
  let milliseconds = 0;
  for (const { technicianId, startedAt, endedAt } of spans) {
    const from = Math.max(+startedAt, until.get(technicianId) ?? -Infinity);
    if (+endedAt <= from) continue;
    milliseconds += +endedAt - from;
    until.set(technicianId, +endedAt);
  }
  return Math.round(milliseconds / 60_000);
}
