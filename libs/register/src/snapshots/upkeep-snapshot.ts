import type { ServiceItem, UpkeepSnapshot } from '@deckround/upkeep';
import { addDays, dayNumber } from '../local-date.js';
import type { Register } from '../register.js';
import { type MachineItem, machineItems, toServiceItem } from './machine-items.js';
import { usageSnapshot } from './usage-snapshot.js';

export interface UpkeepSpan {
  readonly asOf: string;
  /** First day that the planner will ask about. */
  readonly costFrom: string;
  readonly costDays: number;
}

/** A machine put into service within so many days before the forecast has had no service that could be missing. */
const NEW_DAYS = 60;

/** Days past the planner's horizon that usage is projected, so that waiting can be priced. */
const BEYOND = 60;

export function upkeepSnapshot(register: Register, span: UpkeepSpan): UpkeepSnapshot {
  const horizonDays = Math.max(1, dayNumber(span.costFrom) - dayNumber(span.asOf) + span.costDays + BEYOND);
  const wage = averageWageCentsPerHour(register);
  const price = new Map(register.parts.map((part) => [part.id, part.unitCostCents]));
  const completions = register.completions.filter((each) => each.doneOn <= span.asOf);
  const recorded = recordedCodes(completions);
  const items: ServiceItem[] = machineItems(register).map((each) =>
    toServiceItem(each, costOfDoing(each, wage, price), isRecorded(each, recorded, span.asOf)),
  );
  return {
    usage: usageSnapshot(register, span.asOf, Math.min(400, horizonDays)),
    items,
    completions: completions.map(({ part: _part, ...each }) => each),
    findings: register.findings.filter((each) => each.foundOn <= span.asOf),
    stopgaps: register.stopgaps.map((each) => ({
      id: each.id,
      machineId: each.machineId,
      code: each.code,
      title: each.title,
      madeOn: each.madeOn,
      renewedOn: each.renewedOn,
      limitHours: each.limitHours,
      limitOn: each.limitOn,
      failureCents: each.failureCents,
    })),
    costFrom: span.costFrom,
    costDays: span.costDays,
  };
}

function averageWageCentsPerHour(register: Register): number {
  const wages = register.technicians.map((technician) => technician.wageCentsPerHour);
  return wages.length === 0 ? 3500 : wages.reduce((sum, wage) => sum + wage, 0) / wages.length;
}

function costOfDoing(each: MachineItem, wageCentsPerHour: number, price: ReadonlyMap<string, number>): number {
  const parts = each.parts.reduce((sum, part) => sum + (price.get(part.partId) ?? 0) * part.quantity, 0);
  return Math.round((each.minutes * wageCentsPerHour) / 60 + parts);
}

function recordedCodes(completions: Register['completions']): Set<string> {
  return new Set(completions.map((each) => `${each.machineId}|${each.code}|${each.slot ?? ''}`));
}

/**
 * Whether the item's age is known: something that resets it is on record, or the machine is so new that all of its
 * life counts (a first-service rule), or the rule follows the season.
 */
function isRecorded(each: MachineItem, recorded: ReadonlySet<string>, asOf: string): boolean {
  const { machine, item } = each;
  const found = [item.code, ...item.resetBy].some(
    (code) =>
      recorded.has(`${machine.id}|${code}|${each.slot ?? ''}`) ||
      (each.slot !== null && recorded.has(`${machine.id}|${code}|`)),
  );
  const isNew = machine.inServiceOn !== null && machine.inServiceOn > addDays(asOf, -NEW_DAYS);
  return found || isNew || item.rule.seasonEvent !== null;
}
