import { z } from 'zod';
import { Cents, Clause, ClockTime, Code, Id, Instant, LocalDate, text } from './primitives.js';

const CostDifference = z
  .object({
    total: z.int(),
    travel: z.int(),
    labour: z.int(),
    overtime: z.int(),
    visitFees: z.int(),
    preference: z.int(),
    timing: z.int(),
    deferral: z.int(),
    laterLabour: z.int(),
    disruption: z.int(),
  })
  .meta({ id: 'CostDifference', description: 'What a change costs, by part, in cents; negative = it saves' });

const VisitPlace = z.object({ technicianId: Id, date: LocalDate, startAt: z.string() });
export const VisitChange = z
  .object({
    visitId: Id.nullable(),
    siteId: Id,
    siteName: z.string(),
    customerName: z.string(),
    what: z.enum(['added', 'moved', 'retimed', 'dropped']),
    from: VisitPlace.nullable().meta({
      description: 'null = a new visit, or one that could not be made where it stood',
    }),
    to: VisitPlace.nullable(),
    workTo: z
      .array(VisitPlace.extend({ technicianName: z.string() }))
      .meta({ description: 'Of a visit that is dropped: the visits that do its work instead; none = its work waits' }),
    minutesLater: z.int().nullable(),
    breaksPromise: z.boolean(),
  })
  .meta({ id: 'VisitChange', description: 'One visit that a change moves, adds or drops, and who has to be told' });
export const WeekDifference = z
  .object({ cents: CostDifference, visits: z.array(VisitChange), leftOut: z.array(z.string()) })
  .meta({ id: 'WeekDifference', description: 'What a change of the week costs and whom it concerns' });

export const MovePrices = z
  .object({
    visitId: Id,
    stamp: z.string(),
    places: z.array(
      z.object({
        technicianId: Id,
        date: LocalDate,
        order: z.int().meta({ description: 'Place in the order of that day, from 0, visits begun not counted' }),
        startAt: z.string(),
        endAt: z.string(),
        cents: z.int(),
        isWhereItStands: z.boolean().meta({
          description: 'True of no place = nobody can make it where it stands: prices are against leaving it undone',
        }),
        breaks: z.array(Id).meta({ description: 'Visits whose promise would be broken' }),
        shifts: z.array(z.object({ visitId: Id, minutes: z.int() })),
      }),
    ),
    closed: z.array(
      z.object({
        technicianId: Id,
        date: LocalDate,
        obstacle: z.enum(['skill', 'part', 'access', 'machines-down', 'time']),
      }),
    ),
  })
  .meta({ id: 'MovePrices', description: 'What the visit would cost at every other place, all else in its order' });

export const VisitMove = z
  .strictObject({
    technicianId: Id,
    date: LocalDate,
    order: z.int().min(0).max(100).optional().meta({ description: 'Left out = the cheapest place of the day' }),
    pinned: z.boolean().default(true).meta({ description: 'Hold it fast there when the week is planned again' }),
    stamp: text(64).optional().meta({ description: 'From the prices: refused when the week has changed since' }),
  })
  .meta({ id: 'VisitMove' });
export const VisitMoved = z
  .object({ visitId: Id, difference: WeekDifference })
  .meta({ id: 'VisitMoved', description: 'The change as it was made' });

export const RoadCallOptionsAsk = z
  .strictObject({
    daysAhead: z.int().min(1).max(7).default(3).meta({ description: 'Planned days with work left to look at' }),
  })
  .meta({ id: 'RoadCallOptionsAsk' });
export const RoadCallKind = z.enum(['squeeze-in', 'push-one', 're-plan']);
export const RoadCallOptions = z
  .object({
    roadCallId: Id,
    stamp: z.string(),
    lookedAt: z
      .object({ from: LocalDate, until: LocalDate })
      .nullable()
      .meta({ description: 'First and last planned day looked at; null = nobody works any more in what is planned' }),
    options: z.array(
      z.object({
        kind: RoadCallKind,
        sentence: z.string(),
        technicianId: Id,
        technicianName: z.string(),
        date: LocalDate,
        startAt: z.string(),
        endAt: z.string(),
        difference: WeekDifference,
      }),
    ),
    likelyParts: z.array(
      z.object({ partId: Id, name: z.string(), quantity: z.number(), onHand: z.number(), because: z.string() }),
    ),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'RoadCallOptions', description: 'The best of each way to fit a call into the planned days' });
export const RoadCallChoice = z.strictObject({ kind: RoadCallKind, stamp: text(64, 1) }).meta({ id: 'RoadCallChoice' });

export const Symptom = z
  .object({
    code: Code,
    title: z.string(),
    questions: z.array(z.object({ code: Code, question: z.string() })),
    minutes: z.int(),
    skill: z.string(),
    cautions: z.array(z.string()),
  })
  .meta({ id: 'Symptom', description: 'What a caller can tell, and what to ask' });
export const SymptomList = z.object({ items: z.array(Symptom) }).meta({ id: 'SymptomList' });

export const WeekChange = z
  .object({
    id: Id,
    planRunId: Id,
    kind: z.enum(['move', 'road-call']),
    madeAt: Instant,
    madeBy: Id.nullable(),
    cents: Cents,
    difference: z.unknown().meta({ type: 'object', description: 'A WeekDifference without names' }),
  })
  .meta({ id: 'WeekChange', description: 'A change made to a planned week' });

export const VisitBarCreate = z
  .strictObject({
    siteId: Id,
    technicianId: Id.nullable().default(null),
    date: LocalDate.nullable().default(null),
    reason: text(500).default(''),
  })
  .refine((body) => body.technicianId !== null || body.date !== null, {
    path: ['date'],
    message: 'name a technician, a date, or both',
  })
  .meta({ id: 'VisitBarCreate' });
export const VisitBar = z
  .object({
    id: Id,
    siteId: Id,
    technicianId: Id.nullable(),
    date: LocalDate.nullable(),
    reason: z.string(),
  })
  .meta({ id: 'VisitBar', description: 'Where the planner must not send somebody; null = whoever, whenever' });

export const SiteEventCreate = z
  .strictObject({ siteId: Id, date: LocalDate, from: ClockTime.default('00:00'), name: text(200, 1) })
  .meta({ id: 'SiteEventCreate' });
export const SiteEvent = z
  .object({ id: Id, siteId: Id, date: LocalDate, from: ClockTime, name: z.string() })
  .meta({ id: 'SiteEvent', description: 'All machines of the site are able to mow by then' });

export const OrderListQuery = z.object({ weeks: z.coerce.number().int().min(1).max(26).default(6) });
export const OrderList = z
  .object({
    asOf: LocalDate,
    lines: z.array(
      z.object({
        partId: Id,
        code: z.string(),
        name: z.string(),
        quantity: z.int(),
        orderBy: LocalDate,
        firstNeededOn: LocalDate,
        isLate: z.boolean(),
        certainty: z.enum(['planned', 'forecast']),
        purposes: z.array(z.string()),
        uses: z
          .array(z.object({ code: z.string(), slot: z.string().nullable(), title: z.string(), siteName: z.string() }))
          .meta({ description: 'The purposes by parts, for wording them in another language' }),
      }),
    ),
  })
  .meta({ id: 'OrderList', description: 'What to order by when, so that no planned visit lacks a part' });

export const Alert = z
  .object({
    kind: z.enum([
      'move-asked',
      'order-overdue',
      'document-behind',
      'part-late-for-visit',
      'part-late-for-stopgap',
      'stopgap-limit-near',
      'stopgap-limit-past',
    ]),
    siteId: Id.nullable().meta({ description: 'null = it concerns an order of parts' }),
    siteName: z.string().nullable(),
    machineId: Id.nullable().meta({ description: 'null = it concerns a visit as a whole, or an order of parts' }),
    machineCode: z.string().nullable(),
    visitId: Id.nullable(),
    stopgapId: Id.nullable(),
    orderId: Id.nullable().meta({ description: 'The order of parts: PATCH /v1/part-orders/{id}' }),
    documentId: Id.nullable().meta({ description: 'The issued document: GET /v1/charge-documents/{id}/since' }),
    answerId: Id.nullable().meta({ description: 'The wish to answer: POST /v1/visit-answers/{id}/reply' }),
    sentence: z.string(),
    choice: z.string().meta({ description: 'The next best thing to do' }),
    clauses: z.object({ sentence: Clause, choice: Clause }),
    move: z
      .object({ technicianId: Id, date: LocalDate, order: z.int(), cents: z.int(), stamp: z.string() })
      .nullable()
      .meta({ description: 'Where the visit would go, ready for POST /v1/visits/{id}/move' }),
  })
  .meta({ id: 'Alert' });
export const AlertList = z.object({ items: z.array(Alert) }).meta({ id: 'AlertList' });
