import type { Store } from '@deckround/store';
import type { ApiClient } from './api-client.js';
import type { SmallShop } from './small-shop.js';

/** A confirmed visit of the small shop at S1: two pieces of work on M1, on the given day at 9:00 of the site's clock. */
export async function plannedVisit(store: Store, { shopId, siteIds, machineIds }: SmallShop, day: string) {
  return store.inShop(shopId, async (tx) => {
    const technician = await tx.technician.findFirstOrThrow({ orderBy: { code: 'asc' } });
    const at = (clock: string) => new Date(`${day}T${clock}:00-05:00`);
    const visit = await tx.visit.create({
      data: {
        ...{ shopId, siteId: siteIds.get('S1')!, technicianId: technician.id, state: 'confirmed' },
        ...{ visitDate: new Date(`${day}T00:00:00Z`), driveMinutes: 20, setupMinutes: 10, preparationMinutes: 15 },
        ...{ arriveAt: at('08:55'), startAt: at('09:00'), endAt: at('11:00'), marginalCents: 0, reason: 'test' },
      },
    });
    const machine = { machineId: machineIds.get('M1')! };
    for (const [code, title, minutes] of [
      ['sharpen-blades', 'Sharpen and balance blades', 40],
      ['grease-spindles', 'Grease spindles', 25],
    ] as const) {
      const serviceItem = await tx.serviceItem.findFirstOrThrow({
        where: { code, plan: { class: { machines: { some: { id: machine.machineId } } } } },
      });
      const work = { code, title, minutes, role: 'anchor', reason: 'test', serviceItemId: serviceItem.id };
      await tx.visitItem.create({ data: { shopId, visitId: visit.id, ...machine, ...work } });
    }
    return tx.visit.findUniqueOrThrow({
      where: { id: visit.id },
      include: { visitItems: { orderBy: { code: 'asc' } } },
    });
  });
}

/** Plans a visit, finishes all of its work, and gives the draft of its charges. */
export async function draftOf(store: Store, shop: SmallShop, manager: ApiClient, day: string, charges: object = {}) {
  const visit = await plannedVisit(store, shop, day);
  const finished = await manager.post(`/v1/visits/${visit.id}/finish`, {
    finishedAt: visit.endAt.toISOString(),
    done: visit.visitItems.map((item) => item.id),
    charges,
  });
  if (finished.status !== 201) throw new Error(JSON.stringify(finished.body));
  const drafts = await manager.get(`/v1/charge-documents?visitId=${visit.id}`);
  return { visit, draft: drafts.body.items[0] };
}
