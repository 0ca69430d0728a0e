import { keptShop } from '../../data/kept-shop.js';
import { queries, shopQuery, sitesQuery, techniciansQuery, weekQuery } from '../../data/queries.js';
import { sessions } from '../../data/session.js';
import { weekShown } from './week-search.js';

/** Asks for what the week screen shows while its script is still being read, not one answer after the other. */
export function readWeekAhead(of: string | undefined): void {
  if (sessions.current().session?.person.role !== 'manager') return;
  const shop = keptShop.read();
  // A guess where the address names no week: the shop's answer may name another, which is then asked for.
  const weekOf = of ?? (shop === null ? undefined : weekShown(shop));
  void queries.prefetchQuery(shopQuery);
  if (weekOf !== undefined) void queries.prefetchQuery(weekQuery(weekOf));
  void queries.prefetchQuery(sitesQuery);
  void queries.prefetchQuery(techniciansQuery);
}
