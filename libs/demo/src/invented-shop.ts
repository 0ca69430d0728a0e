import { CLASSES } from '@deckround/catalogue';
import {
  type Customer,
  DEFAULT_SHOP,
  type Machine,
  type Part,
  parseWeeklyWindows,
  type Register,
  type Site,
  starterClasses,
  type Technician,
} from '@deckround/register';
import { inventSeasons } from './invented-seasons.js';
import { Random } from './random.js';

/** The demo's calendar stands at a Thursday afternoon in June: next week is planned. */
export const DEMO_TODAY = '2026-06-04';
export const DEMO_WEEK = '2026-06-08';
const BASE = { latitude: 41.6, longitude: -93.6 };

const PLACES = [
  'Larkmoor',
  'Tansy',
  'Hollin',
  'Merrow',
  'Osier',
  'Brindle',
  'Fallow',
  'Garnet',
  'Heron',
  'Ironwood',
  'Juniper',
  'Kestrel',
  'Lindale',
  'Marram',
  'Nettle',
  'Orchard',
];
const KINDS = ['Park', 'School', 'Cemetery', 'Campus', 'Playing Fields', 'Garden Estate'];
const ACCESS = [
  'Mon-Fri 07:00-15:30',
  'Mon-Fri 06:30-14:30',
  'Mon-Fri 07:00-16:00; Sat 08:00-12:00',
  'Mon-Sat 08:00-17:00',
  'Tue,Thu 08:00-16:00',
  'Mon-Fri 07:00-11:00',
];
const GATES = [
  '',
  'ask at the office',
  'gate at the rear',
  'low bridge: van only',
  'key box by the shed',
  'dog in the yard',
];
const CLASS_WEIGHTS: readonly (readonly [string, number])[] = [
  ['zero-turn', 0.4],
  ['stand-on', 0.19],
  ['front-deck', 0.17],
  ['walk-behind', 0.1],
  ['wide-area', 0.08],
  ['tractor-finish-deck', 0.06],
];

/** A shop that exists nowhere: 3 technicians, 48 sites, 400 machines, two seasons of readings with their usual faults. */
export function inventShop(): Register {
  const random = new Random(20260604);
  const customers = inventCustomers(14);
  const sites = inventSites(random, customers, 48);
  const machines = inventMachines(random, sites, 400);
  const register: Register = {
    shop: { ...DEFAULT_SHOP, name: 'Burr Oak Mower Repair' },
    customers,
    sites,
    machines,
    technicians: inventTechnicians(),
    parts: inventParts(),
    classes: starterClasses(),
    readings: [],
    meterChanges: [],
    completions: [],
    overrides: [],
    findings: [],
    stopgaps: [],
    moves: [],
    weather: [],
    roadCalls: [],
    bars: [],
    events: [],
    promises: [],
    previous: [],
  };
  return { ...register, ...inventSeasons(random, register, DEMO_TODAY) };
}

function inventCustomers(count: number): Customer[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `C${String(index + 1).padStart(2, '0')}`,
    name: `${PLACES[index % PLACES.length]} ${index % 3 === 0 ? 'Grounds Trust' : index % 3 === 1 ? 'Schools' : 'Facilities'}`,
    billingEmail: `accounts${index + 1}@customer.example`,
    termsDays: 30,
    taxExempt: index % 3 !== 2,
  }));
}

function inventSites(random: Random, customers: readonly Customer[], count: number): Site[] {
  const centres = Array.from({ length: 6 }, () => ({
    north: random.between(-0.32, 0.32),
    east: random.between(-0.45, 0.45),
  }));
  return Array.from({ length: count }, (_, index) => {
    const centre = random.pick(centres);
    return {
      id: `S${String(index + 1).padStart(2, '0')}`,
      customerId: random.pick(customers).id,
      name: `${PLACES[(index * 5) % PLACES.length]} ${KINDS[(index + Math.floor(index / PLACES.length)) % KINDS.length]}`,
      latitude: BASE.latitude + centre.north + random.normal() * 0.05,
      longitude: BASE.longitude + centre.east + random.normal() * 0.07,
      timeZone: DEFAULT_SHOP.timeZone,
      access: parseWeeklyWindows(random.pick(ACCESS)),
      blackouts: random.chance(0.15) ? [{ from: '2026-06-11', to: '2026-06-12', reason: 'summer fête' }] : [],
      setupMinutes: random.pick([5, 10, 15, 25]),
      visitFeeCents: 0,
      maxMachinesDown: random.whole(1, 3),
      downRule: 'one-by-one',
      preferredTechnicianId: null,
      preferenceCents: 0,
      notes: random.pick(GATES),
    };
  });
}

function inventMachines(random: Random, sites: readonly Site[], count: number): Machine[] {
  return Array.from({ length: count }, (_, index) => {
    const machineClass = pickClass(random);
    const spindles = CLASSES.find((each) => each.code === machineClass)!.defaultSpindles;
    const age = random.whole(0, 6);
    const code = `M${String(index + 1).padStart(3, '0')}`;
    return {
      ...{ id: code, code },
      siteId: sites[index < sites.length ? index : Math.floor(random.next() ** 1.5 * sites.length)]!.id,
      machineClass,
      maker: '',
      model: `type ${machineClass[0]!.toUpperCase()}${spindles}`,
      serial: `BO${10_000 + index * 37}`,
      inServiceOn: `${2025 - age}-0${random.whole(2, 5)}-1${random.whole(0, 9)}`,
      spindles,
      severity: random.chance(0.22) ? 'severe' : random.chance(0.15) ? 'light' : 'normal',
      notes: '',
    };
  });
}

function pickClass(random: Random): string {
  let left = random.next();
  for (const [code, weight] of CLASS_WEIGHTS) {
    left -= weight;
    if (left < 0) return code;
  }
  return 'zero-turn';
}

function inventTechnicians(): Technician[] {
  const shared = {
    ...BASE,
    timeZone: DEFAULT_SHOP.timeZone,
    shifts: parseWeeklyWindows('Mon-Fri 07:00-16:00'),
    absences: [],
    maxOvertimeMinutes: 90,
    lunch: { minutes: 30, earliestMinute: 660, latestMinute: 810 },
  };
  return [
    {
      ...shared,
      id: 'T1',
      name: 'Wren',
      skills: ['mechanical', 'hydraulic', 'electrical'],
      wageCentsPerHour: 3600,
      overtimeCentsPerHour: 5400,
    },
    {
      ...shared,
      id: 'T2',
      name: 'Sorrel',
      skills: ['mechanical', 'electrical'],
      wageCentsPerHour: 3200,
      overtimeCentsPerHour: 4800,
    },
    {
      ...shared,
      id: 'T3',
      name: 'Rowan',
      skills: ['mechanical', 'hydraulic'],
      wageCentsPerHour: 3400,
      overtimeCentsPerHour: 5100,
    },
  ];
}

function inventParts(): Part[] {
  const part = (
    code: string,
    description: string,
    designation: string,
    price: number,
    onHand: number,
    leadDays: number,
    arrivals: Part['arrivals'] = [],
  ): Part => ({
    id: code,
    code,
    description,
    designation,
    unitPriceCents: price,
    unitCostCents: Math.round(price * 0.52),
    onHand,
    leadDays,
    arrivals,
  });
  return [
    part('BRG-6205-2Z', 'deep groove ball bearing, two metal shields', '6205-2Z', 1450, 26, 3),
    part('BLT-DECK', 'deck drive belt, wrapped B section', 'B', 6100, 4, 5, [{ date: '2026-06-09', quantity: 6 }]),
    part('BLD-SET', 'blade set', '', 5400, 9, 4),
    part('IDL-BRACKET', 'idler bracket, welded', '', 4800, 0, 4, [{ date: '2026-06-09', quantity: 1 }]),
    part('HSE-3-8', 'hydraulic hose, 3/8 in, two wire', '3/8 in', 3900, 0, 3, [{ date: '2026-06-10', quantity: 2 }]),
    part('SW-SEAT', 'seat switch, normally open', '', 2600, 2, 2),
  ];
}
