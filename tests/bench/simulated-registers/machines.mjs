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

/** A machine's place in its site's work. */
export function inventMachine(site, siteSize, days, draws) {
  const machineClass = draws.chance(0.4) ? 'zero-turn' : draws.oneOf(CLASSES);
  const years = Math.ceil(days / 365) + 1;
  return {
    site,
    machineClass,
    roundHours: ROUND_HOURS[machineClass] * siteSize * draws.logNormal(0.45),
    spare: draws.chance(0.06),
    takesPart: draws.between(0.55, 1),
    /** Work is shared out anew from year to year. */
    yearly: Array.from({ length: years }, () => draws.logNormal(0.15)),
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
    if (draws.chance(1 / 450)) brokenUntil = d + Math.round(30 * draws.gamma(1.5));
    if (d <= brokenUntil) continue;
    const workload = machine.roundHours * machine.yearly[Math.floor(d / 365)];
    const share = machine.spare ? 0.05 : machine.takesPart;
    if (cut[d] > 0 && draws.chance(share)) hours[d] = workload * Math.sqrt(cut[d]) * draws.logNormal(0.3);
    else if (d - lastCut < 10 && draws.chance(0.1)) hours[d] = draws.between(0, 0.15) * workload;
    if (draws.chance(machine.winterWork)) hours[d] += 0.5 * workload;
    hours[d] = Math.min(14, hours[d]);
  }
  return hours;
}
