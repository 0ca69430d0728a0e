import { z } from 'zod';
import {
  Cents,
  ClockTime,
  Code,
  Id,
  Instant,
  LocalDate,
  PageQuery,
  Quantity,
  Skill,
  text,
  Version,
} from './primitives.js';

const Money = z
  .string()
  .regex(/^\d{1,7}(\.\d{1,4})?$/, 'an amount as a decimal string, like "95.00"')
  .meta({ description: 'Amount in the shop’s currency as a decimal string' });
const Percent = z.string().regex(/^\d{1,3}(\.\d{1,4})?$/, 'a percentage as a decimal string, like "8.25"');
const LineKind = z.enum(['labour', 'travel', 'parts', 'consumables', 'minimum']);

const Address = z.strictObject({
  street: text(200),
  city: text(100),
  postalCode: text(20),
  subdivision: text(50).meta({ description: 'State or province' }),
  country: z.string().regex(/^[A-Z]{2}$/, 'an ISO 3166-1 code, like US'),
});
const Seller = z.strictObject({ legalName: text(200), taxNumber: text(50), address: Address });
const Labour = z.strictObject({
  basis: z.enum(['actual', 'flat']),
  ratePerHour: Money,
  ratesBySkill: z.record(Skill, Money),
  roundToMinutes: z.int().min(1).max(120),
  rounding: z.enum(['up', 'nearest', 'down']),
  roundEach: z.enum(['line', 'visit']),
  overtimePercent: Percent,
  regularFrom: ClockTime,
  regularTo: ClockTime,
});
const Travel = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('none') }),
  z.strictObject({ rule: z.literal('visit-fee'), fee: Money }),
  z.strictObject({
    rule: z.literal('zone'),
    zones: z
      .array(z.strictObject({ name: text(60, 1), upToKm: z.number().min(0).max(5000), fee: Money }))
      .min(1)
      .max(20),
  }),
  z.strictObject({ rule: z.literal('shared-drive'), ratePerHour: Money }),
]);
const Parts = z.strictObject({
  basis: z.enum(['price', 'cost']),
  markUps: z.array(z.strictObject({ upToCost: Money.nullable(), percent: Percent })).max(20),
});
const Consumables = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('none') }),
  z.strictObject({
    rule: z.literal('listed'),
    prices: z.array(z.strictObject({ name: text(100, 1), unitPrice: Money })).max(200),
  }),
  z.strictObject({ rule: z.literal('share-of-labour'), percent: Percent, atMost: Money }),
]);
const Tax = z.strictObject({
  jurisdiction: text(60, 1),
  level: z.enum(['state', 'local']),
  percent: Percent,
  on: z.array(LineKind).max(5),
  siteCodes: z.array(Code).max(1000).nullable().meta({ description: 'null = at every site' }),
});
const Account = text(40, 1);
const Accounts = z.strictObject({
  receivable: Account,
  revenue: z.strictObject({
    labour: Account,
    travel: Account,
    parts: Account,
    consumables: Account,
    minimum: Account,
  }),
  salesTax: Account,
});

const settings = {
  form: z.enum(['us-sales-tax', 'en16931']),
  seller: Seller,
  labour: Labour,
  travel: Travel,
  parts: Parts,
  consumables: Consumables,
  minimumCharge: Money,
  taxes: z.array(Tax).max(50),
  accounts: Accounts,
  supervisorsSeeDocuments: z.boolean(),
};
export const ChargeSettings = z
  .object({ version: z.int().min(0).meta({ description: '0 = the starting values, never changed' }), ...settings })
  .meta({ id: 'ChargeSettings', description: 'How the shop turns finished visits into money' });
export const ChargeSettingsChanges = z
  .strictObject({
    ...settings,
    seller: Seller.partial(),
    labour: Labour.partial(),
    parts: Parts.partial(),
    accounts: Accounts.partial(),
  })
  .partial()
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'ChargeSettingsChanges', description: 'Lists replace the lists that stand' });

const Buyer = z.strictObject({
  legalName: text(200),
  taxNumber: text(50),
  address: Address,
  purchaseOrder: text(60),
  exemptionCertificate: text(100),
});
const customerTerms = { travel: Travel, consumables: Consumables, minimumCharge: Money, taxes: z.array(Tax).max(50) };
export const CustomerCharges = z
  .object({
    version: z.int().min(0),
    customerId: Id,
    terms: z
      .object({ ...customerTerms, labour: Labour.partial(), parts: Parts.partial(), buyer: Buyer.partial() })
      .partial(),
  })
  .meta({ id: 'CustomerCharges', description: 'What differs from the shop’s charge settings for this customer' });
export const CustomerChargesChanges = z
  .strictObject(
    orNull({
      ...customerTerms,
      labour: z.strictObject(orNull(Labour.shape)).partial(),
      parts: z.strictObject(orNull(Parts.shape)).partial(),
      buyer: z.strictObject(orNull(Buyer.shape)).partial(),
    }),
  )
  .partial()
  .refine((body) => Object.keys(body).length > 0, 'nothing to change')
  .meta({ id: 'CustomerChargesChanges', description: 'null = as the shop’s settings have it, or nothing stated' });

function orNull<S extends z.ZodRawShape>(shape: S) {
  return Object.fromEntries(Object.entries(shape).map(([name, type]) => [name, z.nullable(type)])) as {
    [K in keyof S]: z.ZodNullable<S[K]>;
  };
}

const Coverage = z.strictObject({ kind: z.enum(['warranty', 'goodwill']), reason: text(200, 1) });
export const ChargeFacts = z
  .strictObject({
    purchaseOrder: text(60).optional(),
    note: text(1000).optional(),
    work: z
      .array(z.strictObject({ itemId: Id, minutes: z.int().min(0).max(960).optional(), coverage: Coverage.optional() }))
      .max(500)
      .optional()
      .meta({
        description:
          'Minutes and coverage of visit items. Where minutes are not stated, those timed at the site count, shared by standard minutes; without any, the standard ones',
      }),
    parts: z
      .array(
        z.strictObject({
          partId: Id,
          itemId: Id.nullable().default(null),
          machineId: Id.nullable().default(null),
          quantity: Quantity,
          coverage: Coverage.optional(),
        }),
      )
      .max(500)
      .optional()
      .meta({
        description:
          'All parts used; absent = those recorded at the machines, and the standard parts of the work for which none was recorded, nor one put in their place',
      }),
  })
  .meta({ id: 'ChargeFacts', description: 'What was done, as far as it is charged' });

const TaxRate = z.object({ jurisdiction: z.string(), level: z.enum(['state', 'local']), percent: z.string() });
const TaxCategory = z
  .enum(['S', 'E', 'Z', 'O'])
  .meta({ description: 'UNCL 5305: standard, exempt, zero rated, outside the scope' });
const TaxMark = z.object({ category: TaxCategory, rates: z.array(TaxRate), reason: z.string().nullable() });
const Amount = z.string().meta({ description: 'Decimal string with the currency’s decimals' });
const PartyView = z.object({ code: z.string(), legalName: z.string(), taxNumber: z.string(), address: Address });

export const ChargeDocumentBody = z
  .object({
    kind: z.enum(['invoice', 'credit']),
    form: z.enum(['us-sales-tax', 'en16931']),
    number: z.string().nullable(),
    issuedOn: LocalDate.nullable(),
    dueOn: LocalDate.nullable(),
    servicedOn: LocalDate,
    site: z.object({ code: z.string(), name: z.string() }),
    purchaseOrder: z.string(),
    seller: PartyView,
    buyer: PartyView,
    refersTo: z
      .object({ number: z.string(), issuedOn: LocalDate })
      .nullable()
      .meta({ description: 'The document that a credit takes back, or that this one replaces' }),
    note: z.string(),
    currency: z.string(),
    lines: z.array(
      z.object({
        id: z.string(),
        kind: LineKind,
        name: z.string(),
        itemCode: z.string(),
        quantity: z.string(),
        unitCode: z.string().meta({ description: 'UN/ECE Recommendation 20' }),
        unitPrice: z.string(),
        priceBase: z.string().meta({ description: 'The price is for so many units' }),
        net: Amount,
        tax: TaxMark,
        machine: z.object({ code: z.string(), serial: z.string(), hours: z.string() }).nullable(),
        coverage: z
          .object({ kind: z.enum(['contract', 'warranty', 'goodwill']), reason: z.string() })
          .nullable()
          .meta({ description: 'Why the line costs nothing' }),
      }),
    ),
    charges: z.array(z.object({ kind: LineKind, reason: z.string(), amount: Amount, tax: TaxMark })),
    taxes: z.array(
      z.object({
        category: TaxCategory,
        rate: TaxRate.nullable(),
        reason: z.string().nullable(),
        base: Amount,
        tax: Amount,
      }),
    ),
    totals: z.object({
      lines: Amount,
      charges: Amount,
      beforeTax: Amount,
      tax: Amount,
      withTax: Amount,
      payable: Amount,
    }),
  })
  .meta({
    id: 'ChargeDocumentBody',
    description: 'The document itself: amounts are decimal strings and add up exactly',
  });

const AccountingStateView = z
  .object({
    state: z.enum(['waiting', 'acknowledged', 'refused', 'paid']),
    receiverNumber: z.string().nullable(),
    refusedReason: z.string().nullable(),
    paidOn: LocalDate.nullable(),
    paymentReference: z.string().nullable(),
  })
  .meta({ id: 'AccountingState', description: 'What accounting said of it' });

export const ChargeDocument = z
  .object({
    id: Id,
    version: Version,
    state: z.enum(['draft', 'issued']),
    visitId: Id,
    customerId: Id,
    siteId: Id,
    creditsId: Id.nullable(),
    replacesId: Id.nullable(),
    creditedById: Id.nullable(),
    totalCents: Cents,
    createdAt: Instant,
    issuedAt: Instant.nullable(),
    accounting: AccountingStateView.nullable().meta({ description: 'null while it is a draft' }),
    document: ChargeDocumentBody,
  })
  .meta({ id: 'ChargeDocument', description: 'What a finished visit costs; immutable once issued' });
export const ChargeDocumentQuery = PageQuery.extend({
  state: z.enum(['draft', 'issued']).optional(),
  kind: z.enum(['invoice', 'credit']).optional(),
  customerId: Id.optional(),
  siteId: Id.optional(),
  visitId: Id.optional(),
});
const ChargedSince = z.object({
  kind: z.enum(['work', 'part']),
  code: z.string(),
  name: z.string(),
  slot: z.string().nullable(),
  machineCode: z.string().nullable().meta({ description: 'null = it is a part' }),
  quantity: Quantity.nullable().meta({ description: 'How many more, or fewer, of a part; null = it is work' }),
});
export const ChargesSince = z
  .object({
    missing: z.array(ChargedSince).meta({ description: 'On record, and not charged' }),
    surplus: z.array(ChargedSince).meta({ description: 'Charged, and not on record' }),
    left: z
      .object({ by: z.string(), at: Instant, reason: z.string() })
      .nullable()
      .meta({ description: 'Who saw all of this and left the document as it is; null = nobody has' }),
  })
  .meta({
    id: 'ChargesSince',
    description: 'What came to light of a visit, or was taken back, since its document was made',
  });
export const ChargeLeave = z.strictObject({ reason: text(500, 1) }).meta({ id: 'ChargeLeave' });
export const ChargeCredit = z.strictObject({ reason: text(500, 1) }).meta({ id: 'ChargeCredit' });
export const ChargeAmendment = z
  .strictObject({ reason: text(500, 1), facts: ChargeFacts.default({}) })
  .meta({ id: 'ChargeAmendment', description: 'Credits the document and drafts another with the facts put right' });

export const AccountingChangesQuery = z.object({
  after: z.coerce
    .number()
    .int()
    .min(0)
    .max(2_000_000_000)
    .default(0)
    .meta({ description: 'The last sequence you have handled' }),
  limit: z.coerce.number().int().min(1).max(500).default(100),
});
export const AccountingChanges = z
  .object({
    items: z.array(
      z.object({
        sequence: z.int(),
        what: z.enum(['issued', 'credited', 'acknowledged', 'refused', 'paid']),
        at: Instant,
        documentId: Id,
        number: z.string(),
        kind: z.enum(['invoice', 'credit']),
        totalCents: Cents,
        currency: z.string(),
      }),
    ),
    last: z.int().meta({ description: 'Send this as `after` next time, once everything here is handled' }),
    more: z.boolean(),
  })
  .meta({ id: 'AccountingChanges', description: 'In the order of commit, without gaps: what was seen stays seen' });
export const Acknowledgement = z.strictObject({ receiverNumber: text(100, 1) }).meta({ id: 'Acknowledgement' });
export const Payment = z.strictObject({ paidOn: LocalDate, reference: text(100).default('') }).meta({ id: 'Payment' });
export const Refusal = z.strictObject({ reason: text(500, 1) }).meta({ id: 'Refusal' });
export const JournalQuery = z.object({
  from: LocalDate,
  to: LocalDate,
  format: z.enum(['csv', 'jsonl']).default('csv'),
});
export const Reconciliation = z
  .strictObject({
    from: LocalDate,
    to: LocalDate,
    known: z
      .array(z.strictObject({ documentId: Id, totalCents: Cents, receiverNumber: text(100).optional() }))
      .max(20_000),
  })
  .meta({ id: 'Reconciliation', description: 'What the receiver has of the documents issued in these days' });
const Listed = z.object({ documentId: Id, number: z.string(), totalCents: Cents });
export const Reconciled = z
  .object({
    issued: z.int(),
    missing: z.array(Listed).meta({ description: 'Issued here, unknown there: fetch these' }),
    different: z.array(Listed).meta({ description: 'Known there with another total; ours is given' }),
    unknown: z.array(Id).meta({ description: 'Known there, not issued here in these days' }),
  })
  .meta({ id: 'Reconciled' });
export const AuditEntry = z
  .object({
    id: Id,
    at: Instant,
    actorKind: z.enum(['person', 'integration']),
    actorName: z.string(),
    action: z.string(),
    subjectKind: z.string(),
    subjectId: Id,
    machineId: Id.nullable().meta({ description: 'The machine it was about, if any' }),
    detail: z.record(z.string(), z.unknown()),
  })
  .meta({ id: 'AuditEntry', description: 'Who did what' });
export const AuditQuery = PageQuery.extend({ machineId: Id.optional(), subjectId: Id.optional() });
