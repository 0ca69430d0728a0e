import type { Alert, ChargesSince } from '@deckround/contracts';
import { clause } from '@deckround/planning';
import type { Tx } from '@deckround/store';
import type { z } from 'zod';
import { chargesSince, LEFT } from '../charges/left-as-it-is.js';

type View = z.infer<typeof Alert>;
type Line = z.infer<typeof ChargesSince>['missing'][number];

/** Issued documents that do not know what came to light, or was taken back, of their visit: until a person answers. */
export async function documentsBehind(tx: Tx): Promise<View[]> {
  const alerts: View[] = [];
  for (const id of await documentsPutInDoubt(tx)) {
    const invoice = await tx.chargeDocument.findUniqueOrThrow({ where: { id }, include: { site: true } });
    const { missing, surplus, left } = await chargesSince(tx, invoice);
    if (left !== null || missing.length + surplus.length === 0) continue;
    const lacks = missing.map(named).join(', ');
    const beyond = surplus.map(named).join(', ');
    const number = String(invoice.number);
    const told = sentenceOf(number, lacks, beyond);
    alerts.push({
      kind: 'document-behind',
      ...{ siteId: invoice.siteId, siteName: invoice.site.name, machineId: null, machineCode: null },
      ...{ visitId: invoice.visitId, stopgapId: null, orderId: null, documentId: id, answerId: null },
      sentence: told.sentence,
      choice:
        'Take it back and draft it anew: what is on record by then is charged. Or leave it as it is, and say why.',
      clauses: { sentence: told.clause, choice: clause('amend-or-leave') },
      move: null,
    });
  }
  return alerts;
}

const named = ({ kind, name, machineCode, quantity }: Line) =>
  kind === 'part' ? `${quantity} × ${name}` : `${machineCode}: ${name}`;

function sentenceOf(number: string, lacks: string, beyond: string) {
  if (beyond === '')
    return {
      sentence: `Invoice ${number} does not charge what came to light after it was issued: ${lacks}.`,
      clause: clause('document-lacks', { number, what: lacks }),
    };
  if (lacks === '')
    return {
      sentence: `Invoice ${number} charges what was taken back after it was issued: ${beyond}.`,
      clause: clause('document-beyond', { number, what: beyond }),
    };
  return {
    sentence: `Invoice ${number} does not charge what came to light after it was issued: ${lacks}. It charges what was taken back: ${beyond}.`,
    clause: clause('document-lacks-and-beyond', { number, lacks, beyond }),
  };
}

/**
 * Documents that stand, of whose visits something that is charged was told or taken back since they were issued, or since
 * a person last answered.
 */
async function documentsPutInDoubt(tx: Tx): Promise<string[]> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    with put_right as (
      select visit_id, max(at) as at
      from (
        select visit_id, decided_at as at from field_record
          where state = 'accepted' and visit_id is not null
            and kind in ('item-done', 'found-work', 'part-used', 'part-taken-back')
        union all
        select (detail ->> 'visitId')::uuid, at from audit_entry
          where action in ('completion.taken-back', 'part-use.taken-back') and detail ->> 'visitId' is not null
      ) as told
      group by visit_id
    )
    select d.id
    from charge_document d
    join put_right p on p.visit_id = d.visit_id
    where d.kind = 'invoice' and d.state = 'issued'
      and not exists (select from charge_document c where c.credits_id = d.id)
      and p.at >= coalesce((select max(at) from audit_entry where subject_id = d.id and action = ${LEFT}), d.issued_at)
    order by d.number`;
  return rows.map(({ id }) => id);
}
