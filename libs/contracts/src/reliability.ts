import { z } from 'zod';
import { Cents, Code, Hours, Id, Instant, LocalDate, PageQuery, text, Version } from './primitives.js';

const Severity = z.enum(['light', 'normal', 'severe']);
const HoursNumber = z.number().min(0).meta({ description: 'Hours' });
const Chance = z.number().min(0).max(1);
const Basis = z
  .enum(['own', 'pooled', 'prior'])
  .meta({ description: 'own lives; pooled with like groups; or the stated assumption alone' });

/** Which lives are asked about; what is left out is not asked about. */
const LifeFilter = {
  part: Code.optional().meta({ description: 'Part code, e.g. BRG-6205-2Z' }),
  slot: text(64, 1).optional().meta({ description: 'Slot name, e.g. spindle 2' }),
  machineClass: Code.optional(),
  siteId: Id.optional(),
  severity: Severity.optional(),
  knownFittingOnly: z
    .enum(['true', 'false'])
    .optional()
    .meta({ description: 'true leaves out first parts, whose fitting nobody recorded' }),
};
const ItemCode = Code.default('replace-spindle-bearings').meta({ description: 'Service item that replaces the part' });

export const RemovalFindings = z.object({
  bearingFeel: z.enum(['smooth', 'rough', 'loose', 'locked']).nullable(),
  spacerEndLip: z.boolean().nullable(),
  housingStepWear: z.enum(['none', 'slight', 'worn']).nullable(),
  debrisWrap: z.enum(['none', 'grass', 'twine', 'wire']).nullable(),
  debrisCupMissing: z.boolean().nullable(),
  greaseLook: z.enum(['fresh', 'dark', 'watery', 'metal', 'dry']).nullable(),
});

export const LifeQuery = PageQuery.extend({ ...LifeFilter, itemCode: Code.optional(), machineId: Id.optional() });
export const PartLife = z
  .object({
    machineId: Id,
    itemCode: z.string(),
    slot: z.string().nullable(),
    part: z.string().nullable().meta({ description: 'Part code; null = not on record' }),
    fittedOn: LocalDate.nullable(),
    removedOn: LocalDate.nullable(),
    reason: z
      .enum(['failed', 'preventive', 'upgrade', 'machine-retired'])
      .nullable()
      .meta({ description: 'null = still running' }),
    entryHours: HoursNumber.meta({ description: 'Hours of the part when watching began' }),
    ageHours: HoursNumber.meta({ description: 'Hours of the part at its end, or today' }),
    fittingKnown: z.boolean(),
    findings: RemovalFindings,
    rootCause: z.string().nullable(),
    causeId: Id.nullable(),
    countsAsFailure: z.boolean().meta({ description: 'false for all but one of the failures that share a cause' }),
  })
  .meta({ id: 'PartLife', description: 'One part’s stay in a slot, from the shop’s history' });

export const LifeGroupQuery = z.object({ ...LifeFilter, itemCode: ItemCode });
const Figure = z
  .object({ value: z.number(), low: z.number(), high: z.number() })
  .nullable()
  .meta({ description: 'With its 90 % interval; null = the data cannot tell' });
const SurvivalPoint = z.object({
  ageHours: HoursNumber,
  atRisk: z.number().min(0),
  failures: z.number().min(0),
  survival: Chance,
  low: Chance,
  high: Chance,
});
const LifeMark = z
  .object({ ageHours: HoursNumber, failed: z.boolean() })
  .meta({ description: 'Lives that a chart could not tell apart share a mark' });
export const LifeFit = z
  .object({
    lives: z.int().min(0),
    failures: z.int().min(0),
    basis: Basis,
    shape: Figure,
    scaleHours: Figure,
    b10Hours: Figure,
    points: z.array(SurvivalPoint).meta({ description: 'Kaplan–Meier steps with 90 % intervals' }),
    marks: z.array(LifeMark),
    curve: z.array(z.object({ ageHours: HoursNumber, survival: Chance, low: Chance, high: Chance })),
    goodness: z.string().nullable(),
    statement: z.string(),
    assumptions: z.array(z.string()),
    leftOut: z.array(z.string()),
  })
  .meta({
    id: 'LifeFit',
    description: 'How long the parts of a group last: points, fitted curve, figures, assumptions',
  });

export const PartsOnRecordQuery = z.object({ itemCode: ItemCode });
export const PartsOnRecord = z
  .object({ itemCode: z.string(), parts: z.array(z.string()).meta({ description: 'Part codes' }) })
  .meta({ id: 'PartsOnRecord', description: 'Parts known to have been fitted by a service item' });

export const GradeQuery = z.object({
  itemCode: ItemCode,
  first: Code.meta({ description: 'Part code that is asked about' }),
  second: Code.meta({ description: 'Part code that it is held against' }),
  machineClass: Code.optional(),
  siteId: Id.optional(),
});
const Pair = <T extends z.ZodType>(item: T) => z.array(item).length(2);
export const GradeComparison = z
  .object({
    grades: Pair(z.string()),
    descriptions: Pair(z.string()),
    lives: Pair(z.int().min(0)),
    failures: Pair(z.int().min(0)),
    ratio: z.number().nullable().meta({ description: 'Life of the first as a multiple of the second’s' }),
    interval: z.object({ low: z.number(), high: z.number().nullable() }).nullable(),
    level: z.number(),
    logRankP: z.number().nullable(),
    verdict: z.enum(['first-lasts-longer', 'second-lasts-longer', 'cannot-tell']),
    sentence: z.string(),
    assumptions: z.array(z.string()),
    points: Pair(z.array(SurvivalPoint)),
    marks: Pair(z.array(LifeMark)),
    watchedToHours: Pair(HoursNumber).meta({ description: 'Greatest age watched of each; nothing is known beyond it' }),
  })
  .meta({
    id: 'GradeComparison',
    description: 'Which of two part grades lasts longer here, or that the data cannot tell',
  });

export const ReplacementAgeQuery = z.object({
  itemCode: ItemCode,
  machineClass: Code,
  currentHours: z.coerce
    .number()
    .positive()
    .max(100_000)
    .optional()
    .meta({ description: 'Default: the item’s own interval' }),
  plannedCents: z.coerce.number().int().min(1).max(100_000_000).optional(),
  failedCents: z.coerce.number().int().min(1).max(100_000_000).optional(),
});
export const ReplacementAge = z
  .object({
    itemCode: z.string(),
    machineClass: z.string(),
    basis: Basis,
    plannedCents: Cents,
    failedCents: Cents,
    bestHours: z.number().nullable().meta({ description: 'null = waiting for failure is cheapest' }),
    lowHours: z.number().nullable(),
    highHours: z.number().nullable().meta({ description: 'null = it may be best never to replace before failure' }),
    centsPerThousandHours: z.number(),
    runToFailureCentsPerThousandHours: z.number(),
    chancePlannedPays: Chance,
    currentHours: z.number().nullable(),
    currentCentsPerThousandHours: z.number().nullable(),
    currentExcessCentsPerThousandHours: z
      .number()
      .nullable()
      .meta({ description: 'What the current interval costs against the best' }),
    opportunityHours: z
      .number()
      .nullable()
      .meta({ description: 'Replace parts older than this while the machine is open anyway' }),
    curve: z.array(
      z.object({ ageHours: z.number(), centsPerThousandHours: z.number(), low: z.number(), high: z.number() }),
    ),
    sentence: z.string(),
    statement: z.string(),
    assumptions: z.array(z.string()),
  })
  .meta({ id: 'ReplacementAge', description: 'When replacing beats waiting: cost-rate curve, optimum with interval' });

export const BlockReplacementQuery = z.object({
  itemCode: ItemCode,
  machineClass: Code,
  plannedCents: z.coerce.number().int().min(1).max(100_000_000).optional().meta({ description: 'Default: as planned' }),
  minimalRepairCents: z.coerce.number().int().min(1).max(100_000_000).meta({
    description: 'A repair between replacements that makes it run again without renewing it',
  }),
});
export const BlockReplacement = z
  .object({
    itemCode: z.string(),
    machineClass: z.string(),
    basis: Basis,
    plannedCents: Cents,
    minimalRepairCents: Cents,
    bestHours: z
      .number()
      .nullable()
      .meta({ description: 'null = repairs do not grow with age: never on a fixed beat' }),
    centsPerThousandHours: z.number().nullable(),
    repairsBetween: z.number().nullable().meta({ description: 'Mean minimal repairs between two replacements' }),
    curve: z.array(z.object({ intervalHours: z.number(), centsPerThousandHours: z.number() })),
    sentence: z.string(),
    statement: z.string(),
    assumptions: z.array(z.string()),
  })
  .meta({
    id: 'BlockReplacement',
    description: 'Replacing all at a fixed beat of hours, with minimal repairs in between',
  });

export const StopgapRiskQuery = z.object({
  itemCode: ItemCode,
  machineClass: Code.optional(),
  ageHours: z.coerce.number().min(0).max(100_000).default(0),
  hoursAhead: z.coerce.number().positive().max(10_000).default(25),
  lifeShareLow: z.coerce.number().positive().max(1).default(0.05),
  lifeShareHigh: z.coerce.number().positive().max(1).default(0.3),
});
export const StopgapRisk = z
  .object({ low: Chance, chance: Chance, high: Chance, sentence: z.string(), statement: z.string() })
  .meta({ id: 'StopgapRisk', description: 'Chance that a temporary repair fails within some hours' });

const Positive = z.coerce.number().positive();
export const InspectionQuery = z.object({
  defectsPerThousandHours: Positive.max(1000),
  meanDelayHours: Positive.max(100_000).meta({
    description: 'From a defect that can be seen to the failure it becomes',
  }),
  failureCents: z.coerce.number().int().min(0).max(1_000_000_000),
  foundCents: z.coerce
    .number()
    .int()
    .min(0)
    .max(1_000_000_000)
    .meta({ description: 'Repair of a defect found in time' }),
  inspectionCents: z.coerce.number().int().min(1).max(1_000_000_000),
});
export const InspectionInterval = z
  .object({
    bestHours: z.number().nullable().meta({ description: 'null = inspecting never pays' }),
    centsPerThousandHours: z.number(),
    withoutInspectionCentsPerThousandHours: z.number(),
    shareFailing: Chance.nullable().meta({
      description: 'Share of defects that still fail before an inspection sees them',
    }),
    curve: z.array(z.object({ intervalHours: z.number(), centsPerThousandHours: z.number() })),
    sentence: z.string(),
    assumptions: z.array(z.string()),
  })
  .meta({ id: 'InspectionInterval', description: 'How often to look, by the delay-time model' });

export const BearingLifeQuery = z.object({
  designation: text(40, 3).meta({ description: 'ISO 15 designation, e.g. 6205-2Z' }),
  engineRpm: Positive.max(20_000).default(3600),
  drivePulley: Positive.max(2000).default(150).meta({ description: 'Pitch diameter on the engine, any unit' }),
  drivenPulley: Positive.max(2000).default(180).meta({ description: 'Pitch diameter on the spindle, same unit' }),
  strandTensionN: z.coerce
    .number()
    .min(0)
    .max(20_000)
    .default(250)
    .meta({ description: 'Belt tension in each strand, N' }),
  wrapDegrees: Positive.max(360).default(180),
  imbalanceGramMm: z.coerce.number().min(0).max(1_000_000).default(400).meta({ description: 'Blade imbalance, g mm' }),
  axialN: z.coerce.number().min(0).max(100_000).default(0),
  bearingDistanceMm: Positive.max(1000).default(60),
  pulleyOverhangMm: z.coerce.number().min(0).max(1000).default(40),
  bladeOverhangMm: z.coerce.number().min(0).max(1000).default(60),
  reliabilityPercent: z.coerce.number().min(50).max(99.95).default(90),
  contamination: z.enum(['clean', 'normal', 'dirty', 'severe']).default('normal'),
  ratingN: Positive.max(10_000_000).optional().meta({ description: 'Dynamic rating C when the maker’s differs' }),
  staticRatingN: Positive.max(10_000_000).optional(),
});
const OneBearing = z.object({
  radialN: z.number(),
  equivalentN: z.number(),
  l10Hours: z.number(),
  hoursAtReliability: z.number(),
  adjustedLowHours: z.number(),
  adjustedHighHours: z.number(),
  notes: z.array(z.string()),
});
export const BearingLifeAnswer = z
  .object({
    designation: z.string(),
    boreMm: z.number(),
    outerMm: z.number(),
    widthMm: z.number(),
    ratingN: z.number(),
    staticRatingN: z.number(),
    seal: z.string(),
    spindleRpm: z.number(),
    beltN: z.number(),
    imbalanceN: z.number(),
    upper: OneBearing,
    lower: OneBearing,
    bothL10Hours: z.number().meta({ description: 'First failure of either' }),
    bothAdjustedLowHours: z.number(),
    bothAdjustedHighHours: z.number(),
    contaminationWords: z.string(),
    sources: z.array(z.string()),
  })
  .meta({
    id: 'BearingLife',
    description: 'ISO 281 rating life of a spindle’s two bearings, contamination as a range',
  });

export const SpeedCheckCreate = z
  .strictObject({
    machineId: Id,
    bladeInches: z.number().positive().max(200).meta({ description: 'Tip to tip' }),
    engineRpm: z.number().positive().max(20_000),
    drivePulley: z.number().positive().max(2000).default(1),
    drivenPulley: z.number().positive().max(2000).default(1),
    note: text(500).default(''),
  })
  .meta({ id: 'SpeedCheckCreate' });
export const SpeedCheckQuery = PageQuery.extend({ machineId: Id.optional() });
export const SpeedCheck = z
  .object({
    id: Id,
    machineId: Id,
    checkedAt: Instant,
    bladeInches: z.number(),
    spindleRpm: z.number(),
    feetPerMinute: z.number(),
    limitFeetPerMinute: z.number(),
    isOver: z.boolean(),
    highestRpm: z.number(),
    warning: z.string().nullable().meta({ description: 'Recorded; blocks nothing' }),
    limitSource: z.string(),
    note: z.string(),
  })
  .meta({ id: 'SpeedCheck', description: 'A blade tip speed held against its limit' });

export const MachineRecordQuery = PageQuery.extend({ machineClass: Code.optional(), siteId: Id.optional() });
const MachineRecordFields = {
  machineId: Id,
  machineCode: z.string(),
  machineClass: z.string(),
  siteId: Id,
  siteName: z.string(),
  retiredOn: LocalDate.nullable(),
  fromHours: HoursNumber,
  toHours: HoursNumber,
  repairCount: z.int().min(0),
  repairCents: Cents,
  centsPerHour: z.number().nullable(),
  trend: z.string(),
  laplace: z.number().nullable(),
  laplaceP: z.number().nullable(),
  milHdbkP: z.number().nullable(),
};
export const MachineRecord = z.object(MachineRecordFields).meta({
  id: 'MachineRecord',
  description: 'A machine’s unplanned repairs since it was taken on; the dearest per hour first',
});
export const MachineReplacementQuery = z.object({
  newPriceCents: z.coerce.number().int().min(0).max(1_000_000_000).optional(),
  resaleNowCents: z.coerce.number().int().min(0).max(1_000_000_000).default(0),
  resaleInAYearCents: z.coerce.number().int().min(0).max(1_000_000_000).default(0),
  newLifeHours: Positive.max(100_000).default(2000),
  hoursNextYear: Positive.max(8760).optional(),
});
export const MachineAdvice = z
  .object({
    ...MachineRecordFields,
    repairs: z.array(z.object({ on: LocalDate, hours: HoursNumber, code: z.string(), cents: Cents })),
    advice: z
      .object({
        keepCentsPerHour: z.number(),
        keepLowCentsPerHour: z.number(),
        keepHighCentsPerHour: z.number(),
        replaceCentsPerHour: z.number(),
        breakEvenRepairCentsNextYear: z.number(),
        expectedRepairCentsNextYear: z.number(),
        verdict: z.enum(['keep', 'replace', 'cannot-tell']),
        sentence: z.string(),
      })
      .nullable()
      .meta({ description: 'null without newPriceCents, or without watched hours' }),
    assumptions: z.array(z.string()),
  })
  .meta({ id: 'MachineAdvice', description: 'Repair or replace: cost per hour of keeping against a new machine' });

export const CumulativeQuery = z.object({
  of: z.enum(['repairs', 'cents']).default('repairs'),
  machineClass: Code.optional(),
  siteId: Id.optional(),
});
export const MeanCumulative = z
  .object({
    of: z.enum(['repairs', 'cents']),
    machines: z.int().min(0),
    points: z.array(
      z.object({ ageHours: HoursNumber, atRisk: z.int(), mean: z.number(), low: z.number(), high: z.number() }),
    ),
    powerLaw: z.object({ exponent: z.number(), events: z.int() }).nullable(),
    statement: z.string(),
  })
  .meta({
    id: 'MeanCumulative',
    description: 'Mean repairs (or cents) per machine by machine hours, with 90 % interval',
  });

export const LifeRun = z
  .object({
    id: Id,
    status: z.enum(['asked', 'running', 'done', 'failed', 'cancelled']),
    asOf: LocalDate,
    askedAt: Instant,
    finishedAt: Instant.nullable(),
    error: z.string().nullable(),
  })
  .meta({ id: 'LifeRun', description: 'A re-fit of all lives; one runs each month, or when asked for' });

export const ProposalQuery = PageQuery.extend({
  state: z.enum(['proposed', 'accepted', 'refused', 'reversed', 'superseded']).optional(),
});
export const ProposalDecision = z.strictObject({ note: text(500).default('') }).meta({ id: 'ProposalDecision' });
export const IntervalProposal = z
  .object({
    id: Id,
    serviceItemId: Id,
    itemCode: z.string(),
    itemTitle: z.string(),
    machineClass: z.string(),
    state: z.enum(['proposed', 'accepted', 'refused', 'reversed', 'superseded']),
    currentHours: Hours.nullable(),
    proposedHours: Hours,
    savesCentsPerThousandHours: Cents,
    evidence: z.record(z.string(), z.unknown()),
    sentence: z.string(),
    proposedOn: LocalDate,
    decidedAt: Instant.nullable(),
    decisionNote: z.string(),
    reversedAt: Instant.nullable(),
    version: Version,
  })
  .meta({
    id: 'IntervalProposal',
    description: 'A change of an interval that lives suggest; a person decides, and can take it back',
  });

export const FailureCauseCreate = z
  .strictObject({
    machineId: Id,
    happenedOn: LocalDate,
    rootCause: text(200, 1),
    note: text(500).default(''),
    completionIds: z.array(Id).max(20).default([]).meta({ description: 'Failures that this event caused' }),
  })
  .meta({ id: 'FailureCauseCreate' });
export const FailureCause = z
  .object({ id: Id, machineId: Id, happenedOn: LocalDate, rootCause: z.string(), note: z.string() })
  .meta({ id: 'FailureCause', description: 'One event behind failures, e.g. wire around two spindles; counts once' });
