import type { Week } from '../../data/types.js';

/** What the visits of a week add up to. Those that nobody can make count in nothing. */
export function weekFigures({ routes, cannotBeMade }: Week) {
  const unmade = new Set(cannotBeMade.map(({ visitId }) => visitId));
  const made = routes
    .map(({ driveMinutes, visits }) => ({ driveMinutes, visits: visits.filter(({ id }) => !unmade.has(id)) }))
    .filter(({ visits }) => visits.length > 0);
  const visits = made.flatMap((route) => route.visits);
  const items = visits.flatMap((visit) => visit.items);
  return {
    visits: visits.length,
    machines: new Set(items.map(({ machineId }) => machineId)).size,
    driveMinutes: made.reduce((sum, route) => sum + route.driveMinutes, 0),
    avoidedCents: items.reduce((sum, item) => sum + Math.max(0, item.waitingCents ?? 0), 0),
  };
}
