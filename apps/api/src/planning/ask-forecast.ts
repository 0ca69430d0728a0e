import type { ForecastRunCreate } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { addDays, weekdayOf } from '@deckround/register';
import { dateColumn, todayOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';

/**
 * Writes the row of a forecast that is asked for: as of the shop’s today and priced from the next Monday, unless told. Its work
 * is asked for once the row is committed.
 * @throws DomainError invalid-input
 */
export async function askForecast(
  tx: Tx,
  actor: Actor,
  asked: z.infer<typeof ForecastRunCreate>,
  now: Date,
): Promise<Prisma.ForecastRunGetPayload<object>> {
  const asOf = asked.asOf ?? (await todayOf(tx, now));
  const costFrom = asked.costFrom ?? addDays(asOf, 8 - weekdayOf(asOf));
  if (costFrom <= addDays(asOf, -1) || costFrom > addDays(asOf, 60)) {
    throw new DomainError('invalid-input', 'The first day priced has to lie within 60 days after asOf.', [
      { pointer: '/costFrom', detail: `between ${asOf} and ${addDays(asOf, 60)}` },
    ]);
  }
  return tx.forecastRun.create({
    data: {
      shopId: actor.shopId,
      asOf: dateColumn(asOf),
      costFrom: dateColumn(costFrom),
      costDays: asked.costDays,
      askedBy: actor.kind === 'person' ? actor.id : null,
    },
  });
}
