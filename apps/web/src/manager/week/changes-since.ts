import type { Week } from '../../data/types.js';
import type { WeekBefore } from './plan-search.js';

export interface Stand {
  readonly technicianId: string;
  readonly date: string;
  readonly startAt: string;
}

export interface WeekChange {
  readonly siteId: string;
  readonly what: 'moved' | 'retimed' | 'new' | 'gone';
  readonly from: Stand | null;
  readonly to: Stand | null;
}

/**
 * What has become of each visit since the week before it was planned again: another day or technician, another time,
 * new, gone. Visits are told apart by their sites; several of one site are taken in the order of their times.
 */
export function changesSince(before: WeekBefore, week: Pick<Week, 'routes'>): WeekChange[] {
  const [old, now] = [standsOf(before.routes), standsOf(week.routes)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((siteId) => {
    const [was, is] = [old.get(siteId) ?? [], now.get(siteId) ?? []];
    return Array.from({ length: Math.max(was.length, is.length) }, (_, at): WeekChange[] => {
      const [from, to] = [was[at] ?? null, is[at] ?? null];
      const what = kindOf(from, to);
      return what === null ? [] : [{ siteId, what, from, to }];
    }).flat();
  });
}

function kindOf(from: Stand | null, to: Stand | null): WeekChange['what'] | null {
  if (from === null) return 'new';
  if (to === null) return 'gone';
  if (from.date !== to.date || from.technicianId !== to.technicianId) return 'moved';
  return from.startAt === to.startAt ? null : 'retimed';
}

function standsOf(routes: WeekBefore['routes']): Map<string, Stand[]> {
  const stands = routes.flatMap(({ technicianId, date, visits }) =>
    visits.map(({ siteId, startAt }) => ({ siteId, stand: { technicianId, date, startAt } })),
  );
  const sorted = stands.toSorted((a, b) => (a.stand.startAt < b.stand.startAt ? -1 : 1));
  const bySite = new Map<string, Stand[]>();
  for (const { siteId, stand } of sorted) bySite.set(siteId, [...(bySite.get(siteId) ?? []), stand]);
  return bySite;
}
