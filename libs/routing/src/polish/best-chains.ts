/** Chains of each length that are kept. Own choice. */
const WIDTH = 40;

/** The cheapest chains of visits of each length, each a shorter chain and one visit more. */
export class BestChains {
  /** Per chain: its last visit (slot), the route that stands in, cost, and the chain it goes on from (−1 = none). */
  readonly last: Int32Array;
  readonly cost: Float64Array;
  private readonly route: Int32Array;
  private readonly before: Int32Array;
  /** Per length: how many there are. */
  private readonly count: Int32Array;

  constructor(longest: number) {
    this.last = new Int32Array(longest * WIDTH);
    this.cost = new Float64Array(longest * WIDTH);
    this.route = new Int32Array(longest * WIDTH);
    this.before = new Int32Array(longest * WIDTH);
    this.count = new Int32Array(longest);
  }

  /** Chains of a length are first(length) … end(length) − 1, by rising cost. */
  first(length: number): number {
    return (length - 1) * WIDTH;
  }

  end(length: number): number {
    return (length - 1) * WIDTH + this.count[length - 1]!;
  }

  /** Forgets all chains for that of one visit. */
  begin(slot: number, route: number, cost: number): void {
    this.count.fill(0);
    this.put(0, -1, slot, route, cost);
  }

  /** Makes the chain longer by a visit, if it is among the cheapest then; `cost` is that of all. */
  add(chain: number, slot: number, route: number, cost: number): void {
    this.put(Math.floor(chain / WIDTH) + 1, chain, slot, route, cost);
  }

  private put(row: number, before: number, slot: number, route: number, cost: number): void {
    const first = row * WIDTH;
    let n = this.count[row]!;
    if (n === WIDTH) {
      if (cost >= this.cost[first + n - 1]!) return;
      n--;
    }
    let k = first + n;
    for (; k > first && this.cost[k - 1]! > cost; k--) {
      this.last[k] = this.last[k - 1]!;
      this.route[k] = this.route[k - 1]!;
      this.cost[k] = this.cost[k - 1]!;
      this.before[k] = this.before[k - 1]!;
    }
    this.last[k] = slot;
    this.route[k] = route;
    this.cost[k] = cost;
    this.before[k] = before;
    this.count[row] = n + 1;
  }

  /** Whether a visit of the chain stands in the route. */
  meets(chain: number, route: number): boolean {
    for (let k = chain; k >= 0; k = this.before[k]!) if (this.route[k] === route) return true;
    return false;
  }

  /** Its visits from first to last, as slots. */
  visits(chain: number): number[] {
    const slots: number[] = [];
    for (let k = chain; k >= 0; k = this.before[k]!) slots.push(this.last[k]!);
    return slots.reverse();
  }
}
