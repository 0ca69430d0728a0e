import type { FieldDay } from '../data/types.js';

/** One visit that the shop has planned otherwise since the day was read here. */
export interface DayChange {
  readonly what: 'added' | 'gone' | 'retimed';
  readonly site: string;
  readonly date: string;
  readonly startAt: string;
}

export function changesBetween(before: FieldDay, after: FieldDay): DayChange[] {
  const was = new Map(before.visits.map((visit) => [visit.siteId, visit]));
  const is = new Map(after.visits.map((visit) => [visit.siteId, visit]));
  const { date } = after;
  return [
    ...after.visits.flatMap(({ siteId, site, startAt }): DayChange[] => {
      const old = was.get(siteId);
      if (old === undefined) return [{ what: 'added', site: site.name, date, startAt }];
      return old.startAt === startAt ? [] : [{ what: 'retimed', site: site.name, date, startAt }];
    }),
    ...before.visits
      .filter((visit) => !is.has(visit.siteId))
      .map(({ site, startAt }): DayChange => ({ what: 'gone', site: site.name, date, startAt })),
  ];
}
