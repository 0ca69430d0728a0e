import type { Clause } from './clause.js';
import { type InstanceItem, type PlanningInstance, technicianDay } from './instance.js';
import { nearestVisits, placeFor, type Situation, without } from './probe.js';
import type { PlanningTechnician } from './snapshot.js';

/** One rule given up, and by how much. */
export interface Relaxation {
  rule: string;
  /** Lower goes first when several suffice. */
  weight: number;
  /** The week without the rule, and what is said of it; null = giving it up opens nothing. */
  apply(situation: Situation): Relaxed | null;
}

export interface Relaxed {
  situation: Situation;
  /** `if the shift of Technician 2 on 2014-06-17 may end 30 min later`. */
  words: string;
  values: Clause['values'];
}

/** Minutes by which shifts and access are stretched, one after the other, until it fits. */
const STEPS = [15, 30, 60, 120, 240];
/** Hours of somebody who has no shift in these days, where nobody else has one either; own choice. */
const USUAL_SHIFT = { start: '08:00', end: '16:00' };

/** Every rule that stands between an item and the week; those that can be given up step by step, least first. */
export function relaxations(base: Situation, index: number): Relaxation[] {
  const { snapshot, dates, items } = base.instance;
  const item = items[index]!;
  const source = snapshot.items[index]!;
  const site = snapshot.sites[item.site]!;
  const list: Relaxation[] = [];
  const offer = (
    rule: string,
    weight: number,
    words: string,
    values: Clause['values'],
    changed: (instance: PlanningInstance) => Partial<PlanningInstance>,
  ) =>
    list.push({
      rule,
      weight,
      apply: (situation) => ({
        situation: { ...situation, instance: { ...situation.instance, ...changed(situation.instance) } },
        words,
        values,
      }),
    });

  for (const [step, minutes] of STEPS.entries())
    offer('shift', 10 + step, `if a shift may end ${minutes} min later`, { shiftMinutes: minutes }, (instance) => ({
      technicianDays: instance.technicianDays.map((day) => ({ ...day, latestReturn: day.latestReturn + minutes })),
    }));
  for (const [step, minutes] of STEPS.entries())
    offer(
      'access',
      20 + step,
      `if ${site.name} can be entered ${minutes} min earlier and later`,
      { site: site.name, openMinutes: minutes },
      ({ windows }) => ({
        windows: windows.with(
          item.site,
          windows[item.site]!.map((spans) =>
            spans.map(({ open, close }) => ({ open: open - minutes, close: close + minutes })),
          ),
        ),
      }),
    );
  offer('lunch', 30, 'if lunch is moved or left out', {}, withoutLunch);
  for (const visit of nearestVisits(base, item.site, ({ promise }) => promise !== null)) {
    const promise = visit.promise!;
    const { name } = snapshot.sites[visit.site]!;
    const date = dates[promise.day]!;
    list.push({
      rule: 'promise',
      weight: 40 + promise.moveCents / 1e6,
      apply: (situation) => ({
        situation: {
          ...without(situation, visit),
          instance: {
            ...situation.instance,
            promises: situation.instance.promises.filter((each) => each.index !== promise.index),
          },
        },
        words: `if the promised visit at ${name} on ${date} moves`,
        values: { site: name, visitDate: date },
      }),
    });
  }
  if (item.latestDay < dates.length - 1)
    offer(
      'deadline',
      50,
      `if it need not be done by ${source.latestDate}`,
      { byDate: source.latestDate! },
      (instance) => changedItem(instance, index, { latestDay: dates.length - 1 }),
    );
  offer(
    'machines-down',
    55,
    `if more machines may be down at once at ${site.name}`,
    { site: site.name },
    ({ snapshot }) => ({
      snapshot: {
        ...snapshot,
        sites: snapshot.sites.map((each, s) => (s === item.site ? { ...each, maxMachinesDown: 1000 } : each)),
      },
    }),
  );
  offer('bar', 58, `if whoever is barred may be sent to ${site.name}`, { site: site.name }, () => ({
    isBarred: () => false,
  }));
  const lastDay = Math.min(item.releaseDay, dates.length) - 1;
  for (let day = lastDay; day >= 0; day--)
    offer(
      'part-by',
      60 + (lastDay - day) / 100,
      `if its part, expected on ${source.releaseDate}, comes by ${dates[day]}`,
      { fromDate: source.releaseDate!, byDate: dates[day]! },
      (instance) => changedItem(instance, index, { releaseDay: day }),
    );
  offer(
    'closed',
    70,
    `if ${site.name} can be entered on more days or all day`,
    { site: site.name },
    ({ windows, clock }) => ({
      windows: windows.with(
        item.site,
        dates.map((date) => [
          { open: clock.minutes(site.zone, date, '00:00'), close: clock.minutes(site.zone, date, '24:00') },
        ]),
      ),
    }),
  );
  if (item.skill !== null)
    offer('skill', 80, `if somebody else learns or lends the skill ${item.skill}`, { skill: item.skill }, (instance) =>
      changedItem(instance, index, { skill: null }),
    );
  list.push({ rule: 'works', weight: 85, apply: (situation) => onADayOff(situation, index) });
  const isMustDo = (other: number) => items[other]!.mustDo;
  for (const visit of nearestVisits(base, item.site, (each) => each.promise === null && each.items.some(isMustDo))) {
    const { name } = snapshot.sites[visit.site]!;
    list.push({
      rule: 'must-do',
      weight: 90,
      apply: (situation) => ({
        situation: without(situation, visit),
        words: `if the work that must be done at ${name} gives way`,
        values: { site: name },
      }),
    });
  }
  return list;
}

function changedItem({ items }: PlanningInstance, index: number, changes: Partial<InstanceItem>) {
  return { items: items.with(index, { ...items[index]!, ...changes }) };
}

function withoutLunch({ snapshot, technicianDays }: PlanningInstance) {
  // A rest between two stretches of a day is no lunch that could wait.
  const hasRest = (technician: number, date: string) =>
    snapshot.technicians[technician]!.shifts.some((shift) => shift.date === date && shift.rest);
  return {
    technicianDays: technicianDays.map((day) => (hasRest(day.technician, day.date) ? day : { ...day, lunch: null })),
  };
}

/** The day off on which an item is done at the least cost if somebody works then; null where no day off helps. */
function onADayOff(situation: Situation, index: number): Relaxed | null {
  const { instance, draft, present } = situation;
  const { snapshot, dates, technicianDays } = instance;
  const works = new Set(technicianDays.map(({ technician, day }) => `${technician} ${day}`));
  const daysOff = snapshot.technicians.flatMap((technician, k) =>
    dates.flatMap((date, day) => {
      if (works.has(`${k} ${day}`) || date < snapshot.asOf) return [];
      return [technicianDay(instance, k, day, { date, ...usualHours(technician, snapshot.technicians) })];
    }),
  );
  const withDays = (days: typeof daysOff): Situation => ({
    instance: { ...instance, technicianDays: [...technicianDays, ...days] },
    draft: [...draft, ...days.map(() => [])],
    present: [...present, ...days.map(() => 0)],
  });
  const best = placeFor(withDays(daysOff), index);
  const day = best === null ? undefined : daysOff[best.v - technicianDays.length];
  if (day === undefined) return null;
  const { name } = snapshot.technicians[day.technician]!;
  return {
    situation: withDays([day]),
    words: `if ${name} works on ${day.date}`,
    values: { technician: name, workDate: day.date },
  };
}

/** Hours of a technician's first whole shift in these days, else of anybody's. */
function usualHours(technician: PlanningTechnician, all: readonly PlanningTechnician[]) {
  const whole = [technician, ...all].flatMap(({ shifts }) => shifts).find((shift) => !shift.underWay);
  const { start, end, rest } = whole ?? { ...USUAL_SHIFT, rest: undefined };
  return { start, end, ...(rest && { rest }) };
}
