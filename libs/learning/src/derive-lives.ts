import type { Machine, Register } from '@deckround/register';
import { dayNumber } from '@deckround/usage';
import { type ComponentLife, NOTHING_FOUND, type RecordedLife, type SlotFinding } from './component-life.js';
import { groupBy } from './group-by.js';
import { type LifetimeScale, lifetimeScales } from './lifetime-scale.js';

export interface LifeHistory {
  /** Lives entered by hand; they take the place of derived ones in their slot and item. */
  readonly recorded?: readonly RecordedLife[];
  readonly findings?: readonly SlotFinding[];
  /** Causes shared by completions: `machine|item|slot|date` → cause. */
  readonly causes?: ReadonlyMap<string, string>;
  /** Temporary repairs: a part that needed one has failed, whatever the later replacement was recorded as. */
  readonly stopgaps?: readonly FailedByStopgap[];
}

export interface FailedByStopgap {
  readonly machineId: string;
  /** A service item's code, or another word for the work owed. */
  readonly code: string;
  /** Code of the part on order for it. */
  readonly part: string | null;
  readonly madeOn: string;
}

/** Items whose completion puts a new part in: their code says so. */
export function isReplacing(code: string): boolean {
  return code.startsWith('replace-');
}

export function completionKey(machineId: string, code: string, slot: string | null, date: string): string {
  return `${machineId}|${code}|${slot ?? ''}|${date}`;
}

interface Change {
  readonly date: string;
  readonly hours: number;
  readonly failed: boolean;
  readonly part: string | null;
}

/**
 * Component lives out of completions of replacing items: each completion ends one life and begins the next. The first
 * part of a slot was fitted before anybody watched: it is taken to be the machine's own first part, watched from the
 * machine's first reading on (left truncation), its grade unknown. The last one still runs (right censoring). An early
 * replacement by another part is an upgrade.
 *
 * @param asOf last local day that counts
 */
export function deriveLives(register: Register, asOf: string, history: LifeHistory = {}): ComponentLife[] {
  const scales = lifetimeScales(register, asOf);
  const changes = changesOf(register, scales, asOf);
  const findings = new Map(
    (history.findings ?? []).map((each) => [
      completionKey(each.machineId, each.itemCode, each.slot, each.foundOn),
      each,
    ]),
  );
  const items = new Map(
    register.classes.map((each) => [each.code, each.items.filter((item) => isReplacing(item.code))]),
  );
  const recorded = groupBy(history.recorded ?? [], (each) => `${each.machineId}|${each.itemCode}|${each.slot}`);
  const stopgaps = groupBy(history.stopgaps ?? [], (each) => each.machineId);
  const lives: ComponentLife[] = [];
  for (const machine of register.machines) {
    const scale = scales.get(machine.id)!;
    for (const item of items.get(machine.machineClass) ?? []) {
      const slots =
        item.scope === 'machine' ? [null] : Array.from({ length: machine.spindles }, (_, i) => `spindle ${i + 1}`);
      for (const slot of slots) {
        const patched =
          slot === null
            ? (stopgaps.get(machine.id) ?? []).filter(
                (each) => each.code === item.code || item.parts.some((part) => part.code === each.part),
              )
            : [];
        const byHand = recorded.get(`${machine.id}|${item.code}|${slot ?? item.code}`);
        lives.push(
          ...(byHand
            ? byHand.flatMap((each) => recordedLife(machine, slot, each, scale))
            : livesOfSlot(machine, item.code, slot, changes, scale, findings, patched, history, asOf)),
        );
      }
    }
  }
  return countCausesOnce(lives);
}

function changesOf(
  register: Register,
  scales: ReadonlyMap<string, LifetimeScale>,
  asOf: string,
): ReadonlyMap<string, Change[]> {
  const changes = new Map<string, Change[]>();
  for (const each of register.completions) {
    if (!isReplacing(each.code) || each.doneOn > asOf) continue;
    const hours = scales.get(each.machineId)?.at(each.doneOn, each.meterHours) ?? null;
    if (hours === null) continue;
    const key = `${each.machineId}|${each.code}|${each.slot ?? ''}`;
    const change = { date: each.doneOn, hours, failed: each.outcome === 'failed', part: each.part };
    const list = changes.get(key);
    if (list) list.push(change);
    else changes.set(key, [change]);
  }
  for (const list of changes.values())
    list.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.hours - b.hours));
  return changes;
}

function livesOfSlot(
  machine: Machine,
  itemCode: string,
  slot: string | null,
  changes: ReadonlyMap<string, Change[]>,
  scale: LifetimeScale,
  findings: ReadonlyMap<string, SlotFinding>,
  patched: readonly FailedByStopgap[],
  history: LifeHistory,
  asOf: string,
): ComponentLife[] {
  // A record without slot speaks for all slots of the machine.
  const own = changes.get(`${machine.id}|${itemCode}|${slot ?? ''}`) ?? [];
  const whole = slot === null ? [] : (changes.get(`${machine.id}|${itemCode}|`) ?? []);
  const list = [...own, ...whole].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const first = scale.first;
  if (!first) return [];
  const lives: ComponentLife[] = [];
  const base = {
    machineId: machine.id,
    siteId: machine.siteId,
    machineClass: machine.machineClass,
    severity: machine.severity,
    itemCode,
    slot,
    findings: NOTHING_FOUND,
    rootCause: null,
    causeId: null,
    countsAsFailure: true,
  };
  let fitted: { date: string | null; hours: number; part: string | null; known: boolean } = {
    date: null,
    hours: 0,
    part: null,
    known: false,
  };
  /** When the part fitted last was first patched up; it has failed then. */
  const patchedUp = (until: string): { date: string; hours: number } | null => {
    const first = patched
      .map((each) => each.madeOn)
      .filter((date) => date <= until && (fitted.date === null || date > fitted.date))
      .sort()[0];
    const hours = first === undefined ? null : scale.at(first, null);
    return first === undefined || hours === null ? null : { date: first, hours };
  };
  for (const change of list) {
    const patch = patchedUp(change.date);
    const end = patch ?? change;
    const seen = findings.get(completionKey(machine.id, itemCode, slot, change.date));
    const failed = change.failed || patch !== null;
    const isUpgrade = !failed && fitted.part !== null && change.part !== null && change.part !== fitted.part;
    lives.push({
      ...base,
      part: fitted.part,
      fittedOn: fitted.date,
      removedOn: change.date,
      reason: failed ? 'failed' : isUpgrade ? 'upgrade' : 'preventive',
      entryHours: fitted.known ? 0 : Math.min(first.hours, end.hours),
      ageHours: Math.max(0, end.hours - fitted.hours),
      fittingKnown: fitted.known,
      findings: seen?.findings ?? NOTHING_FOUND,
      rootCause: seen?.rootCause ?? null,
      causeId: history.causes?.get(completionKey(machine.id, itemCode, slot, change.date)) ?? null,
    });
    fitted = { date: change.date, hours: change.hours, part: change.part, known: true };
  }
  const patch = patchedUp(asOf);
  if (patch) {
    lives.push({
      ...base,
      part: fitted.part,
      fittedOn: fitted.date,
      removedOn: patch.date,
      reason: 'failed',
      entryHours: fitted.known ? 0 : Math.min(first.hours, patch.hours),
      ageHours: Math.max(0, patch.hours - fitted.hours),
      fittingKnown: fitted.known,
    });
    return lives;
  }
  const retiredOn = machine.retiredOn ?? null;
  const last = scale.last!;
  const end =
    retiredOn !== null && retiredOn <= asOf
      ? (scale.interpolated(dayNumber(retiredOn) + 0.5) ?? last.hours)
      : last.hours;
  lives.push({
    ...base,
    part: fitted.part,
    fittedOn: fitted.date,
    removedOn: retiredOn !== null && retiredOn <= asOf ? retiredOn : null,
    reason: retiredOn !== null && retiredOn <= asOf ? 'machine-retired' : null,
    entryHours: fitted.known ? 0 : first.hours,
    ageHours: Math.max(0, end - fitted.hours),
    fittingKnown: fitted.known,
  });
  return lives;
}

function recordedLife(
  machine: Machine,
  slot: string | null,
  each: RecordedLife,
  scale: LifetimeScale,
): ComponentLife[] {
  const first = scale.first;
  const fittedHours = each.fittedHours ?? (each.fittedOn === null ? 0 : scale.at(each.fittedOn, null));
  const endHours =
    each.removedHours ?? (each.removedOn === null ? (scale.last?.hours ?? null) : scale.at(each.removedOn, null));
  if (fittedHours === null || endHours === null) return [];
  const fittingKnown = each.fittedOn !== null || each.fittedHours !== null;
  return [
    {
      machineId: machine.id,
      siteId: machine.siteId,
      machineClass: machine.machineClass,
      severity: machine.severity,
      itemCode: each.itemCode,
      slot,
      part: each.part,
      fittedOn: each.fittedOn,
      removedOn: each.removedOn,
      reason: each.reason,
      entryHours: fittingKnown ? 0 : (first?.hours ?? 0),
      ageHours: Math.max(0, endHours - fittedHours),
      fittingKnown,
      findings: each.findings,
      rootCause: each.rootCause,
      causeId: each.causeId,
      countsAsFailure: true,
    },
  ];
}

/** Of several failures with one cause only the first is a failure of its part; the others were taken out with it. */
function countCausesOnce(lives: readonly ComponentLife[]): ComponentLife[] {
  const seen = new Set<string>();
  return lives.map((life) => {
    if (life.causeId === null || life.reason !== 'failed') return life;
    const isFirst = !seen.has(life.causeId);
    seen.add(life.causeId);
    return isFirst ? life : { ...life, countsAsFailure: false };
  });
}
