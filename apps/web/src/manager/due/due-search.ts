const UUID = /^[0-9a-f-]{36}$/;

/** Filters of the due list: all of them stay in the address, so that a view can be kept or sent. */
export interface DueSearch {
  readonly weeks?: number;
  readonly site?: string;
  readonly code?: string;
  readonly kind?: 'service' | 'stopgap';
  readonly overdue?: true;
  readonly group?: true;
  readonly sort?: 'date';
}

export function dueSearch(search: Record<string, unknown>): DueSearch {
  const weeks = Number(search.weeks);
  return {
    ...(Number.isInteger(weeks) && weeks >= 1 && weeks <= 26 ? { weeks } : {}),
    ...(typeof search.site === 'string' && UUID.test(search.site) ? { site: search.site } : {}),
    ...(typeof search.code === 'string' && search.code !== '' ? { code: search.code } : {}),
    ...(search.kind === 'service' || search.kind === 'stopgap' ? { kind: search.kind } : {}),
    ...(search.overdue === true ? { overdue: true as const } : {}),
    ...(search.group === true ? { group: true as const } : {}),
    ...(search.sort === 'date' ? { sort: 'date' as const } : {}),
  };
}
