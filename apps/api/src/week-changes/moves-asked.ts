import type { Alert } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { dateText } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { otherPlace, type PlannedWeeks } from './other-place.js';

type View = z.infer<typeof Alert>;

/** Wishes of sites that nobody has answered, each with the cheapest place on a day that suits. */
export async function movesAsked(tx: Tx, weeks: PlannedWeeks): Promise<View[]> {
  const rows = await tx.visitAnswer.findMany({
    where: { state: 'open' },
    include: { visit: { include: { site: true, visitItems: true } } },
    orderBy: [{ saidAt: 'asc' }, { id: 'asc' }],
  });
  const alerts: View[] = [];
  for (const { visit, ...row } of rows) {
    if (!visit) continue;
    const days = row.days.map(dateText);
    const date = dateText(visit.visitDate);
    const suits = (each: string) => each !== date && (days.length === 0 || days.includes(each));
    // Its own promise may go: the site wishes it.
    const move = await otherPlace(weeks, visit, suits, [visit.id]);
    const wish = days.length === 0 ? 'another day' : days.join(', ');
    alerts.push({
      kind: 'move-asked',
      siteId: visit.siteId,
      siteName: visit.site.name,
      machineId: null,
      machineCode: null,
      visitId: visit.id,
      stopgapId: null,
      orderId: null,
      documentId: null,
      answerId: row.id,
      sentence: `${visit.site.name} asks to move the visit on ${date} to ${wish}: ${row.reason}`,
      choice: move
        ? `Move the visit to ${move.date}, or say why it has to stay.`
        : 'No day that suits is free in the planned week: say so, or plan the week again.',
      clauses: {
        sentence: clause(days.length === 0 ? 'asks-to-move' : 'asks-to-move-to', {
          site: visit.site.name,
          visitDate: date,
          wishDates: days.join(' '),
          reason: row.reason,
        }),
        choice: move ? clause('move-or-say-why', { toDate: move.date }) : clause('no-day-suits'),
      },
      move,
    });
  }
  return alerts;
}
