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
 * @returns false when someone else holds it or it is finished: there is nothing to do then
 */
export async function claimRun(
  tx: Tx,
  name: RunTable,
  id: string,
  holder: string,
  leaseSeconds: number,
): Promise<boolean> {
  const taken = await tx.$executeRaw`
    update ${table(name)} set status = 'running', lease_holder = ${holder}, attempts = attempts + 1,
      started_at = coalesce(started_at, now()), lease_until = now() + make_interval(secs => ${leaseSeconds})
    where id = ${id}::uuid and (status = 'asked' or (status = 'running' and lease_until < now()))`;
  return taken === 1;
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

/** Runs that nobody works on although they are not finished: asked a while ago, or their holder fell silent. */
export async function findLostRuns(tx: Tx, askedSecondsAgo: number): Promise<LostRun[]> {
  return tx.$queryRaw<LostRun[]>`
    select id, shop_id as "shopId", 'plan_run' as "table" from plan_run
      where (status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
         or (status = 'running' and lease_until < now())
    union all
    select id, shop_id, 'forecast_run' from forecast_run
      where (status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
         or (status = 'running' and lease_until < now())
    union all
    select id, shop_id, 'life_run' from life_run
      where (status = 'asked' and asked_at < now() - make_interval(secs => ${askedSecondsAgo}))
         or (status = 'running' and lease_until < now())`;
}
