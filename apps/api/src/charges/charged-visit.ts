import type { ChargeFacts } from '@deckround/contracts';
import type { Prisma, Tx } from '@deckround/store';
import type { z } from 'zod';

/** What a person states of a visit, as far as it is charged. */
export type Facts = z.infer<typeof ChargeFacts>;

const INCLUDE = {
  shop: true,
  technician: true,
  site: true,
  visitItems: {
    include: {
      machine: true,
      serviceItem: { include: { serviceItemParts: { include: { part: true } } } },
      stopgap: { include: { part: true } },
      roadCall: true,
    },
  },
} as const;

/** A visit with all that its price hangs on. */
export type ChargedVisit = Prisma.VisitGetPayload<{ include: typeof INCLUDE }>;
export type DoneItem = ChargedVisit['visitItems'][number];

export function findChargedVisit(tx: Tx, id: string): Promise<ChargedVisit> {
  return tx.visit.findUniqueOrThrow({ where: { id }, include: INCLUDE });
}

/** Always in the same order, so that the same work makes the same document. */
export function workDone({ visitItems }: ChargedVisit): DoneItem[] {
  return visitItems
    .filter((item) => item.state === 'done')
    .toSorted((one, other) => order(one).localeCompare(order(other)));
}

function order(item: DoneItem): string {
  return `${item.machine.code}\u0000${item.code}\u0000${item.slot ?? ''}\u0000${item.id}`;
}

/** The document that stands for a visit: the last that was drafted, issued or not; null = nothing was charged. */
export function latestInvoice(tx: Tx, visitId: string) {
  return tx.chargeDocument.findFirst({
    where: { visitId, kind: 'invoice' },
    orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
  });
}

/** What was stated for a document, in all its drafts. */
export function factsOf({ record }: { readonly record: unknown }): Facts {
  return (record as { facts?: Facts } | null)?.facts ?? {};
}
