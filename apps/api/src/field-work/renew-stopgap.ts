import type { StopgapRenewal } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import { DomainError } from '@deckround/platform';
import { limitAhead, stopgapLimit } from '@deckround/register';
import { dateText, shopNow, todayOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { columnOrNull, dateOrNull, hoursText } from '../register/values.js';
import { lockOpenStopgap } from './open-stopgap.js';
import type { StopgapRow } from './stopgaps.js';

interface Limit {
  readonly limitHours: number | null;
  readonly limitOn: string | null;
}

/** A stopgap is found to hold longer: a new limit in place of the one it has, its hours counted from today. */
export async function renewStopgap(
  tx: Tx,
  actor: Actor,
  id: string,
  { reason, ...renewed }: z.infer<typeof StopgapRenewal>,
  now: Date,
): Promise<void> {
  const row = await lockOpenStopgap(tx, id);
  const today = await todayOf(tx, now);
  const limit = { limitOn: renewed.limitOn, limitHours: renewed.limitHours && Number(renewed.limitHours) } as Limit;
  const ends = limitAhead(limit, today, await usageOf(tx, row.machineId));
  requireLater(limit, stopgapLimit(limit, ends.p10), await limitNow(tx, row), today);
  await tx.stopgap.update({
    where: { id },
    data: {
      ...{ limitHours: renewed.limitHours, limitOn: columnOrNull(renewed.limitOn), renewedOn: columnOrNull(today) },
      // Whoever was told of the old limit is told of the new one as well.
      ...{ limitToldAt: null, version: { increment: 1 } },
    },
  });
  await tx.followUp.updateMany({
    where: { stopgapId: id },
    data: { dueOn: columnOrNull(renewed.limitOn), version: { increment: 1 } },
  });
  // Until the forecast that is asked for has come, lists and alerts go by the new limit already.
  await tx.dueForecast.updateMany({
    where: { stopgapId: id },
    data: {
      ...{ p10: columnOrNull(ends.p10), p50: columnOrNull(ends.p50), p90: columnOrNull(ends.p90) },
      probabilityOverdue: [],
    },
  });
  const before = { limitHoursBefore: hoursText(row.limitHours), limitOnBefore: dateOrNull(row.limitOn) };
  const subject = { subjectKind: 'stopgap', subjectId: id, machineId: row.machineId };
  const detail = { what: row.description, reason, on: today, ...renewed, ...before };
  await audit(tx, actor, { action: 'stopgap.renewed', ...subject, detail }, await shopNow(tx, now));
}

async function usageOf(tx: Tx, machineId: string) {
  const usage = await tx.usageForecast.findUnique({ where: { machineId } });
  return usage && { ...usage, asOf: dateText(usage.asOf) };
}

/** Until when it is good by the newest forecast; null = by no day that is known. */
async function limitNow(tx: Tx, row: StopgapRow): Promise<string | null> {
  const due = await tx.dueForecast.findFirst({ where: { stopgapId: row.id }, select: { p10: true } });
  const limitHours = row.limitHours === null ? null : Number(row.limitHours);
  return stopgapLimit({ limitHours, limitOn: dateOrNull(row.limitOn) }, dateOrNull(due?.p10 ?? null));
}

/** @throws DomainError invalid-input, pointing to what makes the new limit no later than the one it has */
function requireLater(renewed: Limit, limit: string | null, before: string | null, today: string): void {
  const pointer = limit === renewed.limitOn ? '/limitOn' : '/limitHours';
  if (limit !== null && limit < today)
    throw new DomainError('invalid-input', 'The new limit is past already. Nothing was changed.', [
      { pointer, detail: 'it lies in the past: give today or a later day' },
    ]);
  if (limit !== null && before !== null && limit <= before)
    throw new DomainError('invalid-input', 'The new limit is no later than the one it has. Nothing was changed.', [
      {
        pointer,
        detail: `it comes to about ${limit}, and the stopgap is good until about ${before} as it is`,
        clause: clause('stopgap-not-later', { limitDate: limit, beforeDate: before }),
      },
    ]);
}
