import { z } from 'zod';
import {
  Cents,
  ClockTime,
  Code,
  Hours,
  Id,
  Latitude,
  LocalDate,
  Longitude,
  Minutes,
  Quantity,
  Skill,
  SomeHours,
  SomeQuantity,
  TimeZone,
  text,
  Version,
  WeeklyWindow,
} from './primitives.js';

const row = { id: Id, version: Version };

/** Every field of a creating body may be left out of a changing one, but not all of them. */
function changesOf<T extends z.ZodRawShape>(create: z.ZodObject<T>, name: string) {
  return z
    .strictObject(
      Object.fromEntries(
        Object.entries(create.shape).map(([key, schema]) => [key, withoutDefault(schema as z.ZodType).optional()]),
      ),
    )
    .refine((body) => Object.keys(body).length > 0, 'nothing to change')
    .meta({ id: `${name}Changes` }) as unknown as z.ZodType<Partial<z.infer<z.ZodObject<T>>>>;
}

/** A default belongs to creating: a change that leaves a field out must not reset it. */
function withoutDefault(schema: z.ZodType): z.ZodType {
  return schema instanceof z.ZodDefault ? (schema.unwrap() as z.ZodType) : schema;
}

export const CustomerCreate = z
  .strictObject({
    code: Code,
    name: text(200, 1),
    billingEmail: z.email().max(254).nullable().default(null),
    termsDays: z.int().min(0).max(365).default(30),
    taxExempt: z.boolean().default(false),
  })
  .meta({ id: 'CustomerCreate' });
export const CustomerChanges = changesOf(CustomerCreate, 'Customer');
export const Customer = z
  .object({
    ...row,
    code: Code,
    name: z.string(),
    billingEmail: z.string().nullable(),
    termsDays: z.int(),
    taxExempt: z.boolean(),
  })
  .meta({ id: 'Customer' });

const siteFields = {
  code: Code,
  customerId: Id,
  name: text(200, 1),
  latitude: Latitude,
  longitude: Longitude,
  timeZone: TimeZone,
};
export const SiteCreate = z
  .strictObject({
    ...siteFields,
    access: z.array(WeeklyWindow).max(50).default([]),
    setupMinutes: z.int().min(0).max(480).default(10),
    maxMachinesDown: z.int().min(1).max(1000).default(1),
    downRule: z.enum(['one-by-one', 'whole-visit']).default('one-by-one'),
    preferredTechnicianId: Id.nullable().default(null),
    preferenceCents: Cents.min(0).default(0),
    visitFeeCents: Cents.min(0).default(0),
    gateNotes: text(2000).default(''),
    cautions: text(2000).default(''),
  })
  .meta({ id: 'SiteCreate' });
export const SiteChanges = changesOf(SiteCreate, 'Site');
export const Site = z
  .object({
    ...row,
    ...siteFields,
    access: z.array(WeeklyWindow),
    setupMinutes: z.int(),
    maxMachinesDown: z.int(),
    downRule: z.enum(['one-by-one', 'whole-visit']),
    preferredTechnicianId: Id.nullable(),
    preferenceCents: Cents,
    visitFeeCents: Cents,
    gateNotes: z.string(),
    cautions: z.string(),
  })
  .meta({ id: 'Site' });

export const BlackoutCreate = z
  .strictObject({ siteId: Id, from: LocalDate, to: LocalDate, reason: text(500).default('') })
  .refine((body) => body.from <= body.to, { path: ['to'], message: 'the first day comes first' })
  .meta({ id: 'BlackoutCreate' });
export const Blackout = z
  .object({ id: Id, siteId: Id, from: LocalDate, to: LocalDate, reason: z.string() })
  .meta({ id: 'Blackout', description: 'Days on which nobody may take machines of a site' });

const Severity = z.enum(['light', 'normal', 'severe']);
const Condition = z.enum(['working', 'down', 'at-shop']);
const Rollover = SomeHours.describe('Hours at which the meter starts again from zero; null: not told');
const RetiredOn = LocalDate.nullable().describe(
  'First day out of use: from then on it is neither forecast nor planned, and its history stays; null: in use',
);
export const MachineCreate = z
  .strictObject({
    code: Code,
    siteId: Id,
    machineClass: Code,
    maker: text(100).nullable().default(null),
    model: text(100).nullable().default(null),
    serial: text(100).nullable().default(null),
    inServiceOn: LocalDate.nullable().default(null),
    retiredOn: RetiredOn.default(null),
    spindles: z.int().min(0).max(20).default(3),
    severity: Severity.default('normal'),
    condition: Condition.default('working'),
    meterRolloverHours: Rollover.nullable().default(null),
    notes: text(2000).default(''),
  })
  .meta({ id: 'MachineCreate' });
export const MachineChanges = changesOf(MachineCreate, 'Machine');
export const Machine = z
  .object({
    ...row,
    code: Code,
    siteId: Id,
    machineClass: Code,
    maker: z.string().nullable(),
    model: z.string().nullable(),
    serial: z.string().nullable(),
    inServiceOn: LocalDate.nullable(),
    retiredOn: RetiredOn,
    spindles: z.int(),
    severity: Severity,
    condition: Condition,
    meterRolloverHours: Rollover.nullable(),
    notes: z.string(),
  })
  .meta({ id: 'Machine' });

export const TechnicianCreate = z
  .strictObject({
    code: Code,
    name: text(200, 1),
    baseLatitude: Latitude,
    baseLongitude: Longitude,
    timeZone: TimeZone,
    shifts: z
      .array(WeeklyWindow)
      .max(50)
      .default([])
      .meta({ description: 'At most two stretches a day; the rest between them is lunch as well' }),
    skills: z.array(Skill).max(50).default([]),
    wageCentsPerHour: Cents.min(0),
    overtimeCentsPerHour: Cents.min(0),
    maxOvertimeMinutes: z.int().min(0).max(480).default(0),
    lunchMinutes: z.int().min(0).max(120).default(30),
    lunchEarliest: ClockTime.default('11:00'),
    lunchLatest: ClockTime.default('13:30'),
    active: z.boolean().default(true),
  })
  .meta({ id: 'TechnicianCreate' });
export const TechnicianChanges = changesOf(TechnicianCreate, 'Technician');
export const Technician = z
  .object({
    ...row,
    code: Code,
    name: z.string(),
    baseLatitude: Latitude,
    baseLongitude: Longitude,
    timeZone: z.string(),
    shifts: z.array(WeeklyWindow),
    skills: z.array(z.string()),
    wageCentsPerHour: Cents,
    overtimeCentsPerHour: Cents,
    maxOvertimeMinutes: z.int(),
    lunchMinutes: z.int(),
    lunchEarliest: ClockTime,
    lunchLatest: ClockTime,
    active: z.boolean(),
  })
  .meta({ id: 'Technician' });

export const AbsenceCreate = z
  .strictObject({ technicianId: Id, from: LocalDate, to: LocalDate, reason: text(200).default('') })
  .refine((body) => body.from <= body.to, { path: ['to'], message: 'the first day comes first' })
  .meta({ id: 'AbsenceCreate' });
export const Absence = z
  .object({ id: Id, technicianId: Id, from: LocalDate, to: LocalDate, reason: z.string() })
  .meta({ id: 'Absence', description: 'Days a technician does not work' });

export const PartCreate = z
  .strictObject({
    code: Code,
    description: text(500, 1),
    designation: text(100).nullable().default(null),
    unit: text(20, 1).default('each'),
    unitPriceCents: Cents.min(0).default(0),
    unitCostCents: Cents.min(0).default(0),
    leadDays: z.int().min(0).max(365).default(0),
    onHand: Quantity.default('0'),
  })
  .meta({ id: 'PartCreate' });
export const PartChanges = changesOf(PartCreate, 'Part');
export const Part = z
  .object({
    ...row,
    code: Code,
    description: z.string(),
    designation: z.string().nullable(),
    unit: z.string(),
    unitPriceCents: Cents,
    unitCostCents: Cents,
    leadDays: z.int(),
    onHand: Quantity,
  })
  .meta({ id: 'Part' });

export const PartOrderCreate = z
  .strictObject({ partId: Id, quantity: SomeQuantity, orderedOn: LocalDate, expectedOn: LocalDate })
  .refine((body) => body.orderedOn <= body.expectedOn, { path: ['expectedOn'], message: 'the first day comes first' })
  .meta({ id: 'PartOrderCreate' });
export const PartOrderChanges = z
  .strictObject({
    expectedOn: LocalDate.optional().meta({ description: 'When what is still to come should be there' }),
    receivedOn: LocalDate.optional(),
    receivedQuantity: SomeQuantity.optional().meta({
      description: 'All that has come so far, this delivery included; left out = all that was ordered',
    }),
    cancelledOn: LocalDate.optional().meta({ description: 'Nothing more of it comes; what has come stays' }),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .refine((body) => body.receivedQuantity === undefined || body.receivedOn !== undefined, {
    path: ['receivedOn'],
    message: 'say on which day they came',
  })
  .refine((body) => body.cancelledOn === undefined || body.receivedOn === undefined, {
    path: ['cancelledOn'],
    message: 'receive what has come first, then cancel the rest',
  })
  .meta({ id: 'PartOrderChanges' });
export const DeliveryTakenBack = z
  .strictObject({
    quantity: SomeQuantity.meta({ description: 'How many of those received did not come' }),
    reason: text(500, 1),
    evenIfGone: z
      .boolean()
      .default(false)
      .meta({ description: 'Also where the shelf no longer holds so many: it is then left with none' }),
  })
  .meta({ id: 'DeliveryTakenBack' });
export const PartOrder = z
  .object({
    ...row,
    partId: Id,
    quantity: Quantity,
    orderedOn: LocalDate,
    expectedOn: LocalDate,
    receivedOn: LocalDate.nullable().meta({ description: 'Day of the last delivery' }),
    receivedQuantity: Quantity.meta({ description: 'All that has come so far' }),
    cancelledOn: LocalDate.nullable(),
    outstanding: Quantity.meta({ description: 'Still to come; none of a cancelled order' }),
  })
  .meta({
    id: 'PartOrder',
    description: 'A part on its way; what is received is put on the shelf, the rest stays on order',
  });

export const MachineClass = z
  .object({
    id: Id,
    code: Code,
    name: z.string(),
    defaultSpindles: z.int(),
    preparations: z.array(
      z.object({
        code: z.string(),
        name: z.string(),
        minutes: z.int(),
        parentCode: z.string().nullable(),
        cautions: z.array(z.string()),
        source: z.string(),
      }),
    ),
  })
  .meta({ id: 'MachineClass' });

export const Torque = z
  .object({
    what: z.string(),
    ftLb: z.tuple([z.number(), z.number()]).nullable(),
    nm: z.tuple([z.number(), z.number()]).nullable(),
    note: z.string(),
  })
  .meta({ id: 'Torque', description: 'Tightening torque, low and high; null = only the machine’s manual can say' });

export const ServiceItemChanges = z
  .strictObject({
    title: text(200, 1).optional(),
    intervalHours: SomeHours.nullable().optional(),
    intervalDays: z.int().min(1).max(3650).nullable().optional(),
    firstHours: SomeHours.nullable().optional(),
    severeFactor: z.number().gt(0).max(1).optional(),
    toleranceHours: Hours.optional(),
    toleranceDays: z.int().min(0).max(365).optional(),
    minutes: Minutes.optional(),
    minutesPerSpindle: z.int().min(0).max(240).optional(),
    skill: Skill.nullable().optional(),
    mustDo: z.boolean().optional(),
    failureCents: Cents.min(0).optional(),
    active: z.boolean().optional(),
  })
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'ServiceItemChanges' });
export const ServiceItem = z
  .object({
    ...row,
    machineClass: Code,
    code: Code,
    title: z.string(),
    scope: z.enum(['machine', 'spindle']),
    intervalHours: Hours.nullable(),
    intervalDays: z.int().nullable(),
    firstHours: Hours.nullable(),
    seasonEvent: z.enum(['before-first-cut', 'before-storage']).nullable(),
    severeFactor: z.number(),
    toleranceHours: Hours,
    toleranceDays: z.int(),
    anchor: z.enum(['floating', 'fixed']),
    minutes: z.int(),
    minutesPerSpindle: z.int(),
    skill: z.string().nullable(),
    mustDo: z.boolean(),
    preparations: z.array(z.string()),
    resetBy: z.array(z.string()),
    parts: z.array(z.object({ partId: Id, code: Code, quantity: Quantity, perSpindle: z.boolean() })),
    consumables: z.array(
      z.object({ name: z.string(), quantity: z.number(), unit: z.string(), perSpindle: z.boolean() }),
    ),
    steps: z.array(z.string()),
    torques: z.array(Torque),
    cautions: z.array(z.string()),
    manualFirst: z.string(),
    failureCents: Cents,
    hazardShape: z.number(),
    sources: z.record(z.string(), z.string()),
    active: z.boolean(),
  })
  .meta({ id: 'ServiceItem', description: 'A kind of work on the machines of a class: the shop’s own, editable copy' });

export const AgreementCreate = z
  .strictObject({
    customerId: Id,
    name: text(200, 1),
    startsOn: LocalDate,
    endsOn: LocalDate.nullable().default(null),
    responseHours: z.int().min(1).max(720).nullable().default(null),
    items: z
      .array(
        z.strictObject({
          itemCode: Code,
          included: z.boolean().default(true),
          yearlyAllowance: z.int().min(0).nullable().default(null),
        }),
      )
      .max(200)
      .default([]),
  })
  .refine((body) => body.endsOn === null || body.startsOn <= body.endsOn, {
    path: ['endsOn'],
    message: 'the first day comes first',
  })
  .meta({ id: 'AgreementCreate' });
export const Agreement = z
  .object({
    ...row,
    customerId: Id,
    name: z.string(),
    startsOn: LocalDate,
    endsOn: LocalDate.nullable(),
    responseHours: z.int().nullable(),
    items: z.array(z.object({ itemCode: z.string(), included: z.boolean(), yearlyAllowance: z.int().nullable() })),
  })
  .meta({
    id: 'Agreement',
    description: 'Service agreement with a customer: items included, allowances, response time',
  });

export const MachineOverrideCreate = z
  .strictObject({
    machineId: Id,
    itemId: Id,
    disabled: z.boolean().default(false),
    intervalHours: SomeHours.nullable().default(null),
    intervalDays: z.int().min(1).max(3650).nullable().default(null),
    minutes: Minutes.nullable().default(null),
    note: text(500).default(''),
  })
  .meta({ id: 'MachineOverrideCreate' });
export const MachineOverride = z
  .object({
    ...row,
    machineId: Id,
    itemId: Id,
    disabled: z.boolean(),
    intervalHours: Hours.nullable(),
    intervalDays: z.int().nullable(),
    minutes: z.int().nullable(),
    note: z.string(),
  })
  .meta({ id: 'MachineOverride', description: 'What one machine does differently from its class' });

export const ComponentSlot = z
  .object({ id: Id, machineId: Id, name: z.string(), kind: z.string() })
  .meta({ id: 'ComponentSlot', description: 'A place for a part, e.g. “spindle 2”' });

const RemovalReason = z.enum(['failed', 'preventive', 'upgrade', 'machine-retired']);
export const ComponentLifeCreate = z
  .strictObject({
    slotId: Id,
    partId: Id.nullable().default(null),
    fittedOn: LocalDate.nullable().default(null),
    fittedHours: Hours.nullable().default(null),
    removedOn: LocalDate.nullable().default(null),
    removedHours: Hours.nullable().default(null),
    removalReason: RemovalReason.nullable().default(null),
    bearingFeel: z.enum(['smooth', 'rough', 'loose', 'locked']).nullable().default(null),
    spacerEndLip: z.boolean().nullable().default(null).meta({ description: 'A lip rolled on the spacer’s end' }),
    housingStepWear: z.enum(['none', 'slight', 'worn']).nullable().default(null),
    debrisWrap: z.enum(['none', 'grass', 'twine', 'wire']).nullable().default(null),
    debrisCupMissing: z.boolean().nullable().default(null),
    greaseLook: z.enum(['fresh', 'dark', 'watery', 'metal', 'dry']).nullable().default(null),
    rootCause: text(200).nullable().default(null),
    causeId: Id.nullable().default(null).meta({ description: 'One event behind several failures: /v1/failure-causes' }),
    note: text(500).default(''),
  })
  .refine((body) => (body.removedOn === null) === (body.removalReason === null), {
    path: ['removalReason'],
    message: 'a removal has a day and a reason',
  })
  .refine((body) => body.fittedOn === null || body.removedOn === null || body.fittedOn <= body.removedOn, {
    path: ['removedOn'],
    message: 'the first day comes first',
  })
  .meta({ id: 'ComponentLifeCreate' });
export const ComponentLife = z
  .object({
    id: Id,
    slotId: Id,
    partId: Id.nullable(),
    fittedOn: LocalDate.nullable(),
    fittedHours: Hours.nullable(),
    removedOn: LocalDate.nullable(),
    removedHours: Hours.nullable(),
    removalReason: RemovalReason.nullable(),
    bearingFeel: z.string().nullable(),
    spacerEndLip: z.boolean().nullable(),
    housingStepWear: z.string().nullable(),
    debrisWrap: z.string().nullable(),
    debrisCupMissing: z.boolean().nullable(),
    greaseLook: z.string().nullable(),
    rootCause: z.string().nullable(),
    causeId: Id.nullable(),
    note: z.string(),
  })
  .meta({ id: 'ComponentLife', description: 'One part’s stay in a slot: fitted, removed, why' });

export const RegisterImport = z
  .object({ id: Id, folderHash: z.string(), counts: z.record(z.string(), z.unknown()), importedAt: z.iso.datetime() })
  .meta({ id: 'RegisterImport', description: 'An import that changed something' });

export const MachineMoveCreate = z
  .strictObject({ machineId: Id, fromSiteId: Id, until: LocalDate })
  .meta({ id: 'MachineMoveCreate' });
export const MachineMove = z
  .object({ id: Id, machineId: Id, fromSiteId: Id, until: LocalDate })
  .meta({ id: 'MachineMove', description: 'A machine left a site; what it ran there says little about the next' });

const Celsius = z.number().min(-90).max(70);
const weatherDay = {
  siteId: Id.nullable().default(null).meta({ description: 'null = the whole region' }),
  date: LocalDate,
  lowC: Celsius,
  highC: Celsius,
  rainMm: z.number().min(0).max(2000),
};
export const WeatherCreate = z
  .strictObject({
    days: z
      .array(
        z
          .strictObject(weatherDay)
          .refine((day) => day.lowC <= day.highC, { path: ['lowC'], message: 'the low is above the high' }),
      )
      .min(1)
      .max(5000),
  })
  .meta({ id: 'WeatherCreate' });
export const WeatherDay = z.object({ id: Id, ...weatherDay, siteId: Id.nullable() }).meta({ id: 'WeatherDay' });
export const WeatherKept = z.object({ kept: z.int(), replaced: z.int() }).meta({ id: 'WeatherKept' });

const Place = z.strictObject({ latitude: Latitude, longitude: Longitude });
const TravelFigures = z.object({
  detourShort: z.number(),
  detourMedium: z.number(),
  detourLong: z.number(),
  townKmh: z.number(),
  openKmh: z.number(),
  centsPerKm: z.number(),
});
export const TravelLearn = z
  .strictObject({
    drives: z
      .array(
        z.strictObject({
          from: Place,
          to: Place,
          minutes: z.number().min(0).max(1440),
          metres: z.number().min(0).max(2_000_000).nullable().default(null),
        }),
      )
      .min(1)
      .max(5000),
    apply: z.boolean().default(false).meta({ description: 'Plan with what was learned from now on' }),
  })
  .meta({ id: 'TravelLearn' });
export const TravelLearned = z
  .object({
    before: TravelFigures,
    settings: TravelFigures,
    used: z.int(),
    errorBefore: z.number(),
    errorAfter: z.number(),
    applied: z.boolean(),
  })
  .meta({
    id: 'TravelLearned',
    description: 'Travel settings drawn to recorded drives; errors are mean minutes a drive',
  });
