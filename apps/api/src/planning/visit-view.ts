import { dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import type { Actor } from '../access/actor.js';
import { instantOrNull } from '../register/values.js';

export const VISIT_INCLUDE = {
  visitItems: { include: { machine: { select: { siteId: true } } } },
  visitAnswers: { where: { state: { not: 'withdrawn' } }, orderBy: { saidAt: 'desc' }, take: 1 },
} as const satisfies Prisma.VisitInclude;
export type VisitRow = Prisma.VisitGetPayload<{ include: typeof VISIT_INCLUDE }>;

/** The visit for the shop. */
export function toVisitView({ visitItems, visitAnswers, ...row }: VisitRow) {
  return {
    ...row,
    date: dateText(row.visitDate),
    arriveAt: row.arriveAt.toISOString(),
    startAt: row.startAt.toISOString(),
    endAt: row.endAt.toISOString(),
    promisedFrom: instantOrNull(row.promisedFrom),
    promisedTo: instantOrNull(row.promisedTo),
    finishedAt: instantOrNull(row.finishedAt),
    answer: visitAnswers[0] ? answerView(visitAnswers[0]) : null,
    items: visitItems
      .map(({ machine, ...item }) => ({ ...item, isElsewhere: isElsewhere(row, { ...item, machine }) }))
      .sort((a, b) => (a.machineId === b.machineId ? (a.code < b.code ? -1 : 1) : a.machineId < b.machineId ? -1 : 1)),
  };
}

/** Whether what is left to do of a visit is on a machine that stands at another site by now. */
export function isElsewhere(
  { siteId }: { siteId: string },
  { state, machine }: { state: string; machine: { siteId: string } },
): boolean {
  return state === 'planned' && machine.siteId !== siteId;
}

/** The visit for whoever asks: what the shop reckons with is not shown to a grounds supervisor. */
export function visitViewFor(actor: Actor, row: VisitRow) {
  const view = toVisitView(row);
  if (actor.role !== 'supervisor') return view;
  const items = view.items.map((item) => ({ ...item, waitingCents: null, reason: null }));
  return { ...view, items, moveCents: null, marginalCents: null, reason: null };
}

export function answerView(row: Prisma.VisitAnswerGetPayload<object>) {
  return {
    ...row,
    aboutStart: row.aboutStart.toISOString(),
    aboutDate: dateText(row.aboutDate),
    days: row.days.map(dateText),
    saidAt: row.saidAt.toISOString(),
    repliedAt: instantOrNull(row.repliedAt),
  };
}
