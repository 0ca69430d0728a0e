/** What a document can charge for; taxes and accounts are set for each. */
export const LINE_KINDS = ['labour', 'travel', 'parts', 'consumables', 'minimum'] as const;
export type LineKind = (typeof LINE_KINDS)[number];

/** us-sales-tax: plain UBL 2.1 with one subtotal per jurisdiction; en16931: one tax per line, scheme VAT. */
export type DocumentForm = 'us-sales-tax' | 'en16931';

export interface Address {
  readonly street: string;
  readonly city: string;
  readonly postalCode: string;
  readonly subdivision: string;
  /** ISO 3166-1 alpha-2. */
  readonly country: string;
}

export interface Tax {
  /** Name of the jurisdiction, e.g. a state or a county; taxes are summed and rounded for each. */
  readonly jurisdiction: string;
  /** state = UN/EDIFACT 5153 STT, local = LOC; the EN form always says VAT. */
  readonly level: 'state' | 'local';
  readonly percent: string;
  readonly on: readonly LineKind[];
  /** Codes of the sites where it applies; null = everywhere. */
  readonly siteCodes: readonly string[] | null;
}

export type TravelRule =
  | { readonly rule: 'none' }
  | { readonly rule: 'visit-fee'; readonly fee: string }
  | { readonly rule: 'zone'; readonly zones: readonly { name: string; upToKm: number; fee: string }[] }
  | { readonly rule: 'shared-drive'; readonly ratePerHour: string };

export type ConsumableRule =
  | { readonly rule: 'none' }
  | { readonly rule: 'listed'; readonly prices: readonly { name: string; unitPrice: string }[] }
  | { readonly rule: 'share-of-labour'; readonly percent: string; readonly atMost: string };

/** How a shop turns a finished visit into money. Amounts and percentages are decimal strings. */
export interface ChargeSettings {
  readonly form: DocumentForm;
  readonly seller: { readonly legalName: string; readonly taxNumber: string; readonly address: Address };
  readonly labour: {
    /** actual = the minutes recorded, or the standard ones where none were; flat = always the standard ones. */
    readonly basis: 'actual' | 'flat';
    readonly ratePerHour: string;
    readonly ratesBySkill: Readonly<Record<string, string>>;
    /** Minutes are rounded to a multiple of this, per line of work or over the visit. */
    readonly roundToMinutes: number;
    readonly rounding: 'up' | 'nearest' | 'down';
    readonly roundEach: 'line' | 'visit';
    /** Supplement on the plain rate for minutes outside regular hours. */
    readonly overtimePercent: string;
    /** Local wall clock, Monday to Friday. */
    readonly regularFrom: string;
    readonly regularTo: string;
  };
  readonly travel: TravelRule;
  readonly parts: {
    /** price = the part's own price; cost = its cost and the mark-up of its step. */
    readonly basis: 'price' | 'cost';
    readonly markUps: readonly { readonly upToCost: string | null; readonly percent: string }[];
  };
  readonly consumables: ConsumableRule;
  /** A visit that charges anything charges at least this, before tax. */
  readonly minimumCharge: string;
  readonly taxes: readonly Tax[];
  readonly accounts: {
    readonly receivable: string;
    readonly revenue: Readonly<Record<LineKind, string>>;
    readonly salesTax: string;
  };
  /** Whether grounds supervisors see the issued documents of their own sites. */
  readonly supervisorsSeeDocuments: boolean;
}

/** Starting values. Rates, fees, mark-ups and account numbers: common practice, no source; every shop sets its own. */
export const DEFAULT_CHARGES: ChargeSettings = {
  form: 'us-sales-tax',
  seller: {
    legalName: '',
    taxNumber: '',
    address: { street: '', city: '', postalCode: '', subdivision: '', country: 'US' },
  },
  labour: {
    basis: 'actual',
    ratePerHour: '95.00',
    ratesBySkill: {},
    roundToMinutes: 15,
    rounding: 'up',
    roundEach: 'visit',
    overtimePercent: '50',
    regularFrom: '07:00',
    regularTo: '17:00',
  },
  travel: { rule: 'visit-fee', fee: '45.00' },
  parts: {
    basis: 'price',
    markUps: [
      { upToCost: '10.00', percent: '100' },
      { upToCost: '100.00', percent: '50' },
      { upToCost: null, percent: '30' },
    ],
  },
  consumables: { rule: 'none' },
  minimumCharge: '0.00',
  taxes: [],
  accounts: {
    receivable: '1200',
    revenue: { labour: '4000', travel: '4010', parts: '4020', consumables: '4030', minimum: '4040' },
    salesTax: '2200',
  },
  supervisorsSeeDocuments: false,
};
