import type { ChargeSettings } from './charge-settings.js';
import { Exact } from './money.js';
import { shareOut } from './share-out.js';
import type { VisitRecord } from './visit-record.js';

type LabourRule = ChargeSettings['labour'];

/** Minutes to charge for each piece of work, in their order. */
export function chargedMinutes(record: VisitRecord, rule: LabourRule): number[] {
  const minutes = record.work.map((work) =>
    rule.basis === 'flat' ? work.flatMinutes : (work.actualMinutes ?? work.flatMinutes),
  );
  if (rule.roundEach === 'line') return minutes.map((each) => roundMinutes(each, rule));
  const worked = minutes.reduce((one, other) => one + other, 0);
  return worked === 0 ? minutes : shareOut(roundMinutes(worked, rule), minutes);
}

function roundMinutes(minutes: number, { roundToMinutes: step, rounding }: LabourRule): number {
  const steps = minutes / step;
  const whole = rounding === 'up' ? Math.ceil(steps) : rounding === 'down' ? Math.floor(steps) : Math.round(steps);
  return whole * step;
}

export function hourlyRate(rule: LabourRule, skill: string | null): string {
  return (skill === null ? undefined : rule.ratesBySkill[skill]) ?? rule.ratePerHour;
}

/** Minutes as hours where two decimals hold them exactly (105 min = 1.75 h); else minutes, priced by 60 of them. */
export function timeQuantity(minutes: number): { quantity: string; unitCode: string; priceBase: string } {
  return minutes % 3 === 0
    ? { quantity: new Exact(minutes).div(60).toString(), unitCode: 'HUR', priceBase: '1' }
    : { quantity: String(minutes), unitCode: 'MIN', priceBase: '60' };
}

/**
 * Minutes between two wall clocks of the site (YYYY-MM-DDTHH:MM) that lie outside regular hours, Saturdays and Sundays
 * whole.
 */
export function overtimeMinutes(from: string, to: string, rule: LabourRule): number {
  const minuteOf = (clock: string) => Date.parse(`${clock.slice(0, 16)}:00Z`) / 60_000;
  const [start, end] = [minuteOf(from), minuteOf(to)];
  const [open, close] = [clockMinute(rule.regularFrom), clockMinute(rule.regularTo)];
  let overtime = 0;
  for (let day = Math.floor(start / 1440); day * 1440 < end; day += 1) {
    const present = overlap(start, end, day * 1440, day * 1440 + 1440);
    // Day 0 of the epoch was a Thursday.
    const weekday = (day + 3) % 7;
    const regular = weekday >= 5 ? 0 : overlap(start, end, day * 1440 + open, day * 1440 + close);
    overtime += present - regular;
  }
  return overtime;
}

function clockMinute(clock: string): number {
  return Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3, 5));
}

function overlap(start: number, end: number, from: number, to: number): number {
  return Math.max(0, Math.min(end, to) - Math.max(start, from));
}
