import { type PlanningSnapshot } from '@deckround/planning';
import loader from 'highs';
import { deferralPrice, labourPutOff } from '../../libs/planning/src/check/check-cost.js';
import { SnapshotLookup } from '../../libs/planning/src/check/snapshot-lookup.js';
import { travelOf } from '../../libs/planning/src/travel-of.js';
import { type CheapestRoute, cheapestRoutes } from './cheapest-routes.js';

/** A week than which none is cheaper. */
export interface ProvenWeek {
  cents: number;
  routes: CheapestRoute[];
  leftOut: string[];
}

// The package's types describe its CommonJS form; what Node hands out here is the loader itself.
const loadHighs = loader as unknown as typeof loader.default;

/**
 * Chooses among all routes worth driving the cheapest that do every item once or leave it out at its price:
 *
 *     min Σ route cents + Σ price of leaving out
 *     every item once or left out (a must-do once), every technician-day at most one route,
 *     every site at most so many visits a day as machines may be down, or one where all of a visit stand idle
 *
 * @returns the week, proven optimal by branch and bound without a gap
 * @throws when a must-do cannot be done, or the proof fails
 */
export async function provenWeek(snapshot: PlanningSnapshot): Promise<ProvenWeek> {
  if (snapshot.promises.length > 0) throw new Error('Promises are not modelled here.');
  const lookup = new SnapshotLookup(snapshot, travelOf(snapshot));
  const optional = snapshot.items.filter((item) => !item.mustDo);
  const price = new Map(optional.map((item) => [item.id, deferralPrice(lookup, item) + labourPutOff(lookup, item)]));
  // a route without must-dos that costs what leaving its items out costs is in no cheaper week
  const routes = cheapestRoutes(lookup).filter(
    ({ itemIds, cents }) => cents < itemIds.reduce((sum, itemId) => sum + (price.get(itemId) ?? Infinity), 0),
  );

  const rows = new Map<string, { bound: string; columns: string[] }>();
  const row = (name: string, bound: string) => {
    if (!rows.has(name)) rows.set(name, { bound, columns: [] });
    return rows.get(name)!.columns;
  };
  routes.forEach((route, r) => {
    row(`day ${route.technicianId} ${route.date}`, '<= 1').push(`r${r}`);
    for (const itemId of route.itemIds) row(`item ${itemId}`, '= 1').push(`r${r}`);
    for (const siteId of route.siteIds) {
      const { downRule, maxMachinesDown } = lookup.sites.get(siteId)!;
      row(`site ${siteId} ${route.date}`, `<= ${downRule === 'one-by-one' ? maxMachinesDown : 1}`).push(`r${r}`);
    }
  });
  optional.forEach((item, k) => {
    row(`item ${item.id}`, '= 1').push(`u${k}`);
  });
  for (const item of snapshot.items) if (!rows.has(`item ${item.id}`)) throw new Error(`Nobody can do ${item.id}.`);

  const names = [...routes.map((_, r) => `r${r}`), ...optional.map((_, k) => `u${k}`)];
  const cents = [...routes.map((route) => route.cents), ...optional.map((item) => price.get(item.id)!)];
  const program = [
    'Minimize',
    ...cents.map((value, k) => `${value < 0 ? '-' : '+'} ${Math.abs(value)} ${names[k]}`),
    'Subject To',
    ...[...rows.values()].map(({ bound, columns }) => `${columns.map((name) => `+ ${name}`).join('\n')} ${bound}`),
    'Binary',
    ...names,
    'End',
  ].join('\n');
  const highs = await loadHighs();
  const solution = highs.solve(program, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 });
  if (solution.Status !== 'Optimal') throw new Error(`No proof: ${solution.Status}`);

  const chosen = names.filter((name) => solution.Columns[name]!.Primal > 0.5);
  const week = {
    cents: chosen.reduce((sum, name) => sum + cents[names.indexOf(name)]!, 0),
    routes: routes.filter((_, r) => chosen.includes(`r${r}`)),
    leftOut: optional.filter((_, k) => chosen.includes(`u${k}`)).map((item) => item.id),
  };
  if (Math.abs(week.cents - solution.ObjectiveValue) > 0.01) throw new Error('The choice is not what was priced.');
  return week;
}
