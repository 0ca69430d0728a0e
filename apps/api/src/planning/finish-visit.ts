import type { VisitFinish } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, revisitReadings, wallClockOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { refuseFutureTime } from '../field-work/refuse-future.js';
import { closeVisit } from './close-visit.js';
import { completeItem } from './complete-item.js';
import type { VisitRow } from './visit-view.js';

/**
 * Closes a visit: readings taken, completions of what was done, stopgaps made good, what it costs drafted. What was
 * skipped stays due.
 */
export async function finishVisit(
  tx: Tx,
  actor: Actor,
  visit: VisitRow,
  body: z.infer<typeof VisitFinish>,
  now: Date,
): Promise<void> {
  if (visit.state === 'done' || visit.state === 'cancelled') {
    throw new DomainError(
      'visit-closed',
      `The visit is ${visit.state} already: record later facts as completions and findings.`,
    );
  }
  refuseFutureTime('/finishedAt', body.finishedAt, now);
  const known = new Set(visit.visitItems.map((item) => item.id));
  const unknown = body.done.findIndex((id) => !known.has(id));
  if (unknown >= 0) {
    throw new DomainError('invalid-input', 'It names work that is not part of this visit.', [
      { pointer: `/done/${unknown}`, detail: 'not an item of this visit' },
    ]);
  }
  const machines = new Set(visit.visitItems.map((item) => item.machineId));
  const foreign = body.readings.findIndex((reading) => !machines.has(reading.machineId));
  if (foreign >= 0) {
    throw new DomainError('invalid-input', 'It names a machine that is not part of this visit.', [
      { pointer: `/readings/${foreign}/machineId`, detail: 'record it as a reading of its own' },
    ]);
  }
  const { shopId } = actor;
  const site = await tx.site.findUniqueOrThrow({ where: { id: visit.siteId } });
  const finishedAt = new Date(body.finishedAt);
  const doneOn = dateColumn(wallClockOf(finishedAt, site.timeZone).slice(0, 10));
  const hours = new Map(body.readings.map((reading) => [reading.machineId, reading.hours]));
  await tx.reading.createMany({
    skipDuplicates: true,
    data: body.readings.map((reading) => ({
      shopId,
      machineId: reading.machineId,
      readAt: finishedAt,
      hours: reading.hours,
      source: 'technician',
    })),
  });
  const done = new Set(body.done);
  const note = body.signedBy === '' ? '' : `signed by ${body.signedBy}`;
  for (const item of visit.visitItems.filter((each) => done.has(each.id) && each.state === 'planned')) {
    await completeItem(tx, actor, visit.id, item, { doneOn, meterHours: hours.get(item.machineId) ?? null, note });
  }
  if (body.readings.length > 0) await revisitReadings(tx, [...hours.keys()], now);
  await closeVisit(tx, visit, finishedAt, body.charges, now);
}
