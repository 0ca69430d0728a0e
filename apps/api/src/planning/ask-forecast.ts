import { DomainError } from '@deckround/platform';
import { addDays, weekdayOf } from '@deckround/register';
import { dateColumn, todayOf } from '@deckround/register-store';
import type { Prisma, Tx } from '@deckround/store';
import type { Actor } from '../access/actor.js';

interface Asked {
  /** Left out = the shop's today. */
  readonly asOf?: string | undefined;
  /** First day priced; left out = the next Monday. */
  readonly costFrom?: string | undefined;
  readonly costDays?: number;
}

/**
 * Writes the row of a forecast that is asked for; its work is asked for once the row is committed.
 * @throws DomainError invalid-input
 */
export async function askForecast(
  tx: Tx,
  actor: Actor,
  asked: Asked,
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
      costDays: asked.costDays ?? COST_DAYS,
      askedBy: actor.kind === 'person' ? actor.id : null,
    },
  });
}

/** As in ForecastRunCreate. */
const COST_DAYS = 14;
