import fc from 'fast-check';
import type { ChargeSettings, DocumentForm, Tax } from '../charge-settings.js';
import type { Coverage, VisitRecord } from '../visit-record.js';
import { charges, MACHINE } from './a-visit.js';

const money = (max: number, places = 2) =>
  fc.integer({ min: 0, max: max * 10 ** places }).map((units) => (units / 10 ** places).toFixed(places));
const coverage: fc.Arbitrary<Coverage | null> = fc.option(
  fc.record({ kind: fc.constantFrom('warranty', 'goodwill'), reason: fc.constant('seal leaked again') }),
  { freq: 5 },
);
const minutes = fc.integer({ min: 1, max: 480 });

export const anyVisit: fc.Arbitrary<VisitRecord> = fc.record({
  currency: fc.constant('USD'),
  servicedOn: fc.constant('2026-04-07'),
  siteCode: fc.constantFrom('S1', 'S2'),
  siteName: fc.constantFrom('North yard', 'Depot & <shed> "B"'),
  work: fc.array(
    fc.record({
      id: fc.constantFrom('w1', 'w2', 'w3'),
      code: fc.constantFrom('sharpen-blades', 'grease-spindles'),
      title: fc.constantFrom('Sharpen blades', 'Grease spindles \u0007'),
      skill: fc.constantFrom(null, 'hydraulic'),
      machine: fc.constant(MACHINE),
      flatMinutes: minutes,
      actualMinutes: fc.option(minutes),
      coverage,
    }),
    { minLength: 1, maxLength: 6 },
  ),
  parts: fc.array(
    fc.record({
      workId: fc.constantFrom(null, 'w1', 'w2'),
      code: fc.constantFrom('BRG-1', 'BLD-2'),
      name: fc.constantFrom('Bearing', 'Blade'),
      quantity: fc.integer({ min: 1, max: 12_000 }).map((thousandths) => String(thousandths / 1000)),
      unit: fc.constantFrom('each', 'set', 'l', 'g', 'qt'),
      unitPrice: money(400),
      unitCost: money(300),
      machine: fc.constantFrom(null, MACHINE),
      coverage,
    }),
    { maxLength: 6 },
  ),
  consumables: fc.array(
    fc.record({
      workId: fc.constant('w1'),
      name: fc.constantFrom('Engine oil', 'grease'),
      quantity: fc.constantFrom('0.35', '2.5', '40'),
      unit: fc.constantFrom('l', 'g'),
      machine: fc.constant(MACHINE),
    }),
    { maxLength: 3 },
  ),
  overtimeMinutes: fc.integer({ min: 0, max: 120 }),
  travel: fc.record({
    kilometres: fc.integer({ min: 0, max: 120 }),
    siteFee: fc.constantFrom('0.00', '35.00'),
    driveShare: money(90),
  }),
  agreed: fc.array(
    fc.record({
      agreement: fc.constant('Season care'),
      itemCode: fc.constantFrom('sharpen-blades', 'change-engine-oil'),
      yearlyAllowance: fc.constantFrom(null, 2),
      usedThisYear: fc.integer({ min: 0, max: 3 }),
    }),
    { maxLength: 2 },
  ),
  exemption: fc.option(fc.constant('Exempt: certificate 77-1'), { freq: 6 }),
});

const kinds = fc.subarray(['labour', 'travel', 'parts', 'consumables', 'minimum'] as const);
const percent = fc.integer({ min: 0, max: 25_000 }).map((thousandths) => String(thousandths / 1000));

export function anyCharges(form: DocumentForm): fc.Arbitrary<ChargeSettings> {
  const tax = (jurisdiction: string): fc.Arbitrary<Tax> =>
    fc.record({
      jurisdiction: fc.constant(jurisdiction),
      level: fc.constantFrom('state', 'local'),
      percent,
      on: kinds,
      siteCodes: fc.constantFrom(null, ['S1']),
    });
  const taxes: fc.Arbitrary<Tax[]> =
    form === 'en16931'
      ? fc.array(tax('VAT'), { maxLength: 1 })
      : fc.tuple(tax('State'), tax('County'), tax('City')).chain((all) => fc.subarray(all));
  return fc
    .record({
      taxes,
      labour: fc.record({
        basis: fc.constantFrom('actual' as const, 'flat' as const),
        ratePerHour: money(180),
        ratesBySkill: fc.constantFrom<Record<string, string>[]>({}, { hydraulic: '127.50' }),
        roundToMinutes: fc.constantFrom(1, 5, 6, 10, 15, 30),
        rounding: fc.constantFrom('up' as const, 'nearest' as const, 'down' as const),
        roundEach: fc.constantFrom('line' as const, 'visit' as const),
        overtimePercent: fc.constantFrom('0', '50', '33.3'),
        regularFrom: fc.constant('07:00'),
        regularTo: fc.constant('17:00'),
      }),
      travel: fc.constantFrom(
        { rule: 'none' as const },
        { rule: 'visit-fee' as const, fee: '45.00' },
        { rule: 'shared-drive' as const, ratePerHour: '80.00' },
        {
          rule: 'zone' as const,
          zones: [
            { name: 'town', upToKm: 15, fee: '25.00' },
            { name: 'county', upToKm: 60, fee: '60.00' },
          ],
        },
      ),
      partsBasis: fc.constantFrom('price' as const, 'cost' as const),
      consumables: fc.constantFrom(
        { rule: 'none' as const },
        { rule: 'listed' as const, prices: [{ name: 'Engine oil', unitPrice: '8.3450' }] },
        { rule: 'share-of-labour' as const, percent: '4.5', atMost: '25.00' },
      ),
      minimumCharge: fc.constantFrom('0.00', '120.00'),
    })
    .map(({ partsBasis, ...rest }) => {
      const base = charges();
      return { ...base, ...rest, form, parts: { ...base.parts, basis: partsBasis } };
    });
}
