import { dateOfDay } from '@deckround/usage';

/** Wrong readings among all, and machines whose meter is changed within a year: told, and untold. */
const WRONG = 0.0055;
const TOLD = 0.025;
const UNTOLD = 0.016;
const REPEATED = 0.0015;

/** How the machines of a fleet are read: shares by telematics every day, weekly by the site's supervisor; else on visits. */
export const HABITS = {
  mixed: { daily: 0.1, weekly: 0.2, visitDays: 48, winter: true },
  visits: { daily: 0, weekly: 0, visitDays: 30, winter: true },
  weekly: { daily: 0, weekly: 1, visitDays: 30, winter: true },
  erratic: { daily: 0.03, weekly: 0.1, visitDays: 60, winter: false },
  daily: { daily: 0.6, weekly: 0.4, visitDays: 30, winter: true },
};

/**
 * What is read of one machine, with its meter changes and its faults.
 *
 * @param hours per day of the register
 * @param season whether any machine ran within a month of the day; outside of it few fleets are read
 * @returns readings, told changes, and what is wrong: by reading id, and untold changes by date
 */
export function readMachine(id, machine, hours, habit, fromDay, season, draws) {
  const kind = draws.uniform();
  const source = kind < habit.daily ? 'telematics' : kind < habit.daily + habit.weekly ? 'supervisor' : 'technician';
  const pause = {
    telematics: () => (draws.chance(0.03) ? draws.whole(2, 9) : 1),
    supervisor: () => draws.whole(5, 10),
    technician: () => Math.max(3, Math.round(habit.visitDays * draws.gamma(3))),
  }[source];
  const readings = [];
  const told = [];
  const wrong = new Map();
  const untold = [];
  const years = (hours.length - machine.boughtOn) / 365;
  const changeOn = draws.chance((TOLD + UNTOLD) * years) ? draws.whole(machine.boughtOn + 10, hours.length - 1) : -1;
  const isTold = draws.chance(TOLD / (TOLD + UNTOLD));
  const whenRead = new Map();
  let shown = machine.hoursAtFirst;
  /** Hours counted by earlier meters. */
  let counted = 0;
  let next = machine.boughtOn + (source === 'telematics' ? 0 : draws.whole(0, 30));
  const clockOfDay = source === 'telematics' ? 20 : draws.between(6.5, 15.5);
  for (let d = machine.boughtOn; d < hours.length; d++) {
    if (d === changeOn) {
      const change = { machineId: id, changedAt: dateOfDay(fromDay + d), oldHours: tenths(shown), newHours: 0 };
      if (isTold) told.push(change);
      else untold.push(change);
      counted += shown;
      shown = 0;
    }
    if (d >= next) {
      next = d + pause();
      const at = Math.min(20, Math.max(6, clockOfDay + (source === 'telematics' ? 0 : 1.5 * draws.normal())));
      if (season[d] || habit.winter || source === 'telematics') {
        const today = hours[d] * Math.min(1, Math.max(0, (at - 6) / 12));
        const right = tenths(shown + today);
        const reading = { id: `${id}-${d}`, machineId: id, readAt: moment(fromDay + d, at), hours: right, source };
        if (draws.chance(WRONG)) {
          const { kind: error, hours: written } = miswritten(right, draws);
          reading.hours = written;
          if (written !== right) wrong.set(reading.id, error);
        }
        readings.push(reading);
        whenRead.set(reading.id, counted + shown + today);
        if (draws.chance(REPEATED)) {
          const again = { ...reading, id: `${reading.id}-again` };
          readings.push(again);
          whenRead.set(again.id, whenRead.get(reading.id));
          if (wrong.has(reading.id)) wrong.set(again.id, wrong.get(reading.id));
        }
      }
    }
    shown += hours[d];
  }
  return { readings, told, wrong, untold, whenRead };
}

function miswritten(right, draws) {
  const kind = draws.oneOf(['slipped decimal', 'digit swap', 'backwards']);
  if (kind === 'slipped decimal') {
    return { kind, hours: draws.chance(0.8) ? Math.round(right * 10) : tenths(right / 10) };
  }
  if (kind === 'backwards') return { kind, hours: Math.max(0, tenths(right - draws.between(5, 120))) };
  const digits = right.toFixed(1).replace('.', '').padStart(4, '0').split('');
  const at = draws.whole(0, digits.length - 3);
  [digits[at], digits[at + 1]] = [digits[at + 1], digits[at]];
  return { kind, hours: Number(digits.join('')) / 10 };
}

function tenths(hours) {
  return Math.round(hours * 10) / 10;
}

function moment(day, clock) {
  const minutes = Math.round(clock * 4) * 15;
  const two = (n) => String(n).padStart(2, '0');
  return `${dateOfDay(day)}T${two(Math.floor(minutes / 60))}:${two(minutes % 60)}:00`;
}
