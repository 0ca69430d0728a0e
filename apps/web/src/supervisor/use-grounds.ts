import { useQuery } from '@tanstack/react-query';
import { useShop } from '../app/shop-words.js';
import { useMachinesInUse } from '../data/machines-in-use.js';
import { dueQuery, sitesQuery, visitsQuery } from '../data/queries.js';
import { canMowUntil, saturdayFrom, stateOf } from './machine-states.js';

/** The own machines as they stand, for the Saturday to come; undefined until all of it is read. */
export function useGrounds() {
  const shop = useShop();
  const today = shop?.today ?? '2000-01-01';
  const saturday = saturdayFrom(today);
  const machines = useMachinesInUse();
  const sites = useQuery(sitesQuery).data;
  const service = useQuery({ ...dueQuery({ until: saturday, kind: 'service' }), enabled: shop !== undefined }).data;
  // A stopgap is worth knowing of whenever it ends.
  const stopgaps = useQuery({ ...dueQuery({ kind: 'stopgap' }), enabled: shop !== undefined }).data;
  const visits = useQuery({ ...visitsQuery(today), enabled: shop !== undefined }).data;
  if (!machines || !sites || !service || !stopgaps || !visits) return undefined;
  const comingVisitsOf = (siteId: string) =>
    visits.filter((visit) => visit.siteId === siteId && (visit.state === 'proposed' || visit.state === 'confirmed'));
  return {
    today,
    saturday,
    sites,
    machines: machines.map((machine) => {
      const due = [...stopgaps, ...service].filter((item) => item.machineId === machine.id);
      const state = stateOf(machine, due, today);
      return { machine, due, state, isReady: canMowUntil(saturday, state, due) };
    }),
    comingVisitsOf,
    nextVisitOf: (siteId: string) => comingVisitsOf(siteId)[0],
  };
}
