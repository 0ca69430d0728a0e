import type { RoutedVisit, WorkingPlan } from '../working-plan.js';

export interface PooledRoute {
  vehicle: number;
  cost: number;
  visits: RoutedVisit[];
}

/**
 * Routes met during the search, the cheapest for each vehicle and set of visits. When full, the older half is forgotten:
 * late routes are the better ones.
 */
export class RoutePool {
  private routes = new Map<string, PooledRoute>();

  constructor(
    private readonly plan: WorkingPlan,
    private readonly most: number,
  ) {}

  /** Takes in every route of the plan as it stands. */
  note(): void {
    const { plan } = this;
    for (let v = 0; v < plan.length.length; v++) {
      if (plan.length[v]! > 0 && this.seen[v] !== plan.version[v]!) {
        this.seen[v] = plan.version[v]!;
        this.add(v);
      }
    }
    if (this.routes.size > this.most) this.forgetHalf();
  }

  get columns(): PooledRoute[] {
    return [...this.routes.values()];
  }

  private readonly seen: Record<number, number> = {};

  private add(v: number): void {
    const { plan } = this;
    const visits = plan.route(v);
    const cost = plan.routeCost(v);
    // vehicles of one kind are interchangeable: their routes compete
    const kind = plan.problem.vehicles.kind[v]!;
    const key = `${kind}|${visits
      .map(({ stop, token }) => `${stop}.${token}`)
      .sort()
      .join()}`;
    const before = this.routes.get(key);
    if (before && before.cost <= cost) return;
    // set anew, so that what is used lately is forgotten last
    this.routes.delete(key);
    this.routes.set(key, { vehicle: v, cost, visits });
  }

  private forgetHalf(): void {
    this.routes = new Map([...this.routes].slice(this.routes.size >> 1));
  }
}
