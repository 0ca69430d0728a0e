import { useQuery } from '@tanstack/react-query';
import { machinesQuery, shopQuery } from './queries.js';
import type { Machine } from './types.js';

/** The machines that are not retired by today; undefined until they are read. */
export function useMachinesInUse(): readonly Machine[] | undefined {
  const today = useQuery(shopQuery).data?.today;
  const machines = useQuery(machinesQuery).data;
  if (today === undefined) return undefined;
  return machines?.filter(({ retiredOn }) => retiredOn === null || retiredOn > today);
}
