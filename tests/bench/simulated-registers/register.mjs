import { dateOfDay, dayNumber } from '@deckround/usage';
import { hoursOfDays, inventMachine, TEMPERS } from './machines.mjs';
import { inventHabits, mowingDays } from './mowing.mjs';
import { Draws } from './random.mjs';
import { HABITS, readMachine } from './readings.mjs';
import { CLIMATES, inventWeather } from './weather.mjs';

const MOVED = 0.02;
/** Days of truth past the last forecast origin. */
const AHEAD = 92;

/**
 * An invented register: weather → growth → days on which each site mows → hours of each machine → what is read of them. Nothing in
 * it is taken from the usage model, which knows no grass.
 *
 * @returns snapshotAt(asOf, { readUntil }): what the shop knew then; truth(machineId, day): lifetime hours by its end;
 *   trueWhenRead(readingId): lifetime hours at that moment
 */
export function inventRegister({ seed, climate, temper, machines: count, sites: siteCount, habit, from, until }) {
  const draws = new Draws(seed);
  const fromDay = dayNumber(from);
  const days = dayNumber(until) + AHEAD - fromDay + 1;
  const place = CLIMATES[climate];
  // growth is well under way in the first day of the register: a year of weather goes before it
  const before = 365;
  const { warmth, rain } = inventWeather(place, fromDay - before, days + before, siteCount, draws);
  const sites = Array.from({ length: siteCount }, (_, s) => ({
    id: `S${s}`,
    size: draws.logNormal(0.3),
    latitude: place.latitude + draws.between(-0.25, 0.25),
    longitude: -90 + draws.between(-0.3, 0.3),
    cut: mowingDays(inventHabits(place, TEMPERS[temper], draws), warmth, rain[s], fromDay - before, draws).slice(
      before,
    ),
  }));
  const season = seasonOf(sites, days);
  const machines = [];
  const readings = [];
  const meterChanges = [];
  const wrong = new Map();
  const untold = [];
  const lifetime = new Map();
  const whenRead = new Map();
  for (let m = 0; m < count; m++) {
    const id = `M${m}`;
    const s = m < siteCount ? m : draws.whole(0, siteCount - 1);
    const machine = inventMachine(s, sites[s].size, TEMPERS[temper], days, draws);
    const cut = sites[s].cut.slice();
    const place = ({ id: siteId, latitude, longitude }) => ({ siteId, latitude, longitude });
    const row = { id, ...place(sites[s]), machineClass: machine.machineClass };
    row.inServiceOn = dateOfDay(fromDay + (machine.boughtOn > 0 ? machine.boughtOn : -draws.whole(100, 1800)));
    if (draws.chance(MOVED)) {
      const other = sites[draws.whole(0, siteCount - 1)];
      const until = draws.whole(machine.boughtOn, days - 1);
      for (let d = 0; d <= until; d++) cut[d] = other.cut[d];
      row.formerSites = [{ ...place(other), until: dateOfDay(fromDay + until) }];
    }
    if (machine.boughtOn > 0 && draws.chance(0.8)) machine.hoursAtFirst = draws.between(0, 3);
    const hours = hoursOfDays(machine, cut, draws);
    const read = readMachine(id, machine, hours, HABITS[habit], fromDay, season, draws);
    machines.push(row);
    for (const each of read.readings) readings.push(each);
    meterChanges.push(...read.told);
    for (const [reading, error] of read.wrong) wrong.set(reading, error);
    untold.push(...read.untold);
    for (const [reading, hours] of read.whenRead) whenRead.set(reading, hours);
    let sum = machine.hoursAtFirst;
    lifetime.set(
      id,
      hours.map((each) => (sum += each)),
    );
  }
  return {
    snapshotAt: (asOf, { readUntil = asOf } = {}) => ({
      version: 1,
      asOf,
      horizonDays: AHEAD,
      machines: machines
        .filter((each) => each.inServiceOn <= asOf)
        .map(({ formerSites = [], ...each }) => movedBy(asOf, each, formerSites)),
      readings: readings.filter((each) => each.readAt.slice(0, 10) <= readUntil),
      meterChanges: meterChanges.filter((each) => each.changedAt <= asOf),
    }),
    truth: (machineId, day) => lifetime.get(machineId)[day - fromDay],
    trueWhenRead: (readingId) => whenRead.get(readingId),
    wrong,
    untold,
  };
}

function movedBy(asOf, machine, formerSites) {
  if (formerSites.length === 0) return machine;
  const [{ until, ...earlier }] = formerSites;
  return until < asOf ? { ...machine, formerSites } : { ...machine, ...earlier };
}

/** Whether any site mowed within two weeks before the day. */
function seasonOf(sites, days) {
  let last = -100;
  return Array.from({ length: days }, (_, d) => {
    if (sites.filter(({ cut }) => cut[d] > 0).length >= Math.max(1, sites.length / 8)) last = d;
    return d - last <= 14;
  });
}
