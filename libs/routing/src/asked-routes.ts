import { NearRoutes } from './near-routes.js';
import type { Random } from './random.js';
import type { SearchParameters } from './search-parameters.js';
import type { WorkingPlan } from './working-plan.js';

/**
 * The routes that a stop is offered to: those being rebuilt; and of the others all that have room and can serve it, or
 * where these are many, some that pass near it and one drawn. Offering it to all of many took up to three times as long
 * and ended no better: what few routes see differs from time to time, which blinks alone do not bring about.
 */
export class AskedRoutes {
  /** Those being rebuilt come first. */
  readonly routes: Int32Array;
  count = 0;
  /** How many of them are being rebuilt. */
  rebuilt = 0;
  private readonly near: NearRoutes;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly parameters: SearchParameters,
    /** Vehicles that can serve a stop at all. */
    private readonly servers: readonly Int32Array[],
    neighbours: Int32Array,
    reach: number,
  ) {
    this.routes = new Int32Array(plan.problem.vehicles.count);
    this.near = new NearRoutes(plan, neighbours, reach);
  }

  /** Lists the routes to ask for a place for the stop. */
  ask(stop: number): void {
    const { plan, routes } = this;
    const { touchedRoutes, touchedRouteCount } = plan;
    const { most, roomy } = plan.room;
    const { vehicles, windowList, menus } = plan.problem;
    const least = menus.least(stop, plan.open[stop]!);
    const row = stop * vehicles.count;
    let count = 0;
    for (let k = 0; k < touchedRouteCount; k++) {
      const v = touchedRoutes[k]!;
      if (least <= most[v]! && windowList[row + v]! >= 0) routes[count++] = v;
    }
    this.rebuilt = count;
    this.count = count;
    const servers = this.servers[stop]!;
    const isByRoom = roomy.count < servers.length;
    const others = isByRoom ? roomy.members : servers;
    const otherCount = isByRoom ? roomy.count : servers.length;
    if (otherCount > this.parameters.manyRoutes) {
      this.askSome(stop, least);
      return;
    }
    for (let k = 0; k < otherCount; k++) {
      const v = others[k]!;
      if (windowList[row + v]! >= 0 && this.isWorthIt(v, least)) routes[this.count++] = v;
    }
  }

  private askSome(stop: number, least: number): void {
    const { plan, routes, random, near, rebuilt } = this;
    const { nearRoutes, drawnRoutes } = this.parameters;
    const { length } = plan;
    const servers = this.servers[stop]!;
    const enough = rebuilt + nearRoutes;
    const end = near.first(stop) + near.count(stop);
    for (let k = near.first(stop); k < end && this.count < enough; k++) {
      const v = near.routes[k]!;
      if (length[v]! > 0 && this.isWorthIt(v, least)) routes[this.count++] = v;
    }
    for (let k = 0; k < drawnRoutes; k++) {
      const v = servers[random.below(servers.length)]!;
      if (this.isWorthIt(v, least) && !this.isListed(v)) routes[this.count++] = v;
    }
  }

  private isWorthIt(v: number, least: number): boolean {
    const { routeTouched, closed, room } = this.plan;
    return routeTouched[v] === 0 && closed[v] === 0 && least <= room.most[v]!;
  }

  private isListed(v: number): boolean {
    for (let k = this.rebuilt; k < this.count; k++) if (this.routes[k] === v) return true;
    return false;
  }
}
