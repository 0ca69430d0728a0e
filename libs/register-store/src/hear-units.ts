import { type HeardRow, type KnownUnit, keepUnits, type MachineNames, machinesNamed, type Tx } from '@deckround/store';
import type { HeardUnit } from '@deckround/telematics';
import { shopNow } from './shop-now.js';
import { CLOCK_SKEW_MS, type TakenReading, takeReadings } from './take-readings.js';

export interface Heard {
  /** Machines told of. */
  readonly units: number;
  /** Readings that are new, and those that were known. */
  readonly readings: number;
  readonly repeated: number;
  /** Told of, and not known which of the shop's machines they are. */
  readonly unmatched: number;
  /** Hours that could not be used. */
  readonly faults: number;
}

export const HEARD_NOTHING: Heard = { units: 0, readings: 0, repeated: 0, unmatched: 0, faults: 0 };

export function addHeard(a: Heard, b: Heard): Heard {
  return {
    units: a.units + b.units,
    readings: a.readings + b.readings,
    repeated: a.repeated + b.repeated,
    unmatched: a.unmatched + b.unmatched,
    faults: a.faults + b.faults,
  };
}

/** As many machines are taken in one transaction. */
export const HEARD_AT_ONCE = 200;

/**
 * Takes in what a telematics sender tells: keeps every machine, finds which of the shop's it is, and hands its hours to
 * the cleaning that all readings go through. A machine has one telematics reading for one instant: told again, it changes
 * nothing.
 */
export async function hearUnits(tx: Tx, shopId: string, units: readonly HeardUnit[], now: Date): Promise<Heard> {
  const rows = units.map((unit) => rowOf(unit, now)).filter((row) => row !== null);
  const newest = new Map<string, HeardRow>();
  for (const row of rows) {
    const before = newest.get(row.identity);
    if (!before || (before.hoursAt ?? '') <= (row.hoursAt ?? '')) newest.set(row.identity, row);
  }
  const known = await keepUnits(tx, shopId, [...newest.values()], now);
  const machineOf = await matchUnits(tx, known, newest, await shopNow(tx, now));
  const wanted = new Map<string, TakenReading>();
  for (const { identity, hours, hoursAt } of rows) {
    const machineId = machineOf.get(identity);
    if (!machineId || hours === null || hoursAt === null) continue;
    const reading = { machineId, readAt: new Date(hoursAt), hours, source: 'telematics' } as const;
    if (!wanted.has(keyOf(reading))) wanted.set(keyOf(reading), reading);
  }
  const heard = wanted.size;
  for (const reading of await knownReadings(tx, [...wanted.values()])) wanted.delete(keyOf(reading));
  if (wanted.size > 0) await takeReadings(tx, shopId, [...wanted.values()], now);
  return {
    units: newest.size,
    readings: wanted.size,
    repeated: heard - wanted.size,
    unmatched: [...newest.keys()].filter((identity) => machineOf.get(identity) === undefined).length,
    faults: units.length - rows.length + rows.filter((row) => row.fault !== null).length,
  };
}

const keyOf = ({ machineId, readAt }: { machineId: string; readAt: Date }) => `${machineId} ${readAt.toISOString()}`;

function knownReadings(tx: Tx, readings: readonly TakenReading[]) {
  return tx.reading.findMany({
    where: {
      source: 'telematics',
      machineId: { in: readings.map((each) => each.machineId) },
      readAt: { in: readings.map((each) => each.readAt) },
    },
    select: { machineId: true, readAt: true },
  });
}

/** null for a machine that nothing tells from others. */
function rowOf({ maker, model, serial, pin, equipmentId, hours, fault }: HeardUnit, now: Date): HeardRow | null {
  const parts = serial
    ? ['serial', maker ?? '', serial]
    : pin
      ? ['pin', pin]
      : equipmentId
        ? ['label', equipmentId]
        : null;
  if (parts === null) return null;
  const isFuture = hours !== null && new Date(hours.at).getTime() > now.getTime() + CLOCK_SKEW_MS;
  return {
    identity: parts.join('|').toLowerCase(),
    ...{ maker, model, serial, pin, equipmentId },
    hours: isFuture ? null : (hours?.hours ?? null),
    hoursAt: isFuture ? null : (hours?.at ?? null),
    fault: isFuture ? `The reading lies in the future (${hours.at}).` : fault,
  };
}

/** Which machine each unit is; undefined = none. What a person decided stays. */
async function matchUnits(
  tx: Tx,
  known: readonly KnownUnit[],
  rows: ReadonlyMap<string, HeardRow>,
  now: Date,
): Promise<Map<string, string | undefined>> {
  const open = known.filter((unit) => unit.machineId === null && unit.matchedBy !== 'hand');
  const told = open.map((unit) => rows.get(unit.identity)!);
  const lower = (texts: (string | null)[]) => texts.flatMap((text) => (text === null ? [] : [text.toLowerCase()]));
  const machines =
    open.length === 0
      ? []
      : await machinesNamed(
          tx,
          lower(told.flatMap((row) => [row.serial, row.pin])),
          lower(told.map((row) => row.equipmentId)),
          now,
        );
  const result = new Map(known.map((unit) => [unit.identity, unit.machineId ?? undefined]));
  for (const unit of open) {
    const match = matchOf(rows.get(unit.identity)!, machines);
    if (match === null) continue;
    await tx.telematicsUnit.update({
      where: { id: unit.id },
      data: { machineId: match.machineId, matchedBy: match.by, version: { increment: 1 } },
    });
    result.set(unit.identity, match.machineId);
  }
  return result;
}

/** By maker and serial number, else by a serial number that only one machine has, else by the shop's own code. */
export function matchOf(
  row: Pick<HeardRow, 'maker' | 'serial' | 'pin' | 'equipmentId'>,
  machines: readonly MachineNames[],
): { machineId: string; by: 'serial' | 'label' } | null {
  const same = (a: string | null, b: string | null) =>
    a !== null && b !== null && a.trim().toLowerCase() === b.trim().toLowerCase();
  const bySerial = machines.filter((machine) => same(machine.serial, row.serial) || same(machine.serial, row.pin));
  const byMaker = bySerial.filter((machine) => same(machine.maker, row.maker));
  const [only, ...others] = byMaker.length > 0 ? byMaker : bySerial;
  if (only) return others.length === 0 ? { machineId: only.id, by: 'serial' } : null;
  // A label is no proof against another serial number: the unit may have gone to another machine.
  const byLabel = machines.find(
    (machine) => same(machine.code, row.equipmentId) && (!machine.serial || (row.serial === null && row.pin === null)),
  );
  return byLabel ? { machineId: byLabel.id, by: 'label' } : null;
}
