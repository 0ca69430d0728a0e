import { createHash, randomUUID } from 'node:crypto';
import { DomainError } from '@deckround/platform';
import type { Register } from '@deckround/register';
import { insertCompletions, insertReadings, Prisma, type Tx } from '@deckround/store';
import { type ImportCount, newCount } from './import-counts.js';
import { dateColumn, dateText } from './local-time.js';
import { revisitReadings, type SetAsideResult } from './set-aside.js';
import { writeCatalogue } from './write-catalogue.js';

export interface ImportResult {
  readonly counts: Readonly<Record<string, ImportCount>>;
  readonly readings: SetAsideResult;
}

/**
 * Writes a checked register into the shop: new rows are added, differing ones changed, equal ones left alone, and none
 * is removed, so that importing the same folder twice changes nothing. All in the caller's transaction.
 */
export async function importRegister(tx: Tx, shopId: string, register: Register): Promise<ImportResult> {
  await writeCatalogue(tx, shopId);
  const { timeZone } = await tx.shop.findUniqueOrThrow({ where: { id: shopId } });
  const customers = await upsert(
    tx.customer,
    shopId,
    register.customers.map((each) => ({
      code: each.id,
      name: each.name,
      billingEmail: each.billingEmail === '' ? null : each.billingEmail,
      termsDays: each.termsDays,
      taxExempt: each.taxExempt,
    })),
  );
  const parts = await upsert(
    tx.part,
    shopId,
    register.parts.map((each) => ({
      code: each.code,
      description: each.description,
      designation: each.designation === '' ? null : each.designation,
      unitPriceCents: each.unitPriceCents,
      unitCostCents: each.unitCostCents,
      leadDays: each.leadDays,
    })),
  );
  const technicians = await upsert(
    tx.technician,
    shopId,
    register.technicians.map((each) => ({
      code: each.id,
      name: each.name,
      baseLatitude: each.latitude,
      baseLongitude: each.longitude,
      ...zoneTold(each),
      wageCentsPerHour: each.wageCentsPerHour,
      overtimeCentsPerHour: each.overtimeCentsPerHour,
      maxOvertimeMinutes: each.maxOvertimeMinutes,
    })),
    { timeZone },
  );
  const sites = await upsert(
    tx.site,
    shopId,
    register.sites.map((each) => ({
      code: each.id,
      customerId: customers.ids.get(each.customerId)!,
      name: each.name,
      latitude: each.latitude,
      longitude: each.longitude,
      ...zoneTold(each),
      setupMinutes: each.setupMinutes,
      maxMachinesDown: each.maxMachinesDown,
      gateNotes: each.notes,
    })),
    { timeZone },
  );
  await requireServedFirst(tx, register.machines);
  const classIds = new Map((await tx.machineClass.findMany()).map((each) => [each.code, each.id]));
  const machines = await upsert(
    tx.machine,
    shopId,
    register.machines.map((each) => ({
      code: each.id,
      siteId: sites.ids.get(each.siteId)!,
      classId: classIds.get(each.machineClass)!,
      maker: each.maker === '' ? null : each.maker,
      model: each.model === '' ? null : each.model,
      serial: each.serial === '' ? null : each.serial,
      inServiceOn: each.inServiceOn === null ? null : dateColumn(each.inServiceOn),
      spindles: each.spindles,
      severity: each.severity,
      notes: each.notes,
      // untold, what the shop has entered stays
      ...(each.retiredOn != null && { retiredOn: dateColumn(each.retiredOn) }),
      ...(each.meterRolloverHours != null && { meterRolloverHours: each.meterRolloverHours }),
    })),
  );
  await writeStock(tx, shopId, register, parts);
  await writeWeeklyHours(tx, shopId, register, technicians, sites);
  // what the readings alone had suggested gives way to what is told now, and is looked for again below
  await tx.meterChange.deleteMany({ where: { origin: 'found' } });
  const meterChanges = await addMissing(
    tx.meterChange,
    register.meterChanges.map((each) => ({
      shopId,
      machineId: machines.ids.get(each.machineId)!,
      changedOn: dateColumn(each.changedAt),
      oldHours: each.oldHours,
      newHours: each.newHours,
    })),
  );
  const moves = await addMissing(
    tx.machineMove,
    register.moves.map((each) => ({
      shopId,
      machineId: machines.ids.get(each.machineId)!,
      fromSiteId: sites.ids.get(each.fromSiteId)!,
      untilDate: dateColumn(each.until),
    })),
  );
  const weather = await addMissing(
    tx.weatherDay,
    register.weather.map(({ siteId, date, ...day }) => ({
      shopId,
      siteId: siteId === null ? null : sites.ids.get(siteId)!,
      weatherDate: dateColumn(date),
      ...day,
    })),
  );
  const readings = await writeReadings(tx, shopId, register, machines.ids);
  const completions = await writeCompletions(tx, shopId, register, machines.ids, parts.ids);
  const verdict = await revisitReadings(tx, 'all');
  const counts = {
    customers: customers.count,
    sites: sites.count,
    machines: machines.count,
    technicians: technicians.count,
    parts: parts.count,
    meterChanges,
    readings,
    completions,
    ...(register.moves.length > 0 && { moves }),
    ...(register.weather.length > 0 && { weather }),
  };
  if (Object.values(counts).some((count) => count.added + count.changed > 0)) {
    const folderHash = createHash('sha256').update(JSON.stringify(register)).digest('hex');
    await tx.registerImport.create({
      data: { shopId, folderHash, counts: JSON.parse(JSON.stringify(counts)) as object },
    });
  }
  return { counts, readings: verdict };
}

/** Untold, what the shop has entered stays, and what is new takes the shop's. */
function zoneTold({ zoneUntold, timeZone }: { zoneUntold?: true; timeZone: string }): { timeZone?: string } {
  return zoneUntold ? {} : { timeZone };
}

interface CodedRow {
  code: string;
  [column: string]: unknown;
}

/** The part of a Prisma model that coded rows need. */
interface CodedTable {
  // biome-ignore lint/suspicious/noExplicitAny: Prisma's delegates share these calls but no type
  findMany(args: any): Promise<any[]>;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  createMany(args: any): Promise<{ count: number }>;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  update(args: any): Promise<unknown>;
}

interface Upserted {
  readonly ids: Map<string, string>;
  readonly count: ImportCount;
}

/** @param untold what new rows take where they say nothing of their own */
/**
 * What the shop has entered of a machine's retirement stays where the register does not tell of it.
 * @throws DomainError invalid-input where a machine so retired would come into service only later
 */
async function requireServedFirst(tx: Tx, machines: Register['machines']): Promise<void> {
  const retired = await tx.machine.findMany({ where: { retiredOn: { not: null } } });
  const daysOf = new Map(retired.map((row) => [row.code, dateText(row.retiredOn!)]));
  const errors = machines.flatMap(({ id, inServiceOn: from, retiredOn }) => {
    const to = retiredOn ?? daysOf.get(id);
    if (from === null || to === undefined || from <= to) return [];
    const detail = `${id}: ${to} lies before ${from}: the machine has been retired; tell retired_on as well`;
    return [
      { pointer: '/files/machines.csv', detail, clause: { key: 'retired-before', values: { machine: id, to, from } } },
    ];
  });
  if (errors.length > 0) throw new DomainError('invalid-input', 'The files have faults. Nothing was imported.', errors);
}

async function upsert(
  table: CodedTable,
  shopId: string,
  rows: readonly CodedRow[],
  untold: object = {},
): Promise<Upserted> {
  const count = newCount(rows.length);
  const present = new Map<string, Record<string, unknown>>((await table.findMany({})).map((row) => [row.code, row]));
  const ids = new Map<string, string>([...present].map(([code, row]) => [code, row.id as string]));
  const added: Record<string, unknown>[] = [];
  for (const row of rows) {
    const before = present.get(row.code);
    if (!before) {
      const id = randomUUID();
      ids.set(row.code, id);
      added.push({ id, shopId, ...untold, ...row });
      count.added += 1;
    } else if (Object.entries(row).some(([column, value]) => !isSame(before[column], value))) {
      await table.update({ where: { id: before.id }, data: { ...row, version: { increment: 1 } } });
      count.changed += 1;
    } else {
      count.unchanged += 1;
    }
  }
  if (added.length > 0) await table.createMany({ data: added });
  return { ids, count };
}

function isSame(before: unknown, value: unknown): boolean {
  if (before instanceof Date && value instanceof Date) return before.getTime() === value.getTime();
  if (before instanceof Prisma.Decimal) return typeof value === 'number' && before.equals(value);
  return before === value;
}

/** Rows that are facts: there or not there, never changed. Their unique keys tell. */
async function addMissing(
  // biome-ignore lint/suspicious/noExplicitAny: as above
  table: { createMany(args: any): Promise<{ count: number }> },
  rows: readonly object[],
): Promise<ImportCount> {
  const count = newCount(rows.length);
  for (let from = 0; from < rows.length; from += 4000) {
    const { count: added } = await table.createMany({ data: rows.slice(from, from + 4000), skipDuplicates: true });
    count.added += added;
  }
  count.unchanged = rows.length - count.added;
  return count;
}

async function writeReadings(
  tx: Tx,
  shopId: string,
  register: Register,
  machineIds: ReadonlyMap<string, string>,
): Promise<ImportCount> {
  const count = newCount(register.readings.length);
  count.added = await insertReadings(
    tx,
    shopId,
    register.readings.map((each) => ({ ...each, machineId: machineIds.get(each.machineId)! })),
  );
  count.unchanged = count.read - count.added;
  return count;
}

/** The shelf's count is taken from the register for parts new to the shop; later counts are the shop's own. */
async function writeStock(tx: Tx, shopId: string, register: Register, parts: Upserted): Promise<void> {
  const counted = new Set(
    (await tx.stock.findMany({ where: { technicianId: null }, select: { partId: true } })).map((row) => row.partId),
  );
  await tx.stock.createMany({
    data: register.parts
      .map((part) => ({ shopId, partId: parts.ids.get(part.code)!, onHand: part.onHand }))
      .filter((row) => !counted.has(row.partId)),
  });
}

/** Shifts, skills, access hours and blackouts: the register's replace those of the technicians and sites that it names. */
async function writeWeeklyHours(
  tx: Tx,
  shopId: string,
  register: Register,
  technicians: Upserted,
  sites: Upserted,
): Promise<void> {
  const technicianIds = register.technicians.map((each) => technicians.ids.get(each.id)!);
  const siteIds = register.sites.map((each) => sites.ids.get(each.id)!);
  await tx.technicianShift.deleteMany({ where: { technicianId: { in: technicianIds } } });
  await tx.technicianShift.createMany({
    data: register.technicians.flatMap((each) =>
      each.shifts.map((shift) => ({ shopId, technicianId: technicians.ids.get(each.id)!, ...shift })),
    ),
  });
  await tx.technicianSkill.deleteMany({ where: { technicianId: { in: technicianIds } } });
  await tx.technicianSkill.createMany({
    data: register.technicians.flatMap((each) =>
      [...new Set(each.skills)].map((skill) => ({ shopId, technicianId: technicians.ids.get(each.id)!, skill })),
    ),
  });
  await tx.siteAccessWindow.deleteMany({ where: { siteId: { in: siteIds } } });
  await tx.siteAccessWindow.createMany({
    data: register.sites.flatMap((each) =>
      each.access.map((window) => ({
        shopId,
        siteId: sites.ids.get(each.id)!,
        weekday: window.weekday,
        openMinute: window.startMinute,
        closeMinute: window.endMinute,
      })),
    ),
  });
  await tx.siteBlackout.createMany({
    skipDuplicates: true,
    data: register.sites.flatMap((each) =>
      each.blackouts.map((range) => ({
        shopId,
        siteId: sites.ids.get(each.id)!,
        fromDate: dateColumn(range.from),
        toDate: dateColumn(range.to),
        reason: range.reason,
      })),
    ),
  });
}

async function writeCompletions(
  tx: Tx,
  shopId: string,
  register: Register,
  machineIds: ReadonlyMap<string, string>,
  partIds: ReadonlyMap<string, string>,
): Promise<ImportCount> {
  const slots = new Map<string, { shopId: string; machineId: string; name: string; kind: string }>();
  for (const machine of register.machines) {
    for (let spindle = 1; spindle <= machine.spindles; spindle += 1) {
      const machineId = machineIds.get(machine.id)!;
      slots.set(`${machineId}|spindle ${spindle}`, { shopId, machineId, name: `spindle ${spindle}`, kind: 'spindle' });
    }
  }
  for (const each of register.completions) {
    if (each.slot === null) continue;
    const machineId = machineIds.get(each.machineId)!;
    const key = `${machineId}|${each.slot}`;
    if (!slots.has(key)) slots.set(key, { shopId, machineId, name: each.slot, kind: 'other' });
  }
  await tx.componentSlot.createMany({ data: [...slots.values()], skipDuplicates: true });
  const slotIds = new Map(
    (await tx.componentSlot.findMany()).map((slot) => [`${slot.machineId}|${slot.name}`, slot.id]),
  );
  const count = newCount(register.completions.length);
  count.added = await insertCompletions(
    tx,
    shopId,
    register.completions.map((each) => {
      const machineId = machineIds.get(each.machineId)!;
      return {
        machineId,
        itemCode: each.code,
        slotId: each.slot === null ? null : slotIds.get(`${machineId}|${each.slot}`)!,
        doneOn: each.doneOn,
        meterHours: each.meterHours,
        outcome: each.outcome,
        partId: each.part === null ? null : partIds.get(each.part)!,
      };
    }),
  );
  count.unchanged = count.read - count.added;
  return count;
}
