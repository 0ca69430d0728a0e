import type { PlanChange } from '@deckround/planning';
import type { Tx } from '@deckround/store';

/** A change with the names of the sites, customers and technicians whom it concerns. */
export async function differenceView(tx: Tx, change: PlanChange) {
  const siteIds = [...new Set(change.visits.map((visit) => visit.siteId))];
  const sites = await tx.site.findMany({ where: { id: { in: siteIds } }, include: { customer: true } });
  const technicianIds = [...new Set(change.visits.flatMap(({ workTo }) => workTo.map((to) => to.technicianId)))];
  const technicians = await tx.technician.findMany({ where: { id: { in: technicianIds } } });
  const technicianNames = new Map(technicians.map(({ id, name }) => [id, name]));
  const siteOf = new Map(sites.map((site) => [site.id, site]));
  return {
    cents: change.cents,
    leftOut: change.leftOut,
    visits: change.visits.map((visit) => ({
      ...visit,
      workTo: visit.workTo.map((to) => ({ ...to, technicianName: technicianNames.get(to.technicianId) ?? '' })),
      siteName: siteOf.get(visit.siteId)?.name ?? '',
      customerName: siteOf.get(visit.siteId)?.customer.name ?? '',
    })),
  };
}
