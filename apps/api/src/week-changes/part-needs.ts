import type { PartNeed } from '@deckround/planning';
import { addDays, machineItems, type Register } from '@deckround/register';
import { dateColumn, dateText, visitItemKey } from '@deckround/register-store';
import type { Tx } from '@deckround/store';

interface Work {
  readonly code: string;
  readonly slot: string | null;
  readonly title: string;
  readonly machineId: string;
}

/** Parts of the work arranged from today on, and of what falls due within `weeks` without being arranged. */
export async function partNeeds(tx: Tx, register: Register, today: string, weeks: number): Promise<PartNeed[]> {
  const until = addDays(today, weeks * 7);
  const siteOf = new Map(register.machines.map((machine) => [machine.id, machine.siteId]));
  const siteName = new Map(register.sites.map((site) => [site.id, site.name]));
  const partsOf = new Map<string, readonly { partId: string; quantity: number }[]>(
    machineItems(register).map((item) => [item.id, item.parts]),
  );
  for (const stopgap of register.stopgaps) {
    if (stopgap.partId !== null)
      partsOf.set(`stopgap/${stopgap.id}`, [{ partId: stopgap.partId, quantity: stopgap.partQuantity }]);
  }
  const needs: PartNeed[] = [];
  const arranged = new Set<string>();
  const add = (key: string, date: string, certainty: PartNeed['certainty'], work: Work) => {
    const { code, slot, title } = work;
    const use = { code, slot, title, siteName: siteName.get(siteOf.get(work.machineId) ?? '') ?? '' };
    for (const { partId, quantity } of partsOf.get(key) ?? []) needs.push({ partId, quantity, date, certainty, use });
  };
  const visits = await tx.visit.findMany({
    where: { state: { in: ['proposed', 'confirmed'] }, visitDate: { gte: dateColumn(today) } },
    include: { visitItems: true },
  });
  for (const visit of visits) {
    for (const item of visit.visitItems) {
      const key = visitItemKey(item);
      arranged.add(key);
      add(key, dateText(visit.visitDate), 'planned', item);
    }
  }
  const due = await tx.dueForecast.findMany({ where: { p50: { lte: dateColumn(until) } } });
  for (const row of due) {
    const key = visitItemKey({ ...row, roadCallId: null });
    if (arranged.has(key)) continue;
    const date = dateText(row.p50!);
    add(key, date < today ? today : date, 'forecast', row);
  }
  return needs;
}
