import { dateText } from '@deckround/register-store';
import type { Prisma } from '@deckround/store';
import { dateOrNull, instantOrNull } from '../register/values.js';

export const DOCUMENT_INCLUDE = { accountingStates: true, creditedBy: { select: { id: true } } } as const;
export type DocumentRow = Prisma.ChargeDocumentGetPayload<{ include: typeof DOCUMENT_INCLUDE }>;

export function documentView({ accountingStates, creditedBy, ...row }: DocumentRow) {
  const [accounting] = accountingStates;
  return {
    ...row,
    totalCents: row.totalMinor,
    servicedOn: dateText(row.servicedOn),
    createdAt: row.createdAt.toISOString(),
    issuedAt: instantOrNull(row.issuedAt),
    creditedById: creditedBy[0]?.id ?? null,
    accounting: accounting ? { ...accounting, paidOn: dateOrNull(accounting.paidOn) } : null,
    document: row.document as object,
  };
}
