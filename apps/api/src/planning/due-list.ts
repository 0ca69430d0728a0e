import type { DueOrder, DueQuery } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { Prisma, type Tx } from '@deckround/store';
import { OVERDUE_FROM } from '@deckround/upkeep';
import { z } from 'zod';
import type { Actor } from '../access/actor.js';
import { type Cursor, readCursor, writeCursor } from '../http/paging.js';

type Filter = Omit<z.infer<typeof DueQuery>, 'cursor' | 'limit' | 'order'>;

/** Items that fall due within no foreseeable time come last. */
const NEVER = '9999-12-31';

const include = { machine: { include: { site: true, class: true } } } satisfies Prisma.DueForecastInclude;
export type DueRow = Prisma.DueForecastGetPayload<{ include: typeof include }>;

interface Key {
  readonly id: string;
  readonly due: string;
  readonly cost: number;
  readonly siteId: string;
  readonly siteCost: number;
}

interface SiteSums {
  readonly siteId: string;
  readonly items: number;
  readonly machines: number;
  readonly overdue: number;
  readonly deferralCents: number;
}

/**
 * A list's columns in its order, all ascending, the row's own key last; and how each is read back from a cursor. The
 * work of a site stands together, the site that costs most to leave first.
 */
const ORDERS: Record<
  DueOrder,
  { columns: readonly string[]; casts: readonly (keyof typeof FORMS)[]; keyOf: (row: Key) => unknown[] }
> = {
  date: { columns: ['due'], casts: ['date'], keyOf: (row) => [row.due] },
  cost: { columns: ['-cost'], casts: ['bigint'], keyOf: (row) => [-row.cost] },
  site: {
    columns: ['-site_cost', 'site_id', '-cost'],
    casts: ['bigint', 'uuid', 'bigint'],
    keyOf: (row) => [-row.siteCost, row.siteId, -row.cost],
  },
};

/** One page of what falls due. Sorted where the rows are, so that a page of a large shop reads a page and no more. */
export async function readDuePage(
  tx: Tx,
  actor: Actor,
  today: string,
  { cursor, limit, order, ...filter }: z.infer<typeof DueQuery>,
): Promise<{ rows: DueRow[]; next: string | null }> {
  const { columns, keyOf } = ORDERS[order];
  const by = Prisma.raw([...columns, 'id'].join(', '));
  const keys = await tx.$queryRaw<Key[]>`
    with wanted as (
      select d.id, coalesce(d.p50, ${NEVER}::date) as due, d.deferral_cents as cost, m.site_id,
        sum(greatest(d.deferral_cents, 0)) over (partition by m.site_id) as site_cost
      ${wanted(actor, today, filter)}
    )
    select id, due::text, cost, site_id as "siteId", site_cost::float8 as "siteCost" from wanted
    ${after(order, readCursor(cursor))} order by ${by} limit ${limit + 1}`;
  const shown = keys.slice(0, limit);
  const rows = await tx.dueForecast.findMany({ where: { id: { in: shown.map(({ id }) => id) } }, include });
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  const last = shown.at(-1);
  return {
    rows: shown.flatMap(({ id }) => rowOf.get(id) ?? []),
    next:
      keys.length > limit && last ? writeCursor({ key: JSON.stringify([order, ...keyOf(last)]), id: last.id }) : null,
  };
}

/** All of the list in figures, at each site. */
export async function sumUpDue(tx: Tx, actor: Actor, today: string, filter: Filter) {
  const sites = await tx.$queryRaw<SiteSums[]>`
    select m.site_id as "siteId", count(*)::int as items, count(distinct d.machine_id)::int as machines,
      (count(*) filter (where ${chanceOverdue(today)} >= ${OVERDUE_FROM}))::int as overdue,
      sum(greatest(d.deferral_cents, 0))::float8 as "deferralCents"
    ${wanted(actor, today, filter)} group by m.site_id order by m.site_id`;
  const sum = (of: 'items' | 'machines' | 'overdue' | 'deferralCents') =>
    sites.reduce((all, each) => all + each[of], 0);
  return {
    items: sum('items'),
    machines: sum('machines'),
    overdue: sum('overdue'),
    deferralCents: sum('deferralCents'),
    sites: sites.map(({ siteId, items, deferralCents }) => ({ siteId, items, deferralCents })),
  };
}

/** From and where: rows of machines in use, of an own site where the caller has such. */
function wanted(actor: Actor, today: string, filter: Filter): Prisma.Sql {
  const conditions = [
    Prisma.sql`(m.retired_on is null or m.retired_on > ${today}::date)`,
    actor.siteIds === null ? null : Prisma.sql`m.site_id = any(${[...actor.siteIds]}::uuid[])`,
    filter.siteId === undefined ? null : Prisma.sql`m.site_id = ${filter.siteId}::uuid`,
    filter.machineId === undefined ? null : Prisma.sql`d.machine_id = ${filter.machineId}::uuid`,
    filter.code === undefined ? null : Prisma.sql`d.code = ${filter.code}`,
    filter.kind === undefined ? null : Prisma.sql`(d.stopgap_id is not null) = ${filter.kind === 'stopgap'}`,
    filter.until === undefined ? null : Prisma.sql`d.p50 <= ${filter.until}::date`,
    filter.overdueAtLeast === undefined
      ? null
      : Prisma.sql`${chanceOverdue(today)} >= ${filter.overdueAtLeast}::float8`,
  ].filter((condition) => condition !== null);
  return Prisma.sql`from due_forecast d join machine m on m.id = d.machine_id where ${Prisma.join(conditions, ' and ')}`;
}

/** As `chanceOverdue` of `libs/upkeep` reckons it, for rows that stay in the database. */
function chanceOverdue(today: string): Prisma.Sql {
  return Prisma.sql`coalesce(d.probability_overdue[
    1 + greatest(0, least(${today}::date - d.cost_from, cardinality(d.probability_overdue) - 1))], 0)`;
}

function after(order: DueOrder, cursor: Cursor | null): Prisma.Sql {
  if (cursor === null) return Prisma.empty;
  const { columns, casts } = ORDERS[order];
  const bounds = boundsOf(cursor.key, order).map(
    (bound, place) => Prisma.sql`${String(bound)}::text::${Prisma.raw(casts[place]!)}`,
  );
  return Prisma.sql`where (${Prisma.raw([...columns, 'id'].join(', '))}) > (${Prisma.join([
    ...bounds,
    Prisma.sql`${cursor.id}::uuid`,
  ])})`;
}

const FORMS = { date: z.iso.date(), bigint: z.int(), uuid: z.uuid() };

/** @throws DomainError invalid-input where the cursor is of another list */
function boundsOf(key: string, order: DueOrder): (string | number)[] {
  try {
    const [of, ...values] = z.array(z.unknown()).parse(JSON.parse(key));
    const { casts } = ORDERS[order];
    if (of === order && values.length === casts.length)
      return values.map((value, place) => FORMS[casts[place]!].parse(value));
  } catch {
    // falls through to the fault
  }
  throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
}
