import type { DueItem, Machine, ServiceItem } from '../../data/types.js';

/** Days before and after its middle date within which an item may be done; hours become days by the machine's pace. */
export function toleranceDays(
  items: readonly ServiceItem[],
  machines: readonly Machine[],
): (due: DueItem) => number | null {
  const itemOf = new Map(items.map((item) => [`${item.machineClass}/${item.code}`, item]));
  const classOf = new Map(machines.map((machine) => [machine.id, machine.machineClass]));
  return (due) => {
    const item = itemOf.get(`${classOf.get(due.machineId)}/${due.code}`);
    if (item === undefined) return null;
    const { decidedBy, hoursPerWeekNow } = (due.why ?? {}) as { decidedBy?: string; hoursPerWeekNow?: number };
    if (decidedBy === 'days') return item.toleranceDays;
    const pace = Number(hoursPerWeekNow ?? 0) / 7;
    return pace > 0 ? Math.min(366, Number(item.toleranceHours) / pace) : null;
  };
}
