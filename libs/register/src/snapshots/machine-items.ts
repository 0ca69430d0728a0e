import type { ServiceItem } from '@deckround/upkeep';
import type { Machine, MachineItemOverride, Register, ShopClass, ShopServiceItem } from '../register.js';

/** One service item of one machine (and slot), with all that planning and the visit sheet need to know about it. */
export interface MachineItem {
  readonly id: string;
  readonly machine: Machine;
  readonly item: ShopServiceItem;
  readonly slot: string | null;
  readonly title: string;
  readonly minutes: number;
  readonly parts: readonly { readonly partId: string; readonly quantity: number }[];
  readonly consumables: readonly { readonly name: string; readonly quantity: number; readonly unit: string }[];
  readonly override: MachineItemOverride | null;
}

/** Stable name of a machine's service item: `M0042/sharpen-blades`, `M0042/replace-spindle-bearings/spindle 2`. */
export function machineItemId(machineId: string, code: string, slot: string | null): string {
  return slot === null ? `${machineId}/${code}` : `${machineId}/${code}/${slot}`;
}

/** Id of the work that a road call asks for. */
export function roadCallItemId(roadCallId: string): string {
  return `road-call/${roadCallId}`;
}

/** What a plan calls a call, and the return that a stopgap owes. */
export const roadCallTitle = (symptom: string) => `Road call: ${symptom}`;
export const stopgapTitle = (description: string) => `Make good: ${description}`;

/** Id of the work that an open stopgap owes. */
export function stopgapItemId(stopgapId: string): string {
  return `stopgap/${stopgapId}`;
}

/** Whether work comes again once it is done; a call is answered and a stopgap made good for good. */
export function fallsDueAgain(itemId: string): boolean {
  return !/^(road-call|stopgap)\//.test(itemId);
}

/** Every service item of every machine, class defaults and machine overrides resolved. */
export function machineItems(register: Register): MachineItem[] {
  const classes = new Map(register.classes.map((each) => [each.code, each]));
  const partIds = new Map(register.parts.map((part) => [part.code, part.id]));
  const overrides = new Map(register.overrides.map((each) => [`${each.machineId}|${each.itemId}`, each]));
  return register.machines.flatMap((machine) => {
    const shopClass = classes.get(machine.machineClass);
    if (!shopClass) return [];
    return shopClass.items.flatMap((item) => {
      const override = overrides.get(`${machine.id}|${item.id}`) ?? null;
      if (override?.disabled) return [];
      return slotsOf(machine, item).map((slot) => resolve(machine, item, slot, override, partIds));
    });
  });
}

function slotsOf(machine: Machine, item: ShopServiceItem): (string | null)[] {
  if (item.scope === 'machine') return [null];
  return Array.from({ length: machine.spindles }, (_, index) => `spindle ${index + 1}`);
}

function resolve(
  machine: Machine,
  item: ShopServiceItem,
  slot: string | null,
  override: MachineItemOverride | null,
  partIds: ReadonlyMap<string, string>,
): MachineItem {
  const times = (perSpindle: boolean) => (perSpindle ? Math.max(1, machine.spindles) : 1);
  return {
    id: machineItemId(machine.id, item.code, slot),
    machine,
    item,
    slot,
    title: slot === null ? item.title : `${item.title}, ${slot}`,
    minutes: override?.minutes ?? item.minutes + item.minutesPerSpindle * machine.spindles,
    parts: item.parts.flatMap((part) => {
      const partId = partIds.get(part.code);
      return partId ? [{ partId, quantity: part.quantity * times(part.perSpindle) }] : [];
    }),
    consumables: item.consumables.map((each) => ({
      name: each.name,
      quantity: Math.round(each.quantity * times(each.perSpindle) * 1000) / 1000,
      unit: each.unit,
    })),
    override,
  };
}

/** The item as the due forecast wants it. `recorded`: whether anything that resets it is on record for its machine. */
export function toServiceItem(each: MachineItem, doCents: number, recorded: boolean): ServiceItem {
  const { item, machine, override } = each;
  return {
    id: each.id,
    machineId: machine.id,
    code: item.code,
    slot: each.slot,
    title: each.title,
    rule: {
      ...item.rule,
      hours: override?.intervalHours ?? item.rule.hours,
      days: override?.intervalDays ?? item.rule.days,
      // A machine that came to us in mid-life has had its first service, recorded or not.
      firstHours: recorded ? item.rule.firstHours : null,
    },
    severity: machine.severity,
    resetBy: [...item.resetBy],
    // Spread over the interval, or all machines of a newly taken-on customer would fall due on one day. By the shop's
    // own name of the machine: the same register falls due alike wherever it is imported.
    assumedShare: recorded ? null : shareOf(machineItemId(machine.code, item.code, each.slot)),
    economics: {
      doCents,
      failureCents: item.failureCents,
      // The timing cost knows shapes from 1 (no ageing) to 6.
      hazardShape: item.learned ? Math.min(6, Math.max(1, item.learned.shape)) : item.hazardShape,
      latePenaltyCentsPerDay: item.latePenaltyCentsPerDay,
    },
    hazardBasis: item.learned?.words ?? null,
  };
}

/** A number in [0, 0.9) that depends on the name alone (FNV-1a, 32 bit). */
function shareOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i += 1) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return ((hash >>> 0) / 2 ** 32) * 0.9;
}

export function classOf(register: Register, machine: Machine): ShopClass | undefined {
  return register.classes.find((each) => each.code === machine.machineClass);
}
