import type { ChargeLine, DocumentCharge, Priced } from './charge-document.js';
import type { ChargeSettings, LineKind } from './charge-settings.js';
import { minutesOf } from './charged-time.js';
import { coverageOf } from './coverage.js';
import { chargedMinutes, hourlyRate, timeQuantity } from './labour.js';
import { amount, Exact, sum } from './money.js';
import { partPrice } from './part-price.js';
import { lineNet, taxMark, withTotals } from './taxes.js';
import { travelCharge } from './travel.js';
import { unitCode } from './unit-codes.js';
import type { Coverage, VisitRecord } from './visit-record.js';

type Draft = Omit<ChargeLine, 'id' | 'net' | 'tax'>;

/** From what was done to what it costs. The same record and settings always give the same money. */
export function priceVisit(record: VisitRecord, settings: ChargeSettings): Priced {
  const { currency } = record;
  const tax = (kind: LineKind) => taxMark(settings, kind, record.siteCode, record.exemption);
  const covered = coverageOf(record);
  const labour = labourLines(record, settings, covered);
  const drafts = [
    ...labour,
    ...overtimeLine(record, settings, labour),
    ...partLines(record, settings, covered),
    ...consumableLines(record, settings, covered, labour),
  ];
  const lines = drafts.map(
    (draft, index): ChargeLine => ({
      id: String(index + 1),
      ...draft,
      net: lineNet(draft.unitPrice, draft.priceBase, draft.quantity, currency),
      tax: tax(draft.kind),
    }),
  );
  const charges: DocumentCharge[] = [];
  const travel = travelCharge(record, settings.travel);
  // A visit that is covered to the last line is not charged for its way either.
  if (travel && (record.work.length === 0 || lines.some((line) => line.coverage === null))) {
    charges.push({ kind: 'travel', ...travel, amount: amount(travel.amount, currency), tax: tax('travel') });
  }
  const missing = missingToMinimum(settings.minimumCharge, lines, charges);
  if (missing !== null) {
    charges.push({
      kind: 'minimum',
      reason: `Up to the minimum charge of ${amount(settings.minimumCharge, currency)}`,
      amount: amount(missing, currency),
      tax: tax('minimum'),
    });
  }
  return withTotals(currency, lines, charges);
}

function missingToMinimum(
  minimum: string,
  lines: readonly ChargeLine[],
  charges: readonly DocumentCharge[],
): InstanceType<typeof Exact> | null {
  const charged = sum([...lines.map((line) => line.net), ...charges.map((charge) => charge.amount)]);
  const missing = new Exact(minimum).minus(charged);
  return charged.greaterThan(0) && missing.greaterThan(0) ? missing : null;
}

function labourLines(record: VisitRecord, settings: ChargeSettings, covered: ReadonlyMap<string, Coverage>): Draft[] {
  const minutes = chargedMinutes(record, settings.labour);
  return record.work.map((work, index) => {
    const coverage = covered.get(work.id) ?? null;
    return {
      kind: 'labour',
      name: work.title,
      itemCode: work.code,
      ...timeQuantity(minutes[index]!),
      unitPrice: coverage ? '0' : hourlyRate(settings.labour, work.skill),
      machine: work.machine,
      coverage,
    };
  });
}

/** Overtime is a supplement on the plain rate, for no more minutes than are charged as labour. */
function overtimeLine(record: VisitRecord, { labour }: ChargeSettings, lines: readonly Draft[]): Draft[] {
  const charged = lines
    .filter((line) => line.coverage === null)
    .reduce((total, line) => total + (minutesOf(line) ?? 0), 0);
  const minutes = Math.min(record.overtimeMinutes, charged);
  if (minutes <= 0 || new Exact(labour.overtimePercent).isZero()) return [];
  return [
    {
      kind: 'labour',
      name: 'Overtime supplement',
      itemCode: 'overtime',
      ...timeQuantity(minutes),
      unitPrice: new Exact(labour.ratePerHour).times(labour.overtimePercent).div(100).toString(),
      machine: null,
      coverage: null,
    },
  ];
}

function partLines(record: VisitRecord, settings: ChargeSettings, covered: ReadonlyMap<string, Coverage>): Draft[] {
  return record.parts.map((part) => {
    const coverage = part.coverage ?? (part.workId === null ? null : (covered.get(part.workId) ?? null));
    return {
      kind: 'parts',
      name: part.name,
      itemCode: part.code,
      quantity: part.quantity,
      unitCode: unitCode(part.unit),
      unitPrice: coverage ? '0' : partPrice(part, settings.parts, record.currency),
      priceBase: '1',
      machine: part.machine,
      coverage,
    };
  });
}

function consumableLines(
  record: VisitRecord,
  { consumables: rule }: ChargeSettings,
  covered: ReadonlyMap<string, Coverage>,
  labour: readonly Draft[],
): Draft[] {
  if (rule.rule === 'none') return [];
  if (rule.rule === 'listed') {
    const prices = new Map(rule.prices.map((price) => [price.name, price.unitPrice]));
    return record.consumables.flatMap((used): Draft[] => {
      const unitPrice = prices.get(used.name);
      if (unitPrice === undefined) return [];
      const coverage = covered.get(used.workId) ?? null;
      return [
        {
          kind: 'consumables',
          name: used.name,
          itemCode: '',
          quantity: used.quantity,
          unitCode: unitCode(used.unit),
          unitPrice: coverage ? '0' : unitPrice,
          priceBase: '1',
          machine: used.machine,
          coverage,
        },
      ];
    });
  }
  const ofLabour = sum(labour.map((line) => lineNet(line.unitPrice, line.priceBase, line.quantity, record.currency)));
  const share = Exact.min(ofLabour.times(rule.percent).div(100), rule.atMost);
  if (!share.greaterThan(0)) return [];
  return [
    {
      kind: 'consumables',
      name: `Shop supplies, ${rule.percent} % of labour`,
      itemCode: '',
      quantity: '1',
      unitCode: 'LS',
      unitPrice: amount(share, record.currency),
      priceBase: '1',
      machine: null,
      coverage: null,
    },
  ];
}
