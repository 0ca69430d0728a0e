import type { Alert } from '@deckround/contracts';
import type { Register } from '@deckround/register';
import { dateColumn, wallClockOf } from '@deckround/register-store';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { documentsBehind } from './documents-behind.js';
import { lateParts } from './late-parts.js';
import { movesAsked } from './moves-asked.js';
import { PlannedWeeks } from './other-place.js';
import { overdueOrders } from './overdue-orders.js';
import { stopgapLimits } from './stopgap-limits.js';

/**
 * What needs a decision: wishes of sites, parts that come too late for the visit or stopgap waiting for them, limits drawing
 * near, and documents that do not charge what came to light.
 */
export async function alertsOf(tx: Tx, register: Register, now: Date): Promise<z.infer<typeof Alert>[]> {
  const today = wallClockOf(now, register.shop.timeZone).slice(0, 10);
  const visits = await tx.visit.findMany({
    where: { state: { in: ['proposed', 'confirmed'] }, visitDate: { gte: dateColumn(today) } },
    include: { site: true, visitItems: true },
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  const weeks = new PlannedWeeks(tx, now);
  return [
    ...(await movesAsked(tx, weeks)),
    ...(await overdueOrders(tx, today)),
    ...(await documentsBehind(tx)),
    ...(await lateParts(register, weeks, visits, today)),
    ...(await stopgapLimits(tx, register, weeks, visits, today)),
  ];
}
