import type { Register } from '@deckround/register';
import {
  type CumulativeStep,
  type EventHistory,
  fitPooledPowerLaw,
  laplace,
  type MachineHistory,
  meanCumulative,
  milHdbk,
  type PowerLaw,
  type RepairOrReplaceAdvice,
  repairOrReplace,
} from '@deckround/reliability';
import { groupBy } from './group-by.js';
import { lifetimeScales } from './lifetime-scale.js';
import { replacementCosts } from './replacement-costs.js';

/** One machine's unplanned repairs since it was taken on. */
export interface MachineRecord {
  readonly machineId: string;
  readonly machineClass: string;
  readonly siteId: string;
  readonly retiredOn: string | null;
  /** Lifetime hours at which watching began, and now. */
  readonly fromHours: number;
  readonly toHours: number;
  readonly repairs: readonly {
    readonly on: string;
    readonly hours: number;
    readonly code: string;
    readonly cents: number;
  }[];
  readonly repairCents: number;
  readonly centsPerHour: number | null;
  readonly trend: {
    readonly laplace: number | null;
    readonly laplaceP: number | null;
    readonly milHdbkP: number | null;
    readonly words: string;
  };
}

/** A trend is told from so many repairs on. Own choice. */
const LEAST_REPAIRS = 4;

/**
 * Completions with outcome `failed` are unplanned repairs; each costs what its item costs after a failure. Several on one
 * day at one item (two spindles, one wire) are as many parts but one event.
 */
export function machineRecords(register: Register, asOf: string): MachineRecord[] {
  const scales = lifetimeScales(register, asOf);
  const failed = groupBy(
    register.completions.filter((each) => each.outcome === 'failed' && each.doneOn <= asOf),
    (each) => each.machineId,
  );
  const costs = new Map(
    register.classes.map((each) => [
      each.code,
      new Map(each.items.map((item) => [item.code, replacementCosts(register, each.code, item).failed])),
    ]),
  );
  return register.machines.flatMap((machine) => {
    const scale = scales.get(machine.id)!;
    const { first, last } = scale;
    if (!first || !last) return [];
    const prices = costs.get(machine.machineClass);
    const repairs = (failed.get(machine.id) ?? [])
      .map((each) => ({
        on: each.doneOn,
        hours: scale.at(each.doneOn, each.meterHours) ?? first.hours,
        code: each.code,
        cents: prices?.get(each.code) ?? 0,
      }))
      // What was repaired before the machine was watched belongs to nobody's record.
      .filter((each) => each.hours > first.hours)
      .sort((a, b) => a.hours - b.hours);
    return [record(machine, first.hours, last.hours, repairs)];
  });
}

function record(
  machine: Register['machines'][number],
  fromHours: number,
  toHours: number,
  repairs: MachineRecord['repairs'],
): MachineRecord {
  const repairCents = repairs.reduce((sum, each) => sum + each.cents, 0);
  const watched = toHours - fromHours;
  return {
    machineId: machine.id,
    machineClass: machine.machineClass,
    siteId: machine.siteId,
    retiredOn: machine.retiredOn ?? null,
    fromHours,
    toHours,
    repairs,
    repairCents,
    centsPerHour: watched >= 1 ? repairCents / watched : null,
    trend: trendOf(fromHours, toHours, repairs),
  };
}

function trendOf(fromHours: number, toHours: number, repairs: MachineRecord['repairs']): MachineRecord['trend'] {
  const times = repairs.map((each) => Math.min(each.hours, toHours) - fromHours).filter((each) => each > 0);
  const history: EventHistory = { times, end: toHours - fromHours, terminated: 'time' };
  if (times.length < LEAST_REPAIRS)
    return {
      laplace: null,
      laplaceP: null,
      milHdbkP: null,
      words: `${times.length} ${times.length === 1 ? 'repair is' : 'repairs are'} too few to see a trend.`,
    };
  const first = laplace(history);
  const second = milHdbk(history);
  const words =
    first === null || first.direction === 'none'
      ? 'No trend to be seen in its repairs.'
      : first.direction === 'wearing-out'
        ? 'Repairs come closer and closer together.'
        : 'Repairs come farther and farther apart.';
  return { laplace: first?.statistic ?? null, laplaceP: first?.p ?? null, milHdbkP: second?.p ?? null, words };
}

/** Mean cumulative repairs (or cents) per machine by hours of watching. */
export function fleetCumulative(records: readonly MachineRecord[], what: 'repairs' | 'cents'): CumulativeStep[] {
  return meanCumulative(
    records
      .filter((each) => each.toHours > each.fromHours)
      .map(
        (each): MachineHistory => ({
          id: each.machineId,
          from: each.fromHours,
          to: each.toHours,
          events: each.repairs
            .filter((repair) => repair.hours <= each.toHours)
            .map((repair) => ({ age: repair.hours, amount: what === 'repairs' ? 1 : repair.cents })),
        }),
      ),
  );
}

/** Power law of the fleet's repairs over hours of watching; null without repairs. */
export function fleetPowerLaw(records: readonly MachineRecord[]): PowerLaw | null {
  return fitPooledPowerLaw(
    records
      .filter((each) => each.toHours > each.fromHours)
      .map((each) => ({
        end: each.toHours - each.fromHours,
        times: each.repairs
          .map((repair) => Math.min(repair.hours, each.toHours) - each.fromHours)
          .filter((time) => time > 0),
      })),
  );
}

export interface ReplacementTerms {
  readonly newPriceCents: number;
  readonly resaleNowCents: number;
  readonly resaleInAYearCents: number;
  readonly newLifeHours: number;
  readonly hoursNextYear: number;
}

/** Repair-or-replace advice for one machine against the fleet's mean repair cost per hour. */
export function adviseMachine(
  machine: MachineRecord,
  fleet: readonly MachineRecord[],
  terms: ReplacementTerms,
): RepairOrReplaceAdvice | null {
  const like = fleet.filter((each) => each.machineClass === machine.machineClass);
  const hours = like.reduce((sum, each) => sum + each.toHours - each.fromHours, 0);
  const cents = like.reduce((sum, each) => sum + each.repairCents, 0);
  const repairs = like.reduce((sum, each) => sum + each.repairs.length, 0);
  const law = fleetPowerLaw(like);
  return repairOrReplace({
    hours: machine.toHours,
    hoursNextYear: terms.hoursNextYear,
    repairs: machine.repairs.length,
    repairCost: machine.repairCents,
    watchedHours: machine.toHours - machine.fromHours,
    usualRepairCost: repairs > 0 ? cents / repairs : 0,
    wearExponent: Math.min(3, Math.max(1, law?.beta ?? 1)),
    newPrice: terms.newPriceCents,
    resaleNow: terms.resaleNowCents,
    resaleInAYear: terms.resaleInAYearCents,
    newLifeHours: terms.newLifeHours,
    newRepairCostPerHour: hours > 0 ? cents / hours : 0,
    newResaleShare: 0,
  });
}
