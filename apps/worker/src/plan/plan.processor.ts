import type { JobPayload } from '@deckround/jobs';
import { PlanningSnapshot } from '@deckround/planning';
import {
  addDays,
  inUse,
  isDayUnderWay,
  plannedWork,
  planningSnapshot,
  type Register,
  upkeepSnapshot,
} from '@deckround/register';
import { countUnmadeBefore, dateText, loadRegister, shopNow, wallClockOf } from '@deckround/register-store';
import { forecastInThread, planInThread } from '../compute/compute-in-thread.js';
import type { PlanProgress } from '../compute/messages.js';
import { snapshotHash } from '../compute/snapshot-hash.js';
import type { WorkerContext } from '../context.js';
import { type HeldRun, holdRun } from '../runs/hold-run.js';
import { knownDrives } from '../travel/known-drives.js';
import { writeWeekPlan } from './write-week-plan.js';

/** From being told of a visit on a day under way to its start, at least. Own choice. */
const MINUTES_TO_COME = 60;
/** How often a cancel wish is looked for and progress is written, milliseconds. */
const LOOK = 400;

/** A week of visits for a shop: read, decide, write. A run taken over continues from the snapshot of the first. */
export function planProcessor(context: WorkerContext) {
  return (payload: JobPayload<'plan'>): Promise<void> =>
    holdRun(context, 'plan_run', payload, async (run) => {
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
              ...(await makeSnapshot(register, now, dateText(row.weekOf), row.days)),
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
}

/**
 * The day whose knowledge the plan rests on: today, also in the middle of the week planned; or the eve of a week that is
 * over (planning it again must not know its future).
 */
export function planAsOf(today: string, weekOf: string, days: number): string {
  return today > addDays(weekOf, days - 1) ? addDays(weekOf, -1) : today;
}

async function makeSnapshot(told: Register, now: Date, firstDate: string, days: number): Promise<PlanningSnapshot> {
  const today = wallClockOf(now, told.shop.timeZone).slice(0, 10);
  const asOf = planAsOf(today, firstDate, days);
  const register = asOf === today ? told : visitsUntil(told, addDays(firstDate, days - 1));
  const { due } = await forecastInThread({
    ...upkeepSnapshot(register, { asOf, costFrom: firstDate, costDays: days }),
    planned: plannedWork(register, { asOf, firstDate, days }),
  });
  const present = (zone: string) => wallClockOf(now, zone).slice(0, 16);
  const isUnderWay = asOf === today && asOf >= firstDate && isDayUnderWay(register, today, present);
  const soon = new Date(now.getTime() + MINUTES_TO_COME * 60_000);
  const soonest = (zone: string) => wallClockOf(soon, zone).slice(0, 16);
  return planningSnapshot(register, due, { asOf, firstDate, days, ...(isUnderWay && { soonest }) });
}

/** The register without the visits after a date: a week that is over did not know them. */
function visitsUntil(register: Register, date: string): Register {
  const isKnown = (visit: { readonly date: string }) => visit.date <= date;
  return {
    ...register,
    promises: register.promises.filter(isKnown),
    previous: register.previous.filter(isKnown),
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
