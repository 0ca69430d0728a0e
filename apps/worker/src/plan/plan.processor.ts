import type { JobPayload } from '@deckround/jobs';
import { PlanningSnapshot } from '@deckround/planning';
import { addDays, inUse } from '@deckround/register';
import { countUnmadeBefore, dateText, loadRegister, shopNow } from '@deckround/register-store';
import { planInThread } from '../compute/compute-in-thread.js';
import type { PlanProgress } from '../compute/messages.js';
import { snapshotHash } from '../compute/snapshot-hash.js';
import type { WorkerContext } from '../context.js';
import { type HeldRun, holdRun } from '../runs/hold-run.js';
import { knownDrives } from '../travel/known-drives.js';
import { endTurn } from './end-turn.js';
import { daysAsked, snapshotOfDays } from './snapshot-of-days.js';
import { writeWeekPlan } from './write-week-plan.js';

/** How often a cancel wish is looked for and progress is written, milliseconds. */
const LOOK = 400;

/** A week of visits for a shop: read, decide, write. A run taken over continues from the snapshot of the first. */
export function planProcessor(context: WorkerContext) {
  return async (payload: JobPayload<'plan'>): Promise<void> => {
    const ended = await holdRun(context, 'plan_run', payload, async (run) => {
      const { shopId, runId } = payload;
      const { row, told, now, unmade } = await context.store.inShop(shopId, async (tx) => {
        const row = await tx.planRun.findUniqueOrThrow({ where: { id: runId } });
        const now = await shopNow(tx, context.clock.now());
        const unmade = await countUnmadeBefore(tx, dateText(row.weekOf), now);
        return { row, told: await loadRegister(tx), now, unmade };
      });
      // what is retired before the days are over is served no more in them
      const register = inUse(told, addDays(dateText(row.weekOf), row.days - 1));
      const { drives, warning } =
        row.snapshot === null ? await knownDrives(context, shopId, register) : { drives: null, warning: row.warning };
      const snapshot =
        row.snapshot === null
          ? {
              ...(await snapshotOfDays(register, now, daysAsked(row))),
              ...(drives && { drives }),
            }
          : PlanningSnapshot.parse(row.snapshot);
      const hash = snapshotHash(snapshot);
      if (row.snapshot === null) {
        const stays = `Work had begun on ${snapshot.asOf}: what was planned for that day stays as it was.`;
        const owed = `Visits before these days that nobody can make where they stand: ${unmade}; their work counts as done here, so plan their week again first, then this one.`;
        const warnings = [warning, snapshot.isUnderWay ? stays : null, unmade > 0 ? owed : null].filter(
          (each) => each !== null,
        );
        await context.store.inShop(shopId, (tx) =>
          tx.planRun.updateMany({
            where: { id: runId },
            data: { snapshot, snapshotHash: hash, warning: warnings.length > 0 ? warnings.join(' ') : null },
          }),
        );
      }
      const budget = row.iterations === null ? { seconds: row.seconds } : { iterations: row.iterations };
      let newest: PlanProgress | null = null;
      const search = planInThread(
        snapshot,
        {
          ...{ snapshotHash: hash, seed: row.seed, ...budget },
          ...{ threads: row.threads, combine: row.combine },
        },
        (progress) => {
          newest = progress;
        },
      );
      const look = setInterval(() => {
        lookAtRun(context, payload, run, newest)
          .then((goOn) => goOn || search.cancel())
          .catch((error: unknown) =>
            context.logger.warn('plan.progress-not-written', { runId, reason: String(error) }),
          );
        newest = null;
      }, LOOK);
      try {
        const plan = await search.plan;
        clearInterval(look);
        await run.finish('done', async (tx) =>
          writeWeekPlan(tx, shopId, runId, told, plan, snapshot, await shopNow(tx, context.clock.now())),
        );
      } finally {
        clearInterval(look);
      }
    });
    if (ended !== null) await endTurn(context, payload, ended);
  };
}

/** @returns whether the search should go on */
async function lookAtRun(
  { store }: WorkerContext,
  { shopId, runId }: JobPayload<'plan'>,
  run: HeldRun,
  progress: PlanProgress | null,
): Promise<boolean> {
  return store.inShop(shopId, async (tx) => {
    if (progress !== null) {
      await tx.planRun.updateMany({
        where: { id: runId, status: 'running' },
        data: { progress: { ...progress }, totalCents: progress.totalCents },
      });
    }
    const row = await tx.planRun.findUnique({ where: { id: runId }, select: { cancelAsked: true } });
    return !run.isLost() && row?.cancelAsked !== true;
  });
}
