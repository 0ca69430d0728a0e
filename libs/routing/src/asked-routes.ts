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
  /** Per vehicle: the latest look around a stop that has met it. */
  private readonly metAt: Int32Array;
  private looks = 0;
  /** Per stop: how many vehicles can serve it. */
  private readonly serverCount: Int32Array;

  constructor(
    private readonly plan: WorkingPlan,
    private readonly random: Random,
    private readonly parameters: SearchParameters,
    /** Vehicles that can serve a stop at all. */
    private readonly servers: readonly Int32Array[],
    /** Nearest stops of each, `reach` a row. */
    private readonly neighbours: Uint16Array,
    private readonly reach: number,
  ) {
    this.routes = new Int32Array(plan.problem.vehicles.count);
    this.metAt = new Int32Array(plan.problem.vehicles.count);
    this.serverCount = Int32Array.from(servers, (ofStop) => ofStop.length);
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
    const otherCount = Math.min(roomy.count, this.serverCount[stop]!);
    const others = otherCount === roomy.count ? roomy.members : this.servers[stop]!;
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
    const { plan, routes, random, neighbours, reach, metAt } = this;
    const { nearRoutes, drawnRoutes } = this.parameters;
    const { routeOf, firstSlot, routeTouched } = plan;
    const { vehicles, windowList } = plan.problem;
    const row = stop * vehicles.count;
    const servers = this.servers[stop]!;
    const look = ++this.looks;
    const enough = this.rebuilt + nearRoutes;
    const end = stop * reach + Math.min(reach, LOOKED_AT);
    let unmet = plan.untouchedCount;
    for (let k = stop * reach; k < end && unmet > 0 && this.count < enough; k++) {
      const near = neighbours[k]!;
      for (let x = firstSlot[near]!; x < firstSlot[near + 1]!; x++) {
        const v = routeOf[x]!;
        if (v < 0 || metAt[v] === look || routeTouched[v] === 1) continue;
        metAt[v] = look;
        unmet--;
        if (windowList[row + v]! >= 0 && this.isWorthIt(v, least)) routes[this.count++] = v;
      }
    }
    for (let k = 0; k < drawnRoutes; k++) {
      const v = servers[random.below(servers.length)]!;
      if (metAt[v] === look) continue;
      metAt[v] = look;
      if (this.isWorthIt(v, least)) routes[this.count++] = v;
    }
  }

  private isWorthIt(v: number, least: number): boolean {
    const { routeTouched, closed, room } = this.plan;
    return routeTouched[v] === 0 && closed[v] === 0 && least <= room.most[v]!;
  }
}

/** Nearest stops gone through: with all of them an iteration took a sixth longer, and plans were no better. Measured. */
const LOOKED_AT = 40;
