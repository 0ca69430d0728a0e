import { type QueryKey, queryOptions, type UseQueryOptions } from '@tanstack/react-query';
import { everyPage } from '../../data/api.js';
import {
  absencesQuery,
  agreementsQuery,
  classesQuery,
  customersQuery,
  machinesQuery,
  partOrdersQuery,
  partsQuery,
  serviceItemsQuery,
  sitesQuery,
  techniciansQuery,
} from '../../data/queries.js';
import type { Blackout, Person, SiteEvent, VisitBar } from '../../data/types.js';
import type { WordKey } from '../../words/en.js';

/** A row of the register as it comes over the wire: the fields below say which of its values are shown and how. */
export type Row = { readonly id: string; readonly version: number } & Readonly<Record<string, unknown>>;

export type FieldKind =
  | 'text'
  | 'long'
  | 'email'
  | 'whole'
  | 'decimal'
  | 'money'
  | 'hours'
  | 'date'
  | 'clock'
  | 'zone'
  | 'yes-no'
  | 'skill'
  | 'skills'
  | 'part-unit'
  | 'windows'
  | 'included-items'
  | { readonly oneOf: readonly string[]; readonly words: string }
  | 'password'
  | { readonly from: () => RowsQuery; readonly label: string; readonly value?: string; readonly many?: true };

export interface Field {
  readonly name: string;
  readonly kind: FieldKind;
  readonly optional?: boolean;
  /** Cannot be changed once the row is there. */
  readonly onlyNew?: boolean;
  /** Cannot be given when the row is new. */
  readonly onlyLater?: boolean;
  /** Asked only where another field says so; the reason stands under `field.<name>.why`. */
  readonly onlyIf?: { readonly field: string; readonly isOneOf: readonly string[] };
  /** Shown in the list. */
  readonly column?: boolean;
  readonly start?: unknown;
}

export interface Kind {
  readonly path: string;
  readonly query: () => RowsQuery;
  readonly fields: readonly Field[];
  readonly canCreate: boolean;
  readonly canChange: boolean;
  readonly canRemove?: boolean;
}

// biome-ignore lint/suspicious/noExplicitAny: lists of every kind of row are read through one screen
export type RowsQuery = UseQueryOptions<any, Error, any, any> & { queryKey: QueryKey };
const rows = (query: unknown) => () => query as RowsQuery;
const [customers, sites, parts, technicians] = [customersQuery, sitesQuery, partsQuery, techniciansQuery].map(rows) as [
  () => RowsQuery,
  () => RowsQuery,
  () => RowsQuery,
  () => RowsQuery,
];
const listOf = <T>(path: string, keep: (row: T) => boolean = () => true) =>
  queryOptions({
    queryKey: [path],
    queryFn: async ({ signal }) => (await everyPage<T>(`/v1/${path}`, signal)).filter(keep),
  });
const site: Field = { name: 'siteId', kind: { from: sites, label: 'name' }, column: true };
const technician: Field = { name: 'technicianId', kind: { from: technicians, label: 'name' }, column: true };
const reason: Field = { name: 'reason', kind: 'text', start: '', column: true };
const code: Field = { name: 'code', kind: 'text', column: true };

/** What the register holds, in the order in which a new shop fills it. */
export const KINDS = {
  customers: {
    path: 'customers',
    query: customers,
    canCreate: true,
    canChange: true,
    fields: [
      code,
      { name: 'name', kind: 'text', column: true },
      { name: 'billingEmail', kind: 'email', optional: true, column: true },
      { name: 'termsDays', kind: 'whole', start: 30 },
      { name: 'taxExempt', kind: 'yes-no', start: false },
    ],
  },
  sites: {
    path: 'sites',
    query: sites,
    canCreate: true,
    canChange: true,
    fields: [
      code,
      { name: 'name', kind: 'text', column: true },
      { name: 'customerId', kind: { from: customers, label: 'name' }, column: true },
      { name: 'latitude', kind: 'decimal' },
      { name: 'longitude', kind: 'decimal' },
      { name: 'timeZone', kind: 'zone' },
      { name: 'access', kind: 'windows', start: [] },
      { name: 'setupMinutes', kind: 'whole', start: 10 },
      { name: 'maxMachinesDown', kind: 'whole', start: 1 },
      { name: 'downRule', kind: { oneOf: ['one-by-one', 'whole-visit'], words: 'down-rule' }, start: 'one-by-one' },
      { name: 'preferredTechnicianId', kind: { from: technicians, label: 'name' }, optional: true },
      { name: 'preferenceCents', kind: 'money', start: 0 },
      { name: 'visitFeeCents', kind: 'money', start: 0 },
      { name: 'gateNotes', kind: 'long', start: '' },
      { name: 'cautions', kind: 'long', start: '' },
    ],
  },
  machines: {
    path: 'machines',
    query: rows(machinesQuery),
    canCreate: true,
    canChange: true,
    fields: [
      code,
      { name: 'siteId', kind: { from: sites, label: 'name' }, column: true },
      { name: 'machineClass', kind: { from: rows(classesQuery), label: 'name', value: 'code' }, column: true },
      { name: 'maker', kind: 'text', optional: true },
      { name: 'model', kind: 'text', optional: true, column: true },
      { name: 'serial', kind: 'text', optional: true, column: true },
      { name: 'inServiceOn', kind: 'date', optional: true },
      { name: 'retiredOn', kind: 'date', optional: true, onlyLater: true, column: true },
      { name: 'spindles', kind: 'whole', start: 3 },
      { name: 'severity', kind: { oneOf: ['light', 'normal', 'severe'], words: 'severity' }, start: 'normal' },
      {
        name: 'condition',
        kind: { oneOf: ['working', 'down', 'at-shop'], words: 'condition' },
        start: 'working',
        column: true,
      },
      { name: 'meterRolloverHours', kind: 'hours', optional: true },
      { name: 'notes', kind: 'long', start: '' },
    ],
  },
  technicians: {
    path: 'technicians',
    query: technicians,
    canCreate: true,
    canChange: true,
    fields: [
      code,
      { name: 'name', kind: 'text', column: true },
      { name: 'baseLatitude', kind: 'decimal' },
      { name: 'baseLongitude', kind: 'decimal' },
      { name: 'timeZone', kind: 'zone' },
      { name: 'shifts', kind: 'windows', start: [] },
      { name: 'skills', kind: 'skills', start: [], column: true },
      { name: 'wageCentsPerHour', kind: 'money', column: true },
      { name: 'overtimeCentsPerHour', kind: 'money' },
      { name: 'maxOvertimeMinutes', kind: 'whole', start: 0 },
      { name: 'lunchMinutes', kind: 'whole', start: 30 },
      { name: 'lunchEarliest', kind: 'clock', start: '11:00' },
      { name: 'lunchLatest', kind: 'clock', start: '13:30' },
      { name: 'active', kind: 'yes-no', start: true },
    ],
  },
  parts: {
    path: 'parts',
    query: parts,
    canCreate: true,
    canChange: true,
    fields: [
      code,
      { name: 'description', kind: 'text', column: true },
      { name: 'designation', kind: 'text', optional: true, column: true },
      { name: 'unit', kind: 'part-unit', start: 'each' },
      { name: 'unitPriceCents', kind: 'money', start: 0, column: true },
      { name: 'unitCostCents', kind: 'money', start: 0 },
      { name: 'leadDays', kind: 'whole', start: 0, column: true },
      { name: 'onHand', kind: 'hours', start: '0', column: true },
    ],
  },
  'part-orders': {
    path: 'part-orders',
    query: rows(partOrdersQuery),
    canCreate: true,
    canChange: true,
    fields: [
      { name: 'partId', kind: { from: parts, label: 'description' }, onlyNew: true, column: true },
      { name: 'quantity', kind: 'hours', onlyNew: true, column: true },
      { name: 'orderedOn', kind: 'date', onlyNew: true, column: true },
      { name: 'expectedOn', kind: 'date', column: true },
      { name: 'outstanding', kind: 'hours', onlyLater: true, onlyNew: true, column: true },
      { name: 'receivedQuantity', kind: 'hours', onlyLater: true, onlyNew: true },
      { name: 'receivedOn', kind: 'date', onlyLater: true, onlyNew: true, column: true },
      { name: 'cancelledOn', kind: 'date', onlyLater: true, onlyNew: true, column: true },
    ],
  },
  'service-items': {
    path: 'service-items',
    query: rows(serviceItemsQuery),
    canCreate: false,
    canChange: true,
    fields: [
      { name: 'title', kind: 'text', column: true },
      {
        name: 'machineClass',
        kind: { from: rows(classesQuery), label: 'name', value: 'code' },
        onlyNew: true,
        column: true,
      },
      { name: 'intervalHours', kind: 'hours', optional: true, column: true },
      { name: 'intervalDays', kind: 'whole', optional: true, column: true },
      { name: 'firstHours', kind: 'hours', optional: true },
      { name: 'severeFactor', kind: 'decimal' },
      { name: 'toleranceHours', kind: 'hours' },
      { name: 'toleranceDays', kind: 'whole' },
      { name: 'minutes', kind: 'whole', column: true },
      { name: 'minutesPerSpindle', kind: 'whole' },
      { name: 'skill', kind: 'skill', optional: true },
      { name: 'mustDo', kind: 'yes-no' },
      { name: 'failureCents', kind: 'money' },
      { name: 'active', kind: 'yes-no' },
    ],
  },
  agreements: {
    path: 'agreements',
    query: rows(agreementsQuery),
    canCreate: true,
    canChange: false,
    canRemove: true,
    fields: [
      { name: 'name', kind: 'text', column: true },
      { name: 'customerId', kind: { from: customers, label: 'name' }, column: true },
      { name: 'startsOn', kind: 'date', column: true },
      { name: 'endsOn', kind: 'date', optional: true, column: true },
      { name: 'responseHours', kind: 'whole', optional: true },
      { name: 'items', kind: 'included-items', start: [] },
    ],
  },
  people: {
    path: 'people',
    query: rows(listOf<Person>('people', (person) => person.active)),
    canCreate: true,
    canChange: true,
    canRemove: true,
    fields: [
      { name: 'name', kind: 'text', column: true },
      { name: 'email', kind: 'email', onlyNew: true, column: true },
      {
        name: 'role',
        kind: { oneOf: ['manager', 'technician', 'supervisor'], words: 'role' },
        onlyNew: true,
        start: 'technician',
        column: true,
      },
      { name: 'password', kind: 'password' },
      { ...technician, optional: true, onlyIf: { field: 'role', isOneOf: ['technician', 'manager'] } },
      {
        name: 'siteIds',
        kind: { from: sites, label: 'name', many: true },
        start: [],
        onlyIf: { field: 'role', isOneOf: ['supervisor'] },
      },
    ],
  },
  absences: {
    path: 'absences',
    query: rows(absencesQuery),
    canCreate: true,
    canChange: false,
    canRemove: true,
    fields: [
      technician,
      { name: 'from', kind: 'date', column: true },
      { name: 'to', kind: 'date', column: true },
      reason,
    ],
  },
  blackouts: {
    path: 'blackouts',
    query: rows(listOf<Blackout>('blackouts')),
    canCreate: true,
    canChange: false,
    canRemove: true,
    fields: [site, { name: 'from', kind: 'date', column: true }, { name: 'to', kind: 'date', column: true }, reason],
  },
  'site-events': {
    path: 'site-events',
    query: rows(listOf<SiteEvent>('site-events')),
    canCreate: true,
    canChange: false,
    canRemove: true,
    fields: [
      site,
      { name: 'name', kind: 'text', column: true },
      { name: 'date', kind: 'date', column: true },
      { name: 'from', kind: 'clock', start: '15:00', column: true },
    ],
  },
  'visit-bars': {
    path: 'visit-bars',
    query: rows(listOf<VisitBar>('visit-bars')),
    canCreate: true,
    canChange: false,
    canRemove: true,
    fields: [
      site,
      { ...technician, optional: true },
      { name: 'date', kind: 'date', optional: true, column: true },
      reason,
    ],
  },
} as const satisfies Record<string, Kind>;

export type KindName = keyof typeof KINDS;
export const KIND_NAMES = Object.keys(KINDS) as KindName[];

export function kindOf(name: string | undefined): KindName {
  return KIND_NAMES.find((each) => each === name) ?? 'customers';
}

export const fieldWord = (name: string) => `field.${name}` as WordKey;
