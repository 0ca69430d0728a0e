/** Median hours of one full round, by class. Own choice, no source. */
const ROUND_HOURS = {
  'zero-turn': 4.4,
  'stand-on': 4,
  'walk-behind': 2.6,
  'front-deck': 5,
  'wide-area': 6.5,
  'tractor-finish-deck': 4.6,
};
const CLASSES = Object.keys(ROUND_HOURS);

/**
 * How regular the work of a fleet is. rounds: share of sites cut on a round, whatever the grass; takesPart: least share of its site's
 * rounds that a machine takes part in; daily, yearly: standard deviation of the log of hours of a round, of a year's workload;
 * breaks: chance that a machine breaks on a day.
 */
export const TEMPERS = {
  steady: { rounds: 0.85, takesPart: 0.85, daily: 0.22, yearly: 0.05, breaks: 1 / 2000 },
  mixed: { rounds: 0.55, takesPart: 0.7, daily: 0.27, yearly: 0.1, breaks: 1 / 900 },
  changeable: { rounds: 0.25, takesPart: 0.55, daily: 0.35, yearly: 0.15, breaks: 1 / 450 },
};

/** A machine's place in its site's work. */
export function inventMachine(site, siteSize, temper, days, draws) {
  const machineClass = draws.chance(0.4) ? 'zero-turn' : draws.oneOf(CLASSES);
  const years = Math.ceil(days / 365) + 1;
  return {
    site,
    machineClass,
    roundHours: ROUND_HOURS[machineClass] * siteSize * draws.logNormal(0.45),
    spare: draws.chance(0.06),
    takesPart: draws.between(temper.takesPart, 1),
    /** Work is shared out anew from year to year. */
    yearly: Array.from({ length: years }, () => draws.logNormal(temper.yearly)),
    daily: temper.daily,
    breaks: temper.breaks,
    winterWork: draws.chance(0.08) ? draws.between(0.02, 0.08) : 0,
    /** First day of use within the register. */
    boughtOn: draws.chance(0.2) ? draws.whole(0, days - 60) : 0,
    hoursAtFirst: draws.between(0, 900),
  };
}

/** Hours of every day: its share of the site's rounds, small jobs between, none while it is broken. */
export function hoursOfDays(machine, cut, draws) {
  const hours = new Float64Array(cut.length);
  let brokenUntil = -1;
  let lastCut = -100;
  for (let d = machine.boughtOn; d < cut.length; d++) {
    if (cut[d] > 0) lastCut = d;
    if (draws.chance(machine.breaks)) brokenUntil = d + Math.round(30 * draws.gamma(1.5));
    if (d <= brokenUntil) continue;
    const workload = machine.roundHours * machine.yearly[Math.floor(d / 365)];
    const share = machine.spare ? 0.05 : machine.takesPart;
    if (cut[d] > 0 && draws.chance(share)) hours[d] = workload * Math.sqrt(cut[d]) * draws.logNormal(machine.daily);
    else if (d - lastCut < 10 && draws.chance(0.1)) hours[d] = draws.between(0, 0.15) * workload;
    if (draws.chance(machine.winterWork)) hours[d] += 0.5 * workload;
    hours[d] = Math.min(14, hours[d]);
  }
  return hours;
}
