/**
 * What one visit to a stop may consist of: options by rising minutes and strictly rising worth.
 * Worth is what the visit saves (deferral prices avoided) less the labour for its minutes, so the longest
 * option that fits is always the best one.
 */
export interface Menu {
  readonly count: number;
  /** One entry per option; minutes of service. */
  readonly minutes: Int32Array;
  /** One entry per option; cost units. */
  readonly worth: Float64Array;
}

/**
 * The menus of all stops. A stop's menu depends on what is still open there, named by an integer `open`
 * (0 = nothing done yet); taking an option leads to another `open`, giving it back leads home again.
 */
export interface MenuBook {
  /** Whether a stop where nothing is done yet has one option, of `least` minutes and worth its `ceiling`, and later none. */
  readonly isSingle: boolean;
  menu(stop: number, open: number, vehicle: number): Menu;
  /** What is open after a visit with `token` is taken. */
  take(stop: number, open: number, token: number): number;
  /** What is open after a visit that was taken with `token` is given up. */
  giveBack(stop: number, open: number, token: number): number;
  /** A number by which the book remembers what the option consists of. */
  token(stop: number, open: number, vehicle: number, option: number): number;
  /** Units of work behind a token, numbered over all stops: no two visits may do the same one. */
  units(stop: number, token: number): readonly number[];
  /** The token of a visit that does exactly these units. */
  tokenOf(stop: number, units: readonly number[]): number;
  /** Whether a unit must be done, and what the worth of a token counts for that. */
  isMust(unit: number): boolean;
  mustPrice(stop: number, token: number): number;
  /** Whether `menu` can answer at once; if not, it is first asked whether `least` minutes fit where they can pay. */
  isPrepared(stop: number, open: number, vehicle: number): boolean;
  /** No option takes fewer minutes than this. */
  least(stop: number, open: number): number;
  /** No visit to the stop, on any vehicle, is worth more than this; 0 when nothing is open. */
  ceiling(stop: number, open: number): number;
  /** No option of `menu(stop, open, vehicle)` is worth more than this. */
  ceilingOn(stop: number, open: number, vehicle: number): number;
}

export const EMPTY_MENU: Menu = { count: 0, minutes: new Int32Array(0), worth: new Float64Array(0) };

/** The plain case: one visit per stop, fixed minutes, one price for leaving it out. */
export class SingleOptionMenus implements MenuBook {
  readonly isSingle = true;
  private readonly menus: Menu[];
  private readonly minutes: Int32Array;
  private readonly price: Float64Array;

  /**
   * @param minutes service minutes, one per stop
   * @param price   cost units of leaving the stop out, one per stop
   */
  constructor(
    minutes: ArrayLike<number>,
    price: ArrayLike<number>,
    /** Prices from here on mean that the stop must be served. */
    private readonly mustFrom = Infinity,
  ) {
    this.minutes = Int32Array.from(minutes);
    this.price = Float64Array.from(price);
    this.menus = Array.from({ length: minutes.length }, (_, s) => ({
      count: 1,
      minutes: Int32Array.of(minutes[s]!),
      worth: Float64Array.of(price[s]!),
    }));
  }

  menu(stop: number, open: number): Menu {
    return open === 0 ? this.menus[stop]! : EMPTY_MENU;
  }

  take(): number {
    return 1;
  }

  giveBack(): number {
    return 0;
  }

  token(): number {
    return 0;
  }

  units(stop: number): readonly number[] {
    return [stop];
  }

  tokenOf(): number {
    return 0;
  }

  isMust(unit: number): boolean {
    return this.price[unit]! >= this.mustFrom;
  }

  mustPrice(stop: number): number {
    return this.isMust(stop) ? this.price[stop]! : 0;
  }

  isPrepared(): boolean {
    return true;
  }

  least(stop: number): number {
    return this.minutes[stop]!;
  }

  ceiling(stop: number, open: number): number {
    return open === 0 ? this.price[stop]! : 0;
  }

  ceilingOn(stop: number, open: number): number {
    return this.ceiling(stop, open);
  }
}
