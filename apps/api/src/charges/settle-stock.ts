import { Prisma, type Tx } from '@deckround/store';
import { lockVisit } from '../planning/lock-visit.js';
import { factsOf, findChargedVisit, latestInvoice, workDone } from './charged-visit.js';
import { partsUsed } from './parts-used.js';
import { standingFacts } from './stated-facts.js';
import { giveBackToStock, takeFromStock } from './stock.js';

const NONE = new Prisma.Decimal(0);

/**
 * Makes stock agree with what a visit used, as far as that is known by now: what was recorded while the visit is open,
 * what its charges name once it is closed. What it took is remembered, so that the same again takes nothing.
 */
export async function settleStock(tx: Tx, visitId: string): Promise<void> {
  await lockVisit(tx, visitId);
  const visit = await findChargedVisit(tx, visitId);
  const { shopId, technicianId } = visit;
  const invoice = await latestInvoice(tx, visitId);
  const done = visit.state === 'done' ? workDone(visit) : [];
  const facts = invoice ? standingFacts(factsOf(invoice), done) : {};
  const wanted = new Map<string, Prisma.Decimal>();
  for (const { part, quantity } of await partsUsed(tx, visit, done, facts))
    wanted.set(part.id, quantity.plus(wanted.get(part.id) ?? NONE));
  const before = new Map((await tx.partTaken.findMany({ where: { visitId } })).map((row) => [row.partId, row]));
  // always in the same order, so that two visits that use the same parts wait for each other and not in a circle
  for (const partId of [...new Set([...wanted.keys(), ...before.keys()])].sort()) {
    const asked = wanted.get(partId) ?? NONE;
    const { fromVan, fromShelf, ...row } = before.get(partId) ?? { asked: NONE, fromVan: NONE, fromShelf: NONE };
    if (asked.equals(row.asked)) continue;
    const more = asked.minus(row.asked);
    const stands = { van: fromVan, shelf: fromShelf };
    const { van, shelf } = more.isPositive()
      ? await takeFromStock(tx, partId, more, technicianId, stands)
      : await giveBackToStock(tx, partId, asked, technicianId, stands);
    const data = { asked, fromVan: van, fromShelf: shelf };
    await tx.partTaken.upsert({
      where: { visitId_partId: { visitId, partId } },
      create: { shopId, visitId, partId, ...data },
      update: data,
    });
  }
}
