import { EMPTY_MENU, type Menu, type MenuBook } from '@deckround/routing';
import type { PlanningInstance } from './instance.js';
import { machineOptions, type OfferedItem, type WorkOption } from './machine-options.js';
import { UNITS_PER_CENT } from './money.js';
import type { PlanStop } from './plan-stops.js';
import { itemsOfOption, siteOptions } from './site-options.js';
import { visitMinutes } from './visit-minutes.js';

/** Price in the search of a must-do left out; never part of a reported cost. Cents. */
export const MUST_DO_CENTS = 10_000_000;
/** A pinned visit is worth more than anything else. Cents. */
const PINNED_CENTS = 10_000_000_000;
/** Menus kept per stop, and over all stops; beyond that a stop's are forgotten and made again when asked for. */
const MENUS_KEPT = 600;
const ALL_MENUS_KEPT = 100_000;
/** The same for the lists of options of machines, over all stops. */
const MACHINE_OPTIONS_KEPT = 30_000;
/** Technician classes times days from which on an instance counts as large. */
const MANY_CELLS = 60;

interface OpenSet {
  /** One bit per item of the stop. */
  words: Uint32Array;
  menus: (ItemMenu | undefined)[];
  ceiling: number;
  /** Whether set-up and preparation are taken off the ceiling. */
  isTight: boolean;
  /** Set-up plus the shortest open item. */
  least: number;
  /** What is open after a token is taken, and after it is given back. */
  taken: Map<number, number>;
  given: Map<number, number>;
  /** Per class and day: most that a visit can be worth; NaN = not yet asked. */
  most: Float64Array;
}

interface ItemMenu extends Menu {
  /** Tokens found so far, −1 = not yet; null: none. */
  tokens: Int32Array | null;
}

/** Items `from` … `to` − 1 of a stop are at one machine. */
interface MachineItems {
  machine: number;
  from: number;
  to: number;
}

interface StopBook {
  items: number[];
  machines: MachineItems[];
  sets: OpenSet[];
  setOf: Map<string, number>;
  tokens: { items: readonly number[]; words: Uint32Array }[];
  tokenOf: Map<string, number>;
  menuCount: number;
  fullCeiling: number;
}

/**
 * Which items ride in a visit: per stop, technician class (skills and wage), day and set of open items, the options
 * that no other option beats. Gain of an item on day d = deferral price − timing cost on d (+ a large price when it
 * must be done); net = Σ gain − wage × (set-up + preparation + items).
 */
export class ItemMenus implements MenuBook {
  readonly isSingle = false;
  private readonly books: StopBook[];
  private readonly classOf: number[];
  private readonly classes: { technician: number; skills: Set<string>; wage: number }[] = [];
  /** Menus of every class and day at once would take longer than they save: ceilings stay loose then. */
  private readonly isLarge: boolean;
  private readonly positionInStop: Int32Array;
  private readonly mostMinutes: number;
  private readonly menusKept: number;
  private readonly machineMemo: (Map<number | string, readonly WorkOption[]> | undefined)[] = [];
  private machineMemoCount = 0;
  /** Per item: most it can be worth, in units, labour taken off. */
  private readonly bestNet: Float64Array;

  constructor(
    private readonly instance: PlanningInstance,
    private readonly stops: readonly PlanStop[],
  ) {
    const { snapshot, items } = instance;
    const classOf = new Map<string, number>();
    this.classOf = snapshot.technicians.map((technician, k) => {
      const key = `${technician.wageCentsPerHour}|${[...technician.skills].sort().join('|')}`;
      if (!classOf.has(key)) {
        classOf.set(key, this.classes.length);
        this.classes.push({ technician: k, skills: new Set(technician.skills), wage: technician.wageCentsPerHour });
      }
      return classOf.get(key)!;
    });
    this.menusKept = Math.min(MENUS_KEPT, Math.ceil(ALL_MENUS_KEPT / Math.max(1, stops.length)));
    this.isLarge = this.classes.length * instance.dates.length > MANY_CELLS;
    this.positionInStop = new Int32Array(items.length).fill(-1);
    this.mostMinutes = Math.max(0, ...instance.technicianDays.map((day) => day.latestReturn - day.shiftStart));
    this.bestNet = Float64Array.from(items, (item) => {
      let best = 0;
      for (const { skills, wage } of this.classes) {
        if (item.skill !== null && !skills.has(item.skill)) continue;
        for (let d = item.releaseDay; d <= item.latestDay; d++) {
          best = Math.max(best, this.gain(item.index, d) - wage * item.minutes);
        }
      }
      return best;
    });
    this.books = stops.map((stop) => {
      stop.items.forEach((item, k) => {
        if (stop.kind === 'site') this.positionInStop[item] = k;
      });
      return {
        items: stop.items,
        machines: machinesOf(instance, stop.items),
        sets: [],
        setOf: new Map(),
        tokens: [],
        tokenOf: new Map(),
        menuCount: 0,
        fullCeiling: Infinity,
      };
    });
    stops.forEach((stop, s) => {
      const words = new Uint32Array(Math.max(1, Math.ceil(stop.items.length / 32)));
      for (let k = 0; k < stop.items.length; k++) words[k >> 5]! |= 1 << (k & 31);
      this.setId(s, words);
      if (stop.kind === 'frozen' || this.isLarge) return;
      let ceiling = 0;
      for (let c = 0; c < this.classes.length; c++) {
        for (let d = 0; d < instance.dates.length; d++) {
          const { count, worth } = this.classMenu(s, 0, c, d);
          if (count > 0) ceiling = Math.max(ceiling, worth[count - 1]!);
        }
      }
      const book = this.books[s]!;
      book.fullCeiling = Math.max(0, ceiling + stop.mostBonus * UNITS_PER_CENT - this.visitFee(s));
      book.sets[0]!.ceiling = book.fullCeiling;
    });
  }

  /** Items behind a token. */
  itemsOf(stop: number, token: number): readonly number[] {
    const planStop = this.stops[stop]!;
    return planStop.kind === 'frozen' ? planStop.items : this.books[stop]!.tokens[token]!.items;
  }

  menu(stop: number, open: number, vehicle: number): Menu {
    const planStop = this.stops[stop]!;
    const day = this.instance.technicianDays[vehicle]!;
    if (planStop.kind === 'frozen') return open === 0 ? this.frozenMenu(stop, day.technician) : EMPTY_MENU;
    return this.classMenu(stop, open, this.classOf[day.technician]!, day.day);
  }

  take(stop: number, open: number, token: number): number {
    if (this.stops[stop]!.kind === 'frozen') return 1;
    const book = this.books[stop]!;
    const set = book.sets[open]!;
    let next = set.taken.get(token);
    if (next === undefined) {
      next = this.setId(
        stop,
        set.words.map((word, w) => word & ~book.tokens[token]!.words[w]!),
      );
      set.taken.set(token, next);
      book.sets[next]!.given.set(token, open);
    }
    return next;
  }

  giveBack(stop: number, open: number, token: number): number {
    if (this.stops[stop]!.kind === 'frozen') return 0;
    const book = this.books[stop]!;
    const set = book.sets[open]!;
    let next = set.given.get(token);
    if (next === undefined) {
      const back = book.tokens[token]!.words;
      next = this.setId(
        stop,
        set.words.map((word, w) => word | back[w]!),
      );
      set.given.set(token, next);
    }
    return next;
  }

  token(stop: number, open: number, vehicle: number, option: number): number {
    if (this.stops[stop]!.kind === 'frozen') return 0;
    const menu = this.menu(stop, open, vehicle) as ItemMenu;
    menu.tokens ??= new Int32Array(menu.count).fill(-1);
    if (menu.tokens[option]! >= 0) return menu.tokens[option]!;
    const { technician, day } = this.instance.technicianDays[vehicle]!;
    const set = this.books[stop]!.sets[open]!;
    const machines = this.machineLists(stop, set, this.classOf[technician]!, day);
    const items = itemsOfOption(machines, this.roomAt(stop), this.mostMachines(stop), option + 1);
    const token = this.tokenOf(stop, items);
    menu.tokens[option] = token;
    return token;
  }

  tokenOf(stop: number, items: readonly number[]): number {
    if (this.stops[stop]!.kind === 'frozen') return 0;
    const book = this.books[stop]!;
    const words = new Uint32Array(book.sets[0]!.words.length);
    for (const item of items) {
      const k = this.positionInStop[item]!;
      words[k >> 5]! |= 1 << (k & 31);
    }
    const key = words.join();
    let token = book.tokenOf.get(key);
    if (token === undefined) {
      token = book.tokens.length;
      book.tokens.push({ items, words });
      book.tokenOf.set(key, token);
    }
    return token;
  }

  /** Items are the units of work, and each frozen visit as a whole. */
  units(stop: number, token: number): readonly number[] {
    if (this.stops[stop]!.kind === 'frozen') return [this.instance.items.length + stop];
    return this.books[stop]!.tokens[token]!.items;
  }

  isMust(unit: number): boolean {
    return unit >= this.instance.items.length || this.instance.items[unit]!.mustDo;
  }

  mustPrice(stop: number, token: number): number {
    if (this.stops[stop]!.kind === 'frozen') return PINNED_CENTS * UNITS_PER_CENT;
    const must = this.books[stop]!.tokens[token]!.items.filter((item) => this.instance.items[item]!.mustDo);
    return must.length * MUST_DO_CENTS * UNITS_PER_CENT;
  }

  isPrepared(stop: number, open: number, vehicle: number): boolean {
    if (this.stops[stop]!.kind === 'frozen') return true;
    const day = this.instance.technicianDays[vehicle]!;
    const cell = this.classOf[day.technician]! * this.instance.dates.length + day.day;
    return this.books[stop]!.sets[open]!.menus[cell] !== undefined;
  }

  least(stop: number, open: number): number {
    return this.stops[stop]!.kind === 'frozen' ? 0 : this.books[stop]!.sets[open]!.least;
  }

  ceiling(stop: number, open: number): number {
    if (this.stops[stop]!.kind === 'frozen') return open === 0 ? PINNED_CENTS * UNITS_PER_CENT : 0;
    const set = this.books[stop]!.sets[open]!;
    if (!set.isTight) this.tighten(stop, open, set);
    return set.ceiling;
  }

  ceilingOn(stop: number, open: number, vehicle: number): number {
    if (this.stops[stop]!.kind === 'frozen') return this.ceiling(stop, open);
    const { technician, day } = this.instance.technicianDays[vehicle]!;
    const cls = this.classOf[technician]!;
    const cell = cls * this.instance.dates.length + day;
    const set = this.books[stop]!.sets[open]!;
    if (Number.isNaN(set.most[cell]!)) set.most[cell] = this.mostWorth(stop, set, cls, day);
    return set.most[cell]!;
  }

  /** A stop where only scraps are left is not worth offering. Put off until asked: many sets never are. */
  private tighten(stop: number, open: number, set: OpenSet): void {
    set.isTight = true;
    if (set.ceiling === 0 || this.isLarge) return;
    let most = 0;
    for (let v = 0; v < this.instance.technicianDays.length; v++) most = Math.max(most, this.ceilingOn(stop, open, v));
    const bonus = this.stops[stop]!.mostBonus * UNITS_PER_CENT;
    set.ceiling = Math.min(set.ceiling, Math.max(0, most + bonus - this.visitFee(stop)));
  }

  /** All that pays for its own labour and preparation done at every machine. */
  private mostWorth(stop: number, set: OpenSet, cls: number, day: number): number {
    const { setupMinutes } = this.siteOf(stop);
    if (this.isLarge) return this.mostWorthRoughly(stop, set, cls, day);
    const lists = this.machineLists(stop, set, cls, day);
    return lists.reduce((sum, options) => sum + options.at(-1)!.net, -this.classes[cls]!.wage * setupMinutes);
  }

  /** The same without preparation: every item that pays for its own minutes. */
  private mostWorthRoughly(stop: number, set: OpenSet, cls: number, day: number): number {
    const { wage, skills } = this.classes[cls]!;
    let worth = -wage * this.siteOf(stop).setupMinutes;
    const { items } = this.books[stop]!;
    for (let k = 0; k < items.length; k++) {
      if ((set.words[k >> 5]! & (1 << (k & 31))) === 0) continue;
      const item = this.instance.items[items[k]!]!;
      if (item.releaseDay > day || item.latestDay < day || (item.skill !== null && !skills.has(item.skill))) continue;
      worth += Math.max(0, this.gain(item.index, day) - wage * item.minutes);
    }
    return worth;
  }

  private siteOf(stop: number) {
    return this.instance.snapshot.sites[this.stops[stop]!.site]!;
  }

  /** Minutes that items may take in one visit, whatever the day. */
  private roomAt(stop: number): number {
    return this.mostMinutes - this.siteOf(stop).setupMinutes;
  }

  /** Machines that may be worked on in one visit. */
  private mostMachines(stop: number): number {
    const { downRule, maxMachinesDown } = this.siteOf(stop);
    return downRule === 'whole-visit' ? maxMachinesDown : Infinity;
  }

  private gain(item: number, day: number): number {
    const { deferralCents, timingCents, mustDo } = this.instance.items[item]!;
    return (deferralCents - timingCents[day]! + (mustDo ? MUST_DO_CENTS : 0)) * UNITS_PER_CENT;
  }

  private visitFee(stop: number): number {
    return this.siteOf(stop).visitFeeCents * UNITS_PER_CENT;
  }

  private setId(stop: number, words: Uint32Array): number {
    const book = this.books[stop]!;
    const key = words.join();
    let id = book.setOf.get(key);
    if (id === undefined) {
      id = book.sets.length;
      let sum = 0;
      let shortest = Infinity;
      book.items.forEach((item, k) => {
        if ((words[k >> 5]! & (1 << (k & 31))) === 0) return;
        sum += this.bestNet[item]!;
        if (this.bestNet[item]! > 0) shortest = Math.min(shortest, this.instance.items[item]!.minutes);
      });
      const least = this.siteOf(stop).setupMinutes + shortest;
      const bonus = this.stops[stop]!.mostBonus * UNITS_PER_CENT;
      const ceiling = sum <= 0 ? 0 : Math.min(book.fullCeiling, Math.max(0, sum + bonus - this.visitFee(stop)));
      const most = new Float64Array(this.classes.length * this.instance.dates.length).fill(Number.NaN);
      book.sets.push({ words, menus: [], ceiling, isTight: false, least, taken: new Map(), given: new Map(), most });
      book.setOf.set(key, id);
    }
    return id;
  }

  private classMenu(stop: number, open: number, cls: number, day: number): ItemMenu {
    const book = this.books[stop]!;
    const set = book.sets[open]!;
    const cell = cls * this.instance.dates.length + day;
    let menu = set.menus[cell];
    if (menu === undefined) {
      if (++book.menuCount > this.menusKept) {
        for (const other of book.sets) if (other !== book.sets[0]) other.menus = [];
        book.menuCount = 0;
      }
      menu = this.makeMenu(stop, set, cls, day);
      set.menus[cell] = menu;
    }
    return menu;
  }

  private makeMenu(stop: number, set: OpenSet, cls: number, day: number): ItemMenu {
    const { setupMinutes } = this.siteOf(stop);
    const { wage } = this.classes[cls]!;
    const options = siteOptions(this.machineLists(stop, set, cls, day), this.roomAt(stop), this.mostMachines(stop));
    const count = options.count - 1;
    const minutes = new Int32Array(count);
    const worth = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      minutes[k] = options.minutes[k + 1]! + setupMinutes;
      worth[k] = options.net[k + 1]! - wage * setupMinutes;
    }
    return { count, minutes, worth, tokens: null };
  }

  /** Per machine of the stop its options. */
  private machineLists(stop: number, set: OpenSet, cls: number, day: number): (readonly WorkOption[])[] {
    return this.books[stop]!.machines.map((at) => this.optionsOf(stop, at, set.words, cls, day));
  }

  /** Options of one machine; remembered by what is open at it, unless that is one item at most. */
  private optionsOf(
    stop: number,
    at: MachineItems,
    words: Uint32Array,
    cls: number,
    day: number,
  ): readonly WorkOption[] {
    const key = bitsBetween(words, at.from, at.to);
    if (typeof key === 'number' && (key & (key - 1)) === 0) {
      return this.makeOptions(stop, at, words, cls, day);
    }
    const cell = (at.machine * this.classes.length + cls) * this.instance.dates.length + day;
    this.machineMemo[cell] ??= new Map();
    const memo = this.machineMemo[cell]!;
    let options = memo.get(key);
    if (options === undefined) {
      options = this.makeOptions(stop, at, words, cls, day);
      memo.set(key, options);
      if (++this.machineMemoCount > MACHINE_OPTIONS_KEPT) {
        this.machineMemo.length = 0;
        this.machineMemoCount = 0;
      }
    }
    return options;
  }

  private makeOptions(
    stop: number,
    { machine, from, to }: MachineItems,
    words: Uint32Array,
    cls: number,
    day: number,
  ): readonly WorkOption[] {
    const { instance } = this;
    const { skills, wage } = this.classes[cls]!;
    const offered: OfferedItem[] = [];
    for (let k = from; k < to; k++) {
      if ((words[k >> 5]! & (1 << (k & 31))) === 0) continue;
      const item = instance.items[this.books[stop]!.items[k]!]!;
      if (item.releaseDay > day || item.latestDay < day) continue;
      if (item.skill !== null && !skills.has(item.skill)) continue;
      const { index, minutes, preparationBits: bits } = item;
      offered.push({ index, minutes, bits, gain: this.gain(index, day) });
    }
    return machineOptions(offered, instance.forests[machine]!, wage);
  }

  private frozenMenu(stop: number, technician: number): Menu {
    const { instance } = this;
    const planStop = this.stops[stop]!;
    const minutes = visitMinutes(instance, planStop.site, planStop.items).total;
    const wage = instance.snapshot.technicians[technician]!.wageCentsPerHour;
    return {
      count: 1,
      minutes: Int32Array.of(minutes),
      worth: Float64Array.of(PINNED_CENTS * UNITS_PER_CENT - wage * minutes),
    };
  }
}

/** The stop's items stand machine by machine. */
function machinesOf(instance: PlanningInstance, items: readonly number[]): MachineItems[] {
  const machines: MachineItems[] = [];
  items.forEach((item, k) => {
    const { machine } = instance.items[item]!;
    const last = machines.at(-1);
    if (last?.machine === machine) last.to = k + 1;
    else machines.push({ machine, from: k, to: k + 1 });
  });
  return machines;
}

/** Bits `from` … `to` − 1 as a key: a number where they are few enough for an exact one. */
function bitsBetween(words: Uint32Array, from: number, to: number): number | string {
  if (to - from > 31) {
    let key = '';
    for (let k = from; k < to; k++) key += (words[k >> 5]! >>> (k & 31)) & 1;
    return key;
  }
  const shift = from & 31;
  const low = words[from >> 5]! >>> shift;
  const high = shift > 0 && (from >> 5) + 1 < words.length ? words[(from >> 5) + 1]! << (32 - shift) : 0;
  return (low | high) & ((2 ** (to - from) - 1) | 0);
}
