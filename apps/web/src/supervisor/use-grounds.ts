import { useQuery } from '@tanstack/react-query';
import { useShop } from '../app/shop-words.js';
import { dueQuery, machinesQuery, sitesQuery, visitsQuery } from '../data/queries.js';
import { saturdayFrom, stateOf } from './machine-states.js';

/** The own machines as they stand, for the Saturday to come; undefined until all of it is read. */
export function useGrounds() {
  const shop = useShop();
  const today = shop?.forecastAsOf ?? shop?.today ?? '2000-01-01';
  const saturday = saturdayFrom(today);
  const machines = useQuery(machinesQuery).data;
  const sites = useQuery(sitesQuery).data;
  const due = useQuery({ ...dueQuery({ until: saturday }), enabled: shop !== undefined }).data;
  const visits = useQuery({ ...visitsQuery(today), enabled: shop !== undefined }).data;
  if (!machines || !sites || !due || !visits) return undefined;
  const dueOf = (machineId: string) => due.filter((item) => item.machineId === machineId);
  return {
    saturday,
    sites,
    machines: machines.map((machine) => ({
      machine,
      due: dueOf(machine.id),
      state: stateOf(machine, dueOf(machine.id)),
    })),
    nextVisitOf: (siteId: string) =>
      visits.find((visit) => visit.siteId === siteId && (visit.state === 'proposed' || visit.state === 'confirmed')),
  };
}
