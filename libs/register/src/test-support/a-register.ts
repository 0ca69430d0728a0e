import type { Completion, DueForecast } from '@deckround/upkeep';
import type {
  Machine,
  OpenRoadCall,
  OpenStopgap,
  Part,
  PromisedVisit,
  Register,
  ShopServiceItem,
  Site,
  Technician,
} from '../register.js';
import { DEFAULT_SHOP } from '../shop-defaults.js';

export function aSite(changes: Partial<Site> = {}): Site {
  return {
    id: 'S1',
    customerId: 'C1',
    name: 'North Park',
    latitude: 41.6,
    longitude: -93.6,
    timeZone: 'America/Chicago',
    access: [1, 2, 3, 4, 5].map((weekday) => ({ weekday, startMinute: 420, endMinute: 930 })),
    blackouts: [],
    setupMinutes: 10,
    visitFeeCents: 0,
    maxMachinesDown: 1,
    downRule: 'one-by-one',
    preferredTechnicianId: null,
    preferenceCents: 0,
    notes: '',
    ...changes,
  };
}

export function aMachine(changes: Partial<Machine> = {}): Machine {
  return {
    id: 'M1',
    code: changes.id ?? 'M1',
    siteId: 'S1',
    machineClass: 'zero-turn',
    maker: '',
    model: 'Z3',
    serial: 'SN1',
    inServiceOn: '2010-04-01',
    spindles: 3,
    severity: 'normal',
    notes: '',
    ...changes,
  };
}

export function aTechnician(changes: Partial<Technician> = {}): Technician {
  return {
    id: 'T1',
    name: 'Technician 1',
    latitude: 41.6,
    longitude: -93.6,
    timeZone: 'America/Chicago',
    shifts: [1, 2, 3, 4, 5].map((weekday) => ({ weekday, startMinute: 420, endMinute: 960 })),
    absences: [],
    skills: ['mechanical'],
    wageCentsPerHour: 3000,
    overtimeCentsPerHour: 4500,
    maxOvertimeMinutes: 60,
    lunch: { minutes: 30, earliestMinute: 660, latestMinute: 810 },
    ...changes,
  };
}

export function aPart(changes: Partial<Part> = {}): Part {
  return {
    id: 'P1',
    code: 'BLT-DECK',
    description: 'deck drive belt',
    designation: 'B',
    unitPriceCents: 6000,
    unitCostCents: 3000,
    onHand: 5,
    leadDays: 7,
    arrivals: [],
    ...changes,
  };
}

/** Half an hour of work each 100 h, with one belt. */
export function anItem(changes: Partial<ShopServiceItem> = {}): ShopServiceItem {
  return {
    id: 'replace-belt',
    code: 'replace-belt',
    title: 'Replace belt',
    classes: 'all',
    scope: 'machine',
    rule: {
      hours: 100,
      days: null,
      firstHours: null,
      seasonEvent: null,
      severeFactor: 0.7,
      toleranceHours: 10,
      toleranceDays: 0,
      anchor: 'floating',
    },
    minutes: 30,
    minutesPerSpindle: 0,
    skill: 'mechanical',
    preparations: ['belt-off'],
    resetBy: [],
    parts: [{ code: 'BLT-DECK', quantity: 1, perSpindle: false }],
    consumables: [],
    steps: [],
    torques: [],
    cautions: [],
    failureCents: 17_000,
    hazardShape: 2,
    sources: { interval: '', minutes: '', steps: '', economics: '' },
    mustDo: false,
    latePenaltyCentsPerDay: 170,
    ...changes,
  };
}

export function aCompletion(changes: Partial<Completion> = {}): Register['completions'][number] {
  return {
    machineId: 'M1',
    code: 'replace-belt',
    slot: null,
    doneOn: '2014-05-01',
    meterHours: 400,
    outcome: 'done',
    part: null,
    ...changes,
  };
}

export function aStopgap(changes: Partial<OpenStopgap> = {}): OpenStopgap {
  return {
    id: 'G1',
    machineId: 'M1',
    code: 'replace-idler-bracket',
    title: 'Replace the spliced idler bracket',
    madeOn: '2014-06-10',
    renewedOn: null,
    limitHours: 20,
    limitOn: null,
    partId: null,
    partQuantity: 1,
    partExpectedOn: null,
    minutes: 40,
    skill: 'mechanical',
    preparations: ['covers-off'],
    failureCents: 20_000,
    ...changes,
  };
}

export function aRoadCall(changes: Partial<OpenRoadCall> = {}): OpenRoadCall {
  return {
    ...{ id: 'R1', machineId: 'M1', title: 'Road call: howls', minutes: 60, skill: null, downCentsPerDay: 15_000 },
    ...changes,
  };
}

export function aPromise(changes: Partial<PromisedVisit> = {}): PromisedVisit {
  return {
    visitId: 'V1',
    kind: 'confirmed',
    siteId: 'S1',
    technicianId: 'T1',
    date: '2014-06-17',
    from: '08:00',
    to: '10:00',
    start: '08:30',
    itemIds: ['M1/replace-belt'],
    moveCents: 5000,
    ...changes,
  };
}

/** One technician, site and machine, with one kind of work. */
export function aRegister(changes: Partial<Register> = {}): Register {
  return {
    shop: DEFAULT_SHOP,
    customers: [{ id: 'C1', name: 'Dapple Parks', billingEmail: '', termsDays: 30, taxExempt: false }],
    sites: [aSite()],
    machines: [aMachine()],
    readings: [],
    meterChanges: [],
    completions: [],
    technicians: [aTechnician()],
    parts: [aPart()],
    classes: [
      {
        code: 'zero-turn',
        name: 'zero-turn',
        preparations: [
          { code: 'covers-off', name: 'covers off', minutes: 3, parent: null, cautions: [], source: '' },
          { code: 'belt-off', name: 'belt off', minutes: 5, parent: 'covers-off', cautions: [], source: '' },
        ],
        items: [anItem()],
      },
    ],
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
    ...changes,
  };
}

/** A forecast for seven days from Monday 2014-06-16 that falls due in mid-week. */
export function aForecast(changes: Partial<DueForecast> = {}): DueForecast {
  return {
    itemId: 'M1/replace-belt',
    machineId: 'M1',
    code: 'replace-belt',
    slot: null,
    kind: 'service',
    title: 'Replace belt',
    p10: '2014-06-14',
    p50: '2014-06-18',
    p90: '2014-06-24',
    probabilityOverdue: [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7],
    timingCostCents: [30, 20, 10, 0, 10, 20, 30],
    deferralCents: 200,
    why: {
      rule: 'every 100 h',
      lastCompletion: null,
      dueAtHours: 500,
      dueOnByCalendar: null,
      lifetimeHoursNow: 490,
      lastReading: null,
      hoursPerWeekNow: 20,
      decidedBy: 'hours',
      hazard: null,
      sentence: 'Every 100 h: due about 18 June.',
    },
    ...changes,
  };
}
