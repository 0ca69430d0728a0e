import { cheapestAddition } from './cheapest-addition.js';
import { type Clause, clause } from './clause.js';
import { type Draft, type DraftVisit, routeCents } from './draft.js';
import type { PlanningInstance } from './instance.js';

/** One rule given up, and by how much. */
interface Relaxation {
  rule: string;
  /** Lower goes first when several suffice. */
  weight: number;
  instance: PlanningInstance;
  draft: Draft;
  /** `if the shift of Technician 2 on 2014-06-17 may end 30 min later`. */
  words: string;
  values: Clause['values'];
}

export interface Remedies {
  remedies: string[];
  remedyRules: Clause[][];
}

/** Minutes by which shifts and access are stretched, one after the other, until it fits. */
const STEPS = [15, 30, 60, 120, 240];
const MOST_REMEDIES = 3;
const MOST_VISITS = 12;

/**
 * What would let an item be done that could not be placed: every rule given up by itself, then in pairs. The cheapest
 * sufficient sets in words, mildest first; empty when not even two rules together help.
 */
export function diagnose(instance: PlanningInstance, draft: Draft, index: number): Remedies {
  const single = relaxations(instance, draft, index);
  const enough = single.filter((each) => fits(each, index));
  if (enough.length > 0) return worded(enough.map((each) => [each]));
  const widest = widestOfEachRule(single);
  const pairs: Relaxation[][] = [];
  for (const [a, first] of widest.entries()) {
    for (const second of widest.slice(a + 1)) {
      const both = relaxations(first.instance, first.draft, index).find((each) => each.words === second.words);
      if (both && fits(both, index)) pairs.push([first, second]);
    }
  }
  return worded(pairs);
}

function worded(sets: readonly Relaxation[][]): Remedies {
  const weight = (set: readonly Relaxation[]) => set.reduce((sum, each) => sum + each.weight, 0);
  const seen = new Set<string>();
  const mildest = [...sets]
    .sort((a, b) => weight(a) - weight(b))
    .filter((set) => {
      const rules = set.map((each) => each.rule).join('+');
      return !seen.has(rules) && seen.add(rules);
    })
    .slice(0, MOST_REMEDIES);
  return {
    remedies: mildest.map((set) => `It fits ${set.map((each) => each.words).join(' and ')}.`),
    remedyRules: mildest.map((set) => set.map((each) => clause(each.rule, each.values))),
  };
}

function widestOfEachRule(single: readonly Relaxation[]): Relaxation[] {
  const widest = new Map<string, Relaxation>();
  for (const each of single) widest.set(each.rule, each);
  return [...widest.values()];
}

function fits({ instance, draft }: Relaxation, index: number): boolean {
  const present = draft.map((visits, v) => routeCents(instance, v, visits));
  return cheapestAddition(instance, draft, index, present) !== null;
}

/** The visits nearest to a site, the likeliest to be in the way. */
function nearest(instance: PlanningInstance, draft: Draft, site: number): DraftVisit[] {
  const { minutes, size } = instance.travel;
  const drive = (visit: DraftVisit) => minutes[visit.site * size + site]!;
  return draft
    .flat()
    .sort((a, b) => drive(a) - drive(b))
    .slice(0, MOST_VISITS);
}

function relaxations(instance: PlanningInstance, draft: Draft, index: number): Relaxation[] {
  const item = instance.items[index]!;
  const { snapshot, dates } = instance;
  const source = snapshot.items[index]!;
  const site = snapshot.sites[item.site]!;
  const changed = (changes: Partial<PlanningInstance['items'][number]>) =>
    instance.items.map((each) => (each.index === index ? { ...each, ...changes } : each));
  const withSnapshotSite = (changes: Partial<typeof site>) => ({
    ...instance,
    snapshot: {
      ...snapshot,
      sites: snapshot.sites.map((each, s) => (s === item.site ? { ...each, ...changes } : each)),
    },
  });
  const list: Relaxation[] = [];
  const offer = (
    rule: string,
    weight: number,
    words: string,
    values: Clause['values'],
    changes: Partial<PlanningInstance>,
    other = draft,
  ) => list.push({ rule, weight, words, values, instance: { ...instance, ...changes }, draft: other });

  for (const [step, minutes] of STEPS.entries()) {
    const days = instance.technicianDays.map((day) => ({ ...day, latestReturn: day.latestReturn + minutes }));
    offer(
      'shift',
      10 + step,
      `if a shift may end ${minutes} min later`,
      { shiftMinutes: minutes },
      { technicianDays: days },
    );
  }
  for (const [step, minutes] of STEPS.entries()) {
    const windows = instance.windows.with(
      item.site,
      instance.windows[item.site]!.map((spans) =>
        spans.map(({ open, close }) => ({ open: open - minutes, close: close + minutes })),
      ),
    );
    offer(
      'access',
      20 + step,
      `if ${site.name} can be entered ${minutes} min earlier and later`,
      { site: site.name, openMinutes: minutes },
      { windows },
    );
  }
  // A rest between two stretches of a day is no lunch that could wait.
  const hasRest = (technician: number, date: string) =>
    snapshot.technicians[technician]!.shifts.some((shift) => shift.date === date && shift.rest);
  const noLunch = instance.technicianDays.map((day) =>
    hasRest(day.technician, day.date) ? day : { ...day, lunch: null },
  );
  offer('lunch', 30, 'if lunch is moved or left out', {}, { technicianDays: noLunch });
  for (const visit of nearest(instance, draft, item.site)) {
    const { promise } = visit;
    if (!promise) continue;
    const name = snapshot.sites[visit.site]!.name;
    const without = draft.map((visits) => visits.filter((each) => each !== visit));
    offer(
      'promise',
      40 + promise.moveCents / 1e6,
      `if the promised visit at ${name} on ${dates[promise.day]} moves`,
      { site: name, visitDate: dates[promise.day]! },
      {},
      without,
    );
  }
  if (item.latestDay < dates.length - 1)
    offer(
      'deadline',
      50,
      `if it need not be done by ${source.latestDate}`,
      { byDate: source.latestDate! },
      {
        items: changed({ latestDay: dates.length - 1 }),
      },
    );
  offer(
    'machines-down',
    55,
    `if more machines may be down at once at ${site.name}`,
    { site: site.name },
    withSnapshotSite({ maxMachinesDown: 1000 }),
  );
  offer('bar', 58, `if whoever is barred may be sent to ${site.name}`, { site: site.name }, { isBarred: () => false });
  if (item.releaseDay > 0)
    offer(
      'part',
      60,
      `if its part, expected on ${source.releaseDate}, comes earlier`,
      { fromDate: source.releaseDate! },
      {
        items: changed({ releaseDay: 0 }),
      },
    );
  const day = (d: number) => instance.technicianDays.filter((each) => each.day === d);
  const allDay = instance.windows.with(
    item.site,
    dates
      .map((_, d) => day(d).map((each) => ({ open: each.shiftStart, close: each.latestReturn })))
      .map((spans) => spans.slice(0, 1)),
  );
  offer(
    'closed',
    70,
    `if ${site.name} can be entered on more days or all day`,
    { site: site.name },
    { windows: allDay },
  );
  if (item.skill !== null)
    offer(
      'skill',
      80,
      `if somebody else learns or lends the skill ${item.skill}`,
      { skill: item.skill },
      { items: changed({ skill: null }) },
    );
  for (const visit of nearest(instance, draft, item.site)) {
    if (visit.promise || !visit.items.some((other) => instance.items[other]!.mustDo)) continue;
    const without = draft.map((visits) => visits.filter((each) => each !== visit));
    const { name } = snapshot.sites[visit.site]!;
    offer('must-do', 90, `if the work that must be done at ${name} gives way`, { site: name }, {}, without);
  }
  return list;
}
