import { Prisma } from '../generated/client.js';
import type { Tx } from '../store.js';

/** Tables whose rows are pieces of background work. */
export type RunTable = 'plan_run' | 'forecast_run' | 'life_run';

/** Documents of a plan run: those of a large shop are tens of megabytes, and are read only where they are named. */
export const PLAN_DOCUMENTS = { snapshot: true, plan: true } as const satisfies Prisma.PlanRunOmit;

const table = (name: RunTable) => Prisma.raw(name);

export interface LostRun {
  readonly id: string;
  readonly shopId: string;
  readonly table: RunTable;
}

/**
 * Takes a run on for `holder`: an asked one, or a running one whose holder fell silent. The lease has to be renewed.
 * @returns false when someone else holds it, it is finished, or others come first: there is nothing to do then
 */
export async function claimRun(
  tx: Tx,
  name: RunTable,
  id: string,
  holder: string,
  leaseSeconds: number,
): Promise<boolean> {
  if (name === 'plan_run' && !(await isItsTurn(tx, id))) return false;
  const taken = await tx.$executeRaw`
    update ${table(name)} set status = 'running', lease_holder = ${holder}, attempts = attempts + 1,
      started_at = coalesce(started_at, now()), lease_until = now() + make_interval(secs => ${leaseSeconds})
    where id = ${id}::uuid and (status = 'asked' or (status = 'running' and lease_until < now()))`;
  return taken === 1;
}

/**
 * Plans of one shop are made one after the other, in order of asking: each counts on what stands in the days that the
 * others plan.
 */
async function isItsTurn(tx: Tx, id: string): Promise<boolean> {
  // Two that looked at the same time would not see each other.
  await tx.$executeRaw`
    select pg_advisory_xact_lock(hashtextextended(shop_id::text, 0)) from plan_run where id = ${id}::uuid`;
  const ahead = await tx.$queryRaw<{ id: string }[]>`
    select other.id from plan_run mine join plan_run other on other.shop_id = mine.shop_id and other.id <> mine.id
    where mine.id = ${id}::uuid
      and (other.status = 'running' and other.lease_until >= now()
           or other.status in ('asked', 'running')
              and (other.asked_at, other.week_of, other.id) < (mine.asked_at, mine.week_of, mine.id))
    limit 1`;
  return ahead.length === 0;
}

/** The plan run of a shop whose turn it is next. */
export async function nextPlanRun(tx: Tx): Promise<string | null> {
  const next = await tx.planRun.findFirst({
    where: { status: 'asked' },
    orderBy: [{ askedAt: 'asc' }, { weekOf: 'asc' }, { id: 'asc' }],
    select: { id: true },
  });
  return next?.id ?? null;
}

/**
 * Ends a plan run that nobody works on; whoever does is told to stop and keep what there is. Runs that were to follow are
 * not begun.
 */
export async function cancelPlanRun(tx: Tx, id: string): Promise<void> {
  await tx.$executeRaw`
    update plan_run set cancel_asked = true,
      status = case when status = 'running' and lease_until >= now() then status else 'cancelled' end,
      finished_at = case when status = 'running' and lease_until >= now() then null else now() end
    where id = ${id}::uuid and status in ('asked', 'running')`;
  await cancelFollowing(tx, id);
}

/** Cancels the runs that were to follow one. */
export async function cancelFollowing(tx: Tx, id: string): Promise<void> {
  await tx.$executeRaw`
    with recursive following as (
      select id from plan_run where follows_run_id = ${id}::uuid
      union all select run.id from plan_run run join following on run.follows_run_id = following.id)
    update plan_run set status = 'cancelled', cancel_asked = true, finished_at = now()
    where id in (select id from following) and status = 'asked'`;
}

/** @returns false when the lease went to another holder meanwhile: this one has to let go and write nothing */
export async function renewLease(
  tx: Tx,
  name: RunTable,
  id: string,
  holder: string,
  leaseSeconds: number,
): Promise<boolean> {
  const kept = await tx.$executeRaw`
    update ${table(name)} set lease_until = now() + make_interval(secs => ${leaseSeconds})
    where id = ${id}::uuid and status = 'running' and lease_holder = ${holder}`;
  return kept === 1;
}

/** Marks the end of a run, in the transaction that writes its result: both or none. */
export async function finishRun(
  tx: Tx,
  name: RunTable,
  id: string,
  holder: string,
  status: 'done' | 'failed' | 'cancelled',
  error: string | null = null,
): Promise<boolean> {
  const finished = await tx.$executeRaw`
    update ${table(name)} set status = ${status}, error = ${error}, finished_at = now(), lease_until = null
    where id = ${id}::uuid and status = 'running' and lease_holder = ${holder}`;
  return finished === 1;
}

/**
 * Runs that nobody works on although they are not finished: asked a while ago, or their holder fell silent. A plan that waits
 * for another of its shop is asked for when that one ends.
 */
export async function findLostRuns(tx: Tx, askedSecondsAgo: number): Promise<LostRun[]> {
  return tx.$queryRaw<LostRun[]>`
    select id, shop_id as "shopId", 'plan_run' as "table" from plan_run run
      where ((status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
          or (status = 'running' and lease_until < now()))
        and not exists (select from plan_run other
          where other.shop_id = run.shop_id and other.status = 'running' and other.lease_until >= now())
    union all
    select id, shop_id, 'forecast_run' from forecast_run
      where (status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
         or (status = 'running' and lease_until < now())
    union all
    select id, shop_id, 'life_run' from life_run
      where (status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
         or (status = 'running' and lease_until < now())`;
}
