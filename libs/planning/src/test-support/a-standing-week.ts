import { type StandingVisit, type StandingWeek, standingWeek } from '../adjust/standing-week.js';
import { evaluateRoute } from '../draft.js';
import { planWeek } from '../plan-week.js';
import type { PlanningSnapshot } from '../snapshot.js';
import type { PlannedVisit, WeekPlan } from '../week-plan.js';

/** A planned week as it stands afterwards, every n-th visit promised give or take half an hour. */
export function aStandingWeek(snapshot: PlanningSnapshot, iterations = 400, everyNth = 3): StandingWeek {
  const plan = planWeek({ ...snapshot, promises: [] }, { snapshotHash: '', seed: 1, stop: { iterations } });
  return standingWeek(snapshot, standingVisits(plan, everyNth));
}

export function standingVisits(plan: WeekPlan, everyNth: number): StandingVisit[] {
  return plan.routes.flatMap((route) =>
    route.visitIds.map((id): StandingVisit => {
      const visit = plan.visits.find((each) => each.id === id)!;
      const isPromised = Number(id.slice(1)) % everyNth === 0;
      return {
        visitId: id,
        siteId: visit.siteId,
        technicianId: visit.technicianId,
        date: visit.date,
        itemIds: visit.items.map((item) => item.itemId),
        heldAt: null,
        announced: isPromised ? { from: clockAround(visit, -30), to: clockAround(visit, 30), moveCents: 2500 } : null,
      };
    }),
  );
}

function clockAround(visit: PlannedVisit, minutes: number): string {
  const [hour, minute] = visit.startAt.slice(11, 16).split(':').map(Number);
  const total = Math.min(1439, Math.max(0, hour! * 60 + minute! + minutes));
  return `${String(Math.floor(total / 60)).padStart(2, '0')}:${String(total % 60).padStart(2, '0')}`;
}

/** The same visits over another snapshot; one of them held fast where it stands, if wanted. */
export function standingAgain(
  snapshot: PlanningSnapshot,
  { instance, draft, announced }: StandingWeek,
  held: string | null = null,
): StandingWeek {
  const { snapshot: before, technicianDays } = instance;
  return standingWeek(
    snapshot,
    draft.flatMap((visits, v) =>
      visits.map((visit, k) => {
        const site = before.sites[visit.site]!;
        const told = announced.get(visit.visitId!);
        const clock = (minute: number) => instance.clock.instant(minute, site.zone).slice(11, 16);
        return {
          visitId: visit.visitId!,
          siteId: site.id,
          technicianId: before.technicians[technicianDays[v]!.technician]!.id,
          date: technicianDays[v]!.date,
          itemIds: visit.items.map((item) => before.items[item]!.id),
          heldAt: visit.visitId === held ? clock(evaluateRoute(instance, v, visits)!.times.start[k]!) : null,
          announced: told
            ? { from: clock(told.slot.open), to: clock(told.slot.close), moveCents: told.moveCents }
            : null,
        };
      }),
    ),
  );
}
