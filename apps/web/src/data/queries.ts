import { infiniteQueryOptions, QueryClient, queryOptions } from '@tanstack/react-query';
import { Away, api, everyPage, queryOf, Refused } from './api.js';
import { connection } from './connection.js';
import type { MeterChange } from './lifetime.js';
import type {
  Absence,
  Agreement,
  ComponentSlot,
  Customer,
  DueItem,
  DueSummary,
  ForecastQuality,
  Machine,
  MachineClass,
  Page,
  Part,
  PartOrder,
  Reading,
  RoadCall,
  ServiceItem,
  Shop,
  Site,
  Stopgap,
  Symptom,
  Technician,
  UsageForecast,
  Visit,
  Week,
} from './types.js';

/** Names change seldom; what is planned changes under one's eyes. */
const SLOW_MS = 5 * 60_000;

export const queries = new QueryClient({
  defaultOptions: {
    queries: {
      networkMode: 'always',
      staleTime: 15_000,
      retry: (count, error) => !(error instanceof Refused || error instanceof Away) && count < 2,
    },
    mutations: { networkMode: 'always', retry: false },
  },
});
connection.onReturn(() => void queries.invalidateQueries());

const list = <T>(name: string, path: string = `/v1/${name}`) =>
  queryOptions({ queryKey: [name], queryFn: ({ signal }) => everyPage<T>(path, signal), staleTime: SLOW_MS });

export const shopQuery = queryOptions({
  queryKey: ['shop'],
  queryFn: ({ signal }) => api.get<Shop>('/v1/shop', signal),
});
export const weekQuery = (weekOf: string) =>
  queryOptions({
    queryKey: ['week', weekOf],
    queryFn: ({ signal }) => api.get<Week>(`/v1/week${queryOf({ weekOf })}`, signal),
  });
export const visitsQuery = (from: string, to?: string) =>
  queryOptions({
    queryKey: ['visits', from, to],
    queryFn: ({ signal }) => everyPage<Visit>(`/v1/visits${queryOf({ from, to })}`, signal),
  });
export const customersQuery = list<Customer>('customers');
export const sitesQuery = list<Site>('sites');
export const machinesQuery = list<Machine>('machines');
export const classesQuery = list<MachineClass>('machine-classes');
export const serviceItemsQuery = list<ServiceItem>('service-items');
export const techniciansQuery = list<Technician>('technicians');
export const absencesQuery = list<Absence>('absences');
export const partsQuery = list<Part>('parts');
export const partOrdersQuery = list<PartOrder>('part-orders');
export const agreementsQuery = list<Agreement>('agreements');
export const roadCallsQuery = list<RoadCall>('road-calls');
export const slotsQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['component-slots', machineId],
    queryFn: ({ signal }) => everyPage<ComponentSlot>(`/v1/component-slots${queryOf({ machineId })}`, signal),
  });
type DueFilter = Readonly<Record<string, string | number | undefined>>;
/** All of it: for lists that are short, those of a machine or of a customer’s own sites. */
export const dueQuery = (filter: DueFilter) =>
  queryOptions({
    queryKey: ['due', filter],
    queryFn: ({ signal }) => everyPage<DueItem>(`/v1/due${queryOf(filter)}`, signal),
  });
/** A page of what falls due at a time, in the order asked for. */
export const dueListQuery = (filter: DueFilter, order: 'date' | 'cost' | 'site', limit: number) =>
  infiniteQueryOptions({
    queryKey: ['due', 'list', filter, order],
    queryFn: ({ pageParam: cursor, signal }) =>
      api.get<Page<DueItem>>(`/v1/due${queryOf({ ...filter, order, cursor, limit })}`, signal),
    initialPageParam: null as string | null,
    getNextPageParam: (page) => page.next,
  });
export const dueSummaryQuery = (filter: DueFilter) =>
  queryOptions({
    queryKey: ['due', 'summary', filter],
    queryFn: ({ signal }) => api.get<DueSummary>(`/v1/due/summary${queryOf(filter)}`, signal),
  });
export const usageQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['usage', machineId],
    queryFn: ({ signal }) => api.get<UsageForecast>(`/v1/machines/${machineId}/usage`, signal),
  });
export const setAsideQuery = queryOptions({
  queryKey: ['readings', 'set-aside'],
  queryFn: ({ signal }) => everyPage<Reading>('/v1/readings?status=set-aside', signal),
});
export const readingsQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['readings', machineId],
    queryFn: ({ signal }) => everyPage<Reading>(`/v1/readings${queryOf({ machineId })}`, signal),
  });
export const qualityQuery = queryOptions({
  queryKey: ['forecast-quality'],
  queryFn: ({ signal }) => api.get<ForecastQuality>('/v1/forecast-quality', signal),
  staleTime: SLOW_MS,
});
export const meterChangesQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['meter-changes', machineId],
    queryFn: ({ signal }) => everyPage<MeterChange>(`/v1/meter-changes${queryOf({ machineId })}`, signal),
  });
export const stopgapsQuery = (machineId: string) =>
  queryOptions({
    queryKey: ['stopgaps', machineId],
    queryFn: ({ signal }) => everyPage<Stopgap>(`/v1/stopgaps${queryOf({ machineId })}`, signal),
  });
export const symptomsQuery = queryOptions({
  queryKey: ['symptoms'],
  queryFn: ({ signal }) => api.get<{ items: Symptom[] }>('/v1/symptoms', signal),
  staleTime: Infinity,
});
