import { addDays, dayNumber, type Machine, type Register, readingKey, weekdayOf } from '@deckround/register';
import type { Random } from './random.js';

type Reading = Register['readings'][number];
type Completion = Register['completions'][number];
type Seasons = Pick<Register, 'readings' | 'meterChanges' | 'completions'>;

const FIRST_DAY = '2024-10-01';
/** Share of a full day's mowing by month in a cool-season climate; invented. */
const MONTHS = [0, 0, 0.2, 0.8, 1.2, 1.15, 0.95, 0.85, 0.8, 0.55, 0.1, 0];
/** Hours of a full mowing day by class; invented. */
const DAY_HOURS: Readonly<Record<string, number>> = {
  'zero-turn': 2.6,
  'stand-on': 2.2,
  'front-deck': 2.4,
  'walk-behind': 1.1,
  'wide-area': 3.6,
  'tractor-finish-deck': 1.8,
};
/** What the shop has on record, and every how many hours it does it; invented. */
const HABITS: readonly (readonly [item: string, hours: number])[] = [
  ['sharpen-blades', 42],
  ['grease-spindles', 52],
  ['inspect-belts', 55],
  ['change-engine-oil', 105],
  ['clean-air-filter', 60],
  ['check-tyres', 65],
];
/** Readings with each kind of fault; invented. */
const FAULTS = 0.006;

/** Two seasons of use, readings with their faults, meter changes and services. */
export function inventSeasons(random: Random, register: Register, today: string): Seasons {
  const days = dayNumber(today) - dayNumber(FIRST_DAY);
  const weather = new Map(register.sites.map((site) => [site.id, inventWeather(random, days)]));
  const readings: Reading[] = [];
  const meterChanges: Register['meterChanges'][number][] = [];
  const completions: Completion[] = [];
  register.machines.forEach((machine, index) => {
    const use = dailyHours(random, machine, weather.get(machine.siteId)!, days);
    const meter = new Meter(random, machine, index, use, meterChanges);
    readMeter(random, machine, index, use, meter, readings);
    serve(random, machine, use, meter, completions);
  });
  return { readings, meterChanges, completions };
}

/** 1 = mowing weather, 0 = a whole site idle. */
function inventWeather(random: Random, days: number): number[] {
  let wet = false;
  return Array.from({ length: days + 1 }, () => {
    wet = random.chance(wet ? 0.5 : 0.17);
    return wet ? 0.15 : 1;
  });
}

function dailyHours(random: Random, machine: Machine, weather: readonly number[], days: number): number[] {
  const level = DAY_HOURS[machine.machineClass]! * Math.exp(random.normal() * 0.35);
  const isSpare = random.chance(0.05);
  return Array.from({ length: days + 1 }, (_, day) => {
    const date = addDays(FIRST_DAY, day);
    if (machine.inServiceOn !== null && date < machine.inServiceOn) return 0;
    if (weekdayOf(date) > 5 && !random.chance(0.1)) return 0;
    if (isSpare && !random.chance(0.12)) return 0;
    const month = Number(date.slice(5, 7)) - 1;
    const share = MONTHS[month]! * weather[day]!;
    return random.chance(Math.min(1, share * 0.7)) ? Math.max(0, level * (1 + random.normal() * 0.3)) : 0;
  });
}

/** What the meter shows at the end of each day; a few were changed, fewer without a word. */
class Meter {
  private readonly shown: number[] = [];

  constructor(
    random: Random,
    machine: Machine,
    index: number,
    use: readonly number[],
    changes: Register['meterChanges'][number][],
  ) {
    const age =
      machine.inServiceOn === null ? 3 : Math.max(0, (dayNumber(FIRST_DAY) - dayNumber(machine.inServiceOn)) / 365);
    let hours = Math.round(age * DAY_HOURS[machine.machineClass]! * 105 * random.between(0.7, 1.3) * 10) / 10;
    const changedOn = index % 33 === 7 ? random.whole(120, use.length - 60) : -1;
    const isTold = index % 132 !== 7;
    use.forEach((worked, day) => {
      if (day === changedOn) {
        const oldHours = Math.round(hours * 10) / 10;
        if (isTold) changes.push({ machineId: machine.id, changedAt: addDays(FIRST_DAY, day), oldHours, newHours: 0 });
        hours = 0;
      }
      hours += worked;
      this.shown.push(Math.round(hours * 10) / 10);
    });
  }

  at(day: number): number {
    return this.shown[day]!;
  }
}

function readMeter(
  random: Random,
  machine: Machine,
  index: number,
  use: readonly number[],
  meter: Meter,
  readings: Reading[],
): void {
  const source = index % 5 < 2 ? 'telematics' : index % 5 < 4 ? 'supervisor' : 'technician';
  const gap = source === 'telematics' ? 7 : source === 'supervisor' ? 21 : 45;
  for (
    let day = random.whole(0, gap);
    day < use.length;
    day += Math.max(1, Math.round(gap * random.between(0.6, 1.5)))
  ) {
    const date = addDays(FIRST_DAY, day);
    if (machine.inServiceOn !== null && date < machine.inServiceOn) continue;
    const hours = random.chance(FAULTS) ? misread(random, meter.at(day), readings.at(-1)) : meter.at(day);
    const readAt = `${date}T${String(random.whole(15, 17)).padStart(2, '0')}:${random.pick(['00', '15', '30', '45'])}:00`;
    readings.push({ id: readingKey(machine.id, readAt, source, hours), machineId: machine.id, readAt, hours, source });
  }
}

/** The ways a figure goes wrong between meter and record. */
function misread(random: Random, hours: number, before: Reading | undefined): number {
  const kind = random.whole(0, 2);
  if (kind === 0) return Math.round(hours * 100) / 10;
  if (kind === 1 && before)
    return Math.max(0, Math.round((Math.min(hours, before.hours) - random.between(5, 40)) * 10) / 10);
  const digits = String(Math.floor(hours)).split('');
  if (digits.length > 1) [digits[0], digits[1]] = [digits[1]!, digits[0]!];
  return Number(digits.join('')) + (Math.round(hours * 10) % 10) / 10;
}

function serve(
  random: Random,
  machine: Machine,
  use: readonly number[],
  meter: Meter,
  completions: Completion[],
): void {
  const record = (day: number, code: string, slot: string | null, outcome: 'done' | 'failed', part: string | null) =>
    completions.push({
      machineId: machine.id,
      code,
      slot,
      doneOn: addDays(FIRST_DAY, day),
      meterHours: meter.at(day),
      outcome,
      part,
    });
  for (const [code, every] of HABITS) {
    let since = random.between(0, every);
    use.forEach((worked, day) => {
      since += worked;
      const isBehind = since > every * random.between(0.85, 1.6);
      if (worked > 0 && isBehind && weekdayOf(addDays(FIRST_DAY, day)) <= 5) {
        record(day, code, null, 'done', null);
        since = 0;
      }
    });
  }
  for (let spindle = 1; spindle <= machine.spindles; spindle += 1) {
    let left = 900 * random.between(0.05, 1.6);
    use.forEach((worked, day) => {
      left -= worked * (machine.severity === 'severe' ? 1.5 : 1);
      if (left > 0) return;
      record(day, 'replace-spindle-bearings', `spindle ${spindle}`, 'failed', 'BRG-6205-2Z');
      left = 900 * random.between(0.5, 1.6);
    });
  }
}
