import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState } from 'react';
import { api, Refused } from '../../data/api.js';
import { weekQuery } from '../../data/queries.js';
import { serverEvents } from '../../data/server-events.js';
import { stored } from '../../data/stored.js';
import type { PlanRun, Shop, Week } from '../../data/types.js';
import { addDays } from '../../words/local-date.js';

const RECONNECT_MS = 1500;

export interface PlanSearch {
  /** Of several weeks asked for together, the one that is being planned now. */
  readonly run: PlanRun | null;
  /** Cost of the best plan so far, one per report: the falling line. */
  readonly costs: readonly number[];
  readonly isRunning: boolean;
  start(seconds: number, weeks: number): Promise<void>;
  stop(): Promise<void>;
}

const isOpen = (run: PlanRun) => run.status === 'asked' || run.status === 'running';

/** The run looked at, and the week of the page on which it was asked for. */
interface Kept {
  readonly id: string;
  readonly askedOn: string;
}

/** A plan run of one week, and those of the weeks after it: asked for, watched until they end, taken up again after a reload. */
export function usePlanSearch(weekOf: string, shop: Shop, onBefore: () => void): PlanSearch {
  const client = useQueryClient();
  const kept = useRef(stored<Kept>('deckround.plan-run', () => sessionStorage)).current;
  const [run, setRun] = useState<PlanRun | null>(null);
  const [costs, setCosts] = useState<readonly number[]>([]);
  const watching = useRef<AbortController | null>(null);

  const watch = useCallback(
    async (first: string, askedOn: string) => {
      watching.current?.abort();
      const own = new AbortController();
      watching.current = own;
      const { signal } = own;
      const see = (seen: PlanRun) => {
        if (isOpen(seen)) setRun(seen);
        const cost = seen.progress?.totalCents;
        if (cost !== undefined) setCosts((before) => (before.at(-1) === cost ? before : [...before, cost]));
        return seen;
      };
      for (let id: string | null = first; id !== null; ) {
        kept.write({ id, askedOn });
        const ended: PlanRun | null = await untilEnded(id, see, signal);
        if (ended === null) return;
        // The search has ended for whoever looks when its week stands there: what stood there before can be pressed no more.
        await client.invalidateQueries({ queryKey: weekQuery(ended.weekOf).queryKey });
        if (signal.aborted) return;
        id = ended.status === 'done' ? ended.nextRunId : null;
        if (id === null) {
          kept.clear();
          setRun(ended);
        } else setCosts([]);
        await client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'week' });
      }
    },
    [client, kept, weekOf],
  );

  useEffect(() => {
    setRun(null);
    setCosts([]);
    const last = kept.read();
    if (last !== null)
      void api.get<PlanRun>(`/v1/plan-runs/${last.id}`).then(
        (found) => {
          const isOurs = found.weekOf === weekOf || last.askedOn === weekOf;
          return isOurs && isOpen(found) ? watch(found.id, last.askedOn) : undefined;
        },
        () => undefined,
      );
    return () => watching.current?.abort();
  }, [weekOf]);

  return {
    run,
    costs,
    isRunning: run !== null && isOpen(run),
    start: async (seconds, weeks) => {
      onBefore();
      setCosts([]);
      await askForecast(weekOf, shop);
      const asked = await api.post<PlanRun>('/v1/plan-runs', { weekOf, weeks, seconds });
      setRun(asked);
      void watch(asked.id, weekOf);
    },
    stop: async () => {
      if (run !== null) setRun(await api.post<PlanRun>(`/v1/plan-runs/${run.id}/cancel`, {}));
    },
  };
}

/** @returns the run when it has ended; null = nobody looks any more */
async function untilEnded(id: string, see: (run: PlanRun) => PlanRun, signal: AbortSignal): Promise<PlanRun | null> {
  while (!signal.aborted) {
    try {
      for await (const { event, data } of serverEvents(`/v1/plan-runs/${id}/progress`, signal)) {
        if (event === 'error') break;
        see(JSON.parse(data) as PlanRun);
      }
      // A stream that was cut off says nothing about the run: its row does.
      const now = see(await api.get<PlanRun>(`/v1/plan-runs/${id}`, signal));
      if (!isOpen(now)) return now;
    } catch {
      if (signal.aborted) return null;
    }
    await new Promise((done) => setTimeout(done, RECONNECT_MS));
  }
  return null;
}

/** Due dates and prices of waiting are reckoned anew with every plan; a plan does not fail for want of them. */
async function askForecast(weekOf: string, { today, forecastAsOf }: Shop): Promise<void> {
  // A week gone by (an invented shop, whose calendar stands still) is reckoned from before it.
  const asOf = today <= addDays(weekOf, 6) ? today : (forecastAsOf ?? addDays(weekOf, -1));
  const costFrom = asOf > weekOf ? asOf : weekOf;
  await api.post('/v1/forecast-runs', { asOf, costFrom }).catch((error: unknown) => {
    if (!(error instanceof Refused)) throw error;
  });
}

/** Where the visits of a week stood: what a new plan is compared with. */
export interface WeekBefore {
  /** What it would have cost, in cents; null = nobody knows. */
  readonly cost: number | null;
  readonly routes: readonly {
    readonly technicianId: string;
    readonly date: string;
    readonly visits: readonly { readonly siteId: string; readonly startAt: string; readonly endAt: string }[];
  }[];
}

export const weekBefore = (weekOf: string) =>
  stored<WeekBefore>(`deckround.week-before.${weekOf}`, () => sessionStorage);

export function outlineOf(week: Week): WeekBefore {
  return {
    cost: week.cost?.['total'] ?? null,
    routes: week.routes.map(({ technicianId, date, visits }) => ({
      technicianId,
      date,
      visits: visits.map(({ siteId, startAt, endAt }) => ({ siteId, startAt, endAt })),
    })),
  };
}
