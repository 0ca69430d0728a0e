import {
  type AgreedWork,
  type ChargeSettings,
  dayDriveCost,
  fromMinor,
  overtimeMinutes,
  shareOfDrive,
  toMinor,
  type VisitRecord,
} from '@deckround/billing';
import { DEFAULT_SHOP } from '@deckround/register';
import { dateColumn, dateText, wallClockOf } from '@deckround/register-store';
import { estimateTrip, type TravelSettings } from '@deckround/routing';
import { lastReadings, type Prisma, type Tx } from '@deckround/store';
import { partName } from '../register/part-name.js';
import { type ChargedVisit, type DoneItem, type Facts, workDone } from './charged-visit.js';
import { partsUsed } from './parts-used.js';
import { timedMinutes } from './timed-minutes.js';

/** Who is charged, with the reason why no tax is; null = tax is charged. */
export interface Payer {
  readonly customerId: string;
  readonly exemption: string | null;
}

/** What was done on a finished visit, as far as it is charged: the program's own records and what the facts add. */
export async function buildRecord(
  tx: Tx,
  visit: ChargedVisit,
  settings: ChargeSettings,
  facts: Facts,
  { customerId, exemption }: Payer,
): Promise<VisitRecord> {
  const { site, shop } = visit;
  const done = workDone(visit);
  const finishedAt = visit.finishedAt ?? visit.endAt;
  const clock = (instant: Date) => wallClockOf(instant, site.timeZone);
  const servicedOn = clock(finishedAt).slice(0, 10);
  const hours = await meterHours(tx, done, finishedAt);
  const machineOf = (item: Pick<DoneItem, 'machine'>) => ({
    code: item.machine.code,
    serial: item.machine.serial ?? '',
    hours: hours.get(item.machine.id) ?? '',
  });
  const stated = new Map((facts.work ?? []).map((work) => [work.itemId, work]));
  const timed = await timedMinutes(tx, visit.id, done, stated);
  return {
    currency: shop.currency,
    servicedOn,
    siteCode: site.code,
    siteName: site.name,
    work: done.map((item) => ({
      id: item.id,
      code: item.code,
      title: item.slot === null ? item.title : `${item.title}, ${item.slot}`,
      skill: item.serviceItem?.skill ?? item.stopgap?.skill ?? item.roadCall?.skill ?? null,
      machine: machineOf(item),
      flatMinutes: item.minutes,
      actualMinutes: stated.get(item.id)?.minutes ?? timed.get(item.id) ?? null,
      coverage: stated.get(item.id)?.coverage ?? null,
    })),
    parts: (await partsUsed(tx, visit, done, facts)).map(({ part, quantity, workId, item, coverage }) => ({
      ...{ workId, coverage, quantity: quantity.toString() },
      ...priced(part, shop.currency),
      machine: item && machineOf(item),
    })),
    consumables: done.flatMap((item) =>
      ((item.serviceItem?.consumables ?? []) as unknown as StandardConsumable[]).map((each) => ({
        workId: item.id,
        name: each.name,
        quantity: String(each.quantity * (each.perSpindle ? item.machine.spindles : 1)),
        unit: each.unit,
        machine: machineOf(item),
      })),
    ),
    overtimeMinutes: overtimeMinutes(clock(visit.startAt), clock(finishedAt), settings.labour),
    travel: {
      kilometres: kilometres(visit),
      siteFee: fromMinor(site.visitFeeCents, shop.currency),
      driveShare: await driveShare(tx, visit, settings),
    },
    agreed: await agreedWork(tx, visit.id, customerId, done, servicedOn),
    exemption,
  };
}

interface StandardConsumable {
  name: string;
  quantity: number;
  unit: string;
  perSpindle?: boolean;
}

/** The last reading of each machine by then. */
async function meterHours(tx: Tx, done: readonly DoneItem[], until: Date): Promise<ReadonlyMap<string, string>> {
  const last = await lastReadings(
    tx,
    done.map((item) => item.machineId),
    until,
  );
  return new Map([...last].map(([machineId, { hours }]) => [machineId, String(hours)]));
}

function priced(part: Prisma.PartGetPayload<object>, currency: string) {
  return {
    code: part.code,
    name: partName(part),
    unit: part.unit,
    unitPrice: fromMinor(part.unitPriceCents, currency),
    unitCost: fromMinor(part.unitCostCents, currency),
  };
}

function kilometres({ technician, site, shop }: ChargedVisit): number {
  const base = { latitude: technician.baseLatitude, longitude: technician.baseLongitude };
  const { travel } = shop.settings as { travel?: TravelSettings };
  return estimateTrip(base, site, travel ?? DEFAULT_SHOP.travel).metres / 1000;
}

/** The visit's share of its technician's drive of that day; the route's row is held so that two visits cannot share alike. */
async function driveShare(tx: Tx, visit: ChargedVisit, settings: ChargeSettings): Promise<string> {
  const currency = visit.shop.currency;
  if (settings.travel.rule !== 'shared-drive') return fromMinor(0, currency);
  const day = { technicianId: visit.technicianId, visitDate: visit.visitDate };
  const [route] = await tx.$queryRaw<{ drive_minutes: number }[]>`
    select drive_minutes from day_route where technician_id = ${visit.technicianId}::uuid and route_date = ${visit.visitDate}::date
    for update`;
  const rows = await tx.visit.findMany({
    where: { ...day, state: { not: 'cancelled' } },
    include: { chargeDocuments: { where: { kind: 'invoice' }, orderBy: { createdAt: 'asc' }, take: 1 } },
    orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
  });
  const visits = rows.map((row) => ({
    visitId: row.id,
    driveMinutes: row.driveMinutes,
    given: row.id === visit.id ? null : (row.chargeDocuments[0]?.travelMinor ?? null),
  }));
  const driven = route?.drive_minutes ?? visits.reduce((total, each) => total + each.driveMinutes, 0);
  const cost = toMinor(dayDriveCost(driven, settings.travel), currency);
  return fromMinor(shareOfDrive(cost, visits, visit.id), currency);
}

/** What agreements of the customer include on that day, and how often it was done in the agreement's year so far. */
async function agreedWork(
  tx: Tx,
  visitId: string,
  customerId: string,
  done: readonly DoneItem[],
  servicedOn: string,
): Promise<AgreedWork[]> {
  const day = dateColumn(servicedOn);
  const agreements = await tx.serviceAgreement.findMany({
    where: { customerId, startsOn: { lte: day }, OR: [{ endsOn: null }, { endsOn: { gte: day } }] },
    include: { serviceAgreementItems: { where: { included: true, itemCode: { in: done.map((item) => item.code) } } } },
    orderBy: [{ startsOn: 'asc' }, { id: 'asc' }],
  });
  const agreed: AgreedWork[] = [];
  for (const { name, startsOn, serviceAgreementItems } of agreements) {
    for (const { itemCode, yearlyAllowance } of serviceAgreementItems.toSorted((a, b) =>
      a.itemCode < b.itemCode ? -1 : 1,
    )) {
      const usedThisYear =
        yearlyAllowance === null
          ? 0
          : await tx.completion.count({
              where: {
                itemCode,
                doneOn: { gte: yearStart(dateText(startsOn), servicedOn), lte: day },
                OR: doneFor(customerId, visitId),
              },
            });
      agreed.push({ agreement: name, itemCode, yearlyAllowance, usedThisYear });
    }
  }
  return agreed;
}

/**
 * Work done for a customer, but for that of one visit: who paid for its visit, though the site may be another's by now; of
 * work that nobody was charged for, whose site it is.
 */
function doneFor(customerId: string, notOf: string): Prisma.CompletionWhereInput[] {
  const id = { not: notOf };
  return [
    { visitId: null, machine: { site: { customerId } } },
    { visit: { id, chargeDocuments: { some: { kind: 'invoice', customerId } } } },
    { visit: { id, site: { customerId }, chargeDocuments: { none: { kind: 'invoice' } } } },
  ];
}

/** The last anniversary of an agreement. */
function yearStart(startsOn: string, on: string): Date {
  const year = Number(on.slice(0, 4)) - (on.slice(5) < startsOn.slice(5) ? 1 : 0);
  return dateColumn(`${year}-${startsOn.slice(5) === '02-29' ? '03-01' : startsOn.slice(5)}`);
}
