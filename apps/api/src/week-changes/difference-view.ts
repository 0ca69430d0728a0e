import type { PlanChange } from '@deckround/planning';
import type { Tx } from '@deckround/store';

/** A change with the names of the sites and customers whom it concerns. */
export async function differenceView(tx: Tx, change: PlanChange) {
  const siteIds = [...new Set(change.visits.map((visit) => visit.siteId))];
  const sites = await tx.site.findMany({ where: { id: { in: siteIds } }, include: { customer: true } });
  const siteOf = new Map(sites.map((site) => [site.id, site]));
  return {
    cents: change.cents,
    leftOut: change.leftOut,
    visits: change.visits.map((visit) => ({
      ...visit,
      siteName: siteOf.get(visit.siteId)?.name ?? '',
      customerName: siteOf.get(visit.siteId)?.customer.name ?? '',
    })),
  };
}
