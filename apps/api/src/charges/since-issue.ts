import type { VisitRecord } from '@deckround/billing';
import type { ChargesSince } from '@deckround/contracts';
import { Prisma, type Tx } from '@deckround/store';
import type { z } from 'zod';
import { type DoneItem, factsOf, findChargedVisit, workDone } from './charged-visit.js';
import { partsUsed } from './parts-used.js';

export type Differences = Pick<z.infer<typeof ChargesSince>, 'missing' | 'surplus'>;
type Line = Differences['missing'][number];

/**
 * What the records of a visit say by now, against what its document charges: what came to light after it was issued, and
 * what was taken back. Parts that a person has stated stand as they were stated.
 */
export async function sinceIssue(
  tx: Tx,
  row: { readonly visitId: string; readonly record: unknown },
): Promise<Differences> {
  const { record } = row.record as { record: VisitRecord };
  const facts = factsOf(row);
  const visit = await findChargedVisit(tx, row.visitId);
  const done = workDone(visit);
  const charged = new Set(record.work.map(({ id }) => id));
  const stands = new Set(done.map(({ id }) => id));
  const used =
    facts.parts === undefined
      ? (await partsUsed(tx, visit, done, facts)).map(({ part, quantity }) => ({
          code: part.code,
          name: part.description,
          quantity: quantity.toString(),
        }))
      : record.parts;
  return {
    missing: [...done.filter(({ id }) => !charged.has(id)).map(lineOfItem), ...moreParts(used, record.parts)],
    surplus: [
      ...record.work
        .filter(({ id }) => !stands.has(id))
        .map(({ code, title, machine }) => work(code, title, machine.code, null)),
      ...moreParts(record.parts, used),
    ],
  };
}

const lineOfItem = ({ code, title, machine, slot }: DoneItem) => work(code, title, machine.code, slot);

function work(code: string, name: string, machineCode: string, slot: string | null): Line {
  return { kind: 'work', code, name, machineCode, slot, quantity: null };
}

type Parts = readonly { readonly code: string; readonly name: string; readonly quantity: string }[];

/** What of the first goes beyond the second, part by part. */
function moreParts(these: Parts, those: Parts): Line[] {
  const sums = new Map<string, { name: string; sum: Prisma.Decimal }>();
  const add = ({ code, name }: Parts[number], quantity: Prisma.Decimal) =>
    sums.set(code, { name: sums.get(code)?.name ?? name, sum: quantity.plus(sums.get(code)?.sum ?? 0) });
  for (const part of these) add(part, new Prisma.Decimal(part.quantity));
  for (const part of those) add(part, new Prisma.Decimal(part.quantity).negated());
  return [...sums].flatMap(([code, { name, sum }]) =>
    sum.greaterThan(0)
      ? [{ kind: 'part' as const, code, name, machineCode: null, slot: null, quantity: sum.toString() }]
      : [],
  );
}
