import { type ChargeSettings, DEFAULT_CHARGES } from '../charge-settings.js';
import { type DocumentFacts, draftDocument, issueDocument } from '../documents.js';
import { priceVisit } from '../price-visit.js';
import type { VisitRecord, WorkDone } from '../visit-record.js';

export const MACHINE = { code: 'M0042', serial: 'SN-0042', hours: '412.35' };

export function someWork(more: Partial<WorkDone> = {}): WorkDone {
  return {
    id: 'w1',
    code: 'service-250',
    title: 'Labor, 250-hour service',
    skill: null,
    machine: MACHINE,
    flatMinutes: 105,
    actualMinutes: null,
    coverage: null,
    ...more,
  };
}

/** The worked example: 1.75 h at 95.00, 2.5 l of oil at 8.3450, a filter at 12.99, a visit fee of 45.00. */
export function aVisit(more: Partial<VisitRecord> = {}): VisitRecord {
  return {
    currency: 'USD',
    servicedOn: '2026-04-07',
    siteCode: 'S1',
    siteName: 'North yard',
    work: [someWork()],
    parts: [
      {
        workId: 'w1',
        code: 'F-1',
        name: 'Oil filter',
        quantity: '1',
        unit: 'each',
        unitPrice: '12.99',
        unitCost: '6.10',
        machine: MACHINE,
        coverage: null,
      },
    ],
    consumables: [{ workId: 'w1', name: 'Engine oil', quantity: '2.5', unit: 'l', machine: MACHINE }],
    overtimeMinutes: 0,
    travel: { kilometres: 12, siteFee: '0.00', driveShare: '0' },
    agreed: [],
    exemption: null,
    ...more,
  };
}

const EVERYTHING = ['labour', 'travel', 'parts', 'consumables', 'minimum'] as const;

/** Sales taxes of a state and a county, as the worked example splits 8.25 %. */
export function charges(more: Partial<ChargeSettings> = {}): ChargeSettings {
  return {
    ...DEFAULT_CHARGES,
    seller: {
      legalName: 'Seller LLC',
      taxNumber: 'US123456789',
      address: { street: '1 Shop Rd', city: 'Anytown', postalCode: '00001', subdivision: 'TX', country: 'US' },
    },
    consumables: { rule: 'listed', prices: [{ name: 'Engine oil', unitPrice: '8.3450' }] },
    taxes: [
      { jurisdiction: 'State', level: 'state', percent: '6.25', on: EVERYTHING, siteCodes: null },
      { jurisdiction: 'County', level: 'local', percent: '2.00', on: EVERYTHING, siteCodes: null },
    ],
    ...more,
  };
}

/** The same as one tax of 8.25 % in the EN form. */
export function enCharges(more: Partial<ChargeSettings> = {}): ChargeSettings {
  return charges({
    form: 'en16931',
    taxes: [{ jurisdiction: 'VAT', level: 'state', percent: '8.25', on: EVERYTHING, siteCodes: null }],
    ...more,
  });
}

export function facts(settings: ChargeSettings): DocumentFacts {
  return {
    seller: { code: 'SELLER-1', ...settings.seller },
    buyer: {
      code: 'C1',
      legalName: 'Buyer Inc',
      taxNumber: '',
      address: { street: '9 Depot Rd', city: 'Anytown', postalCode: '00001', subdivision: 'TX', country: 'US' },
    },
    purchaseOrder: 'PO-77',
    note: '',
    replaces: null,
  };
}

export function issued(record: VisitRecord, settings: ChargeSettings) {
  const draft = draftDocument(priceVisit(record, settings), record, settings, facts(settings));
  return issueDocument(draft, { number: '1001', issuedOn: '2026-04-07', termsDays: 30 });
}
