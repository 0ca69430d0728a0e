import { canDo, type SiteAdditions } from './cheapest-addition.js';
import { type Clause, clause } from './clause.js';
import { diagnose } from './diagnose.js';
import { basePlace, type PlanningInstance } from './instance.js';
import type { Situation } from './probe.js';
import { money, sentences } from './sentences.js';
import { visitMinutes } from './visit-minutes.js';
import type { LeftOut } from './week-plan.js';

/**
 * Why an item is left out: the first thing in its way, asked in this order: nobody with the skill works, the part
 * comes too late, the site cannot be entered long enough, no room in any shift, or waiting is simply cheaper.
 *
 * @param additions to the plan, at the item's site
 * @param bare      the week without optional work, where a must-do is to find what stands in its way
 */
export function explainLeftOut(additions: SiteAdditions, index: number, bare: Situation): LeftOut {
  const { instance } = additions;
  const { snapshot, technicianDays, dates } = instance;
  const item = instance.items[index]!;
  const source = snapshot.items[index]!;
  const site = snapshot.sites[item.site]!;
  const waitingCents = item.deferralCents - item.laterLabourCents;
  const answer = (code: LeftOut['code'], obstacle: Clause, why: string): LeftOut => ({
    itemId: source.id,
    cents: waitingCents,
    mustDo: item.mustDo,
    code,
    reason: sentences(why, `Leaving it costs ${money(waitingCents, snapshot)}`),
    obstacle,
    ...(item.mustDo && diagnose(bare, index)),
  });

  const skilled = technicianDays.flatMap((day, v) => {
    const { skills } = snapshot.technicians[day.technician]!;
    return item.skill === null || skills.includes(item.skill) ? [v] : [];
  });
  if (skilled.length === 0) {
    return answer(
      'skill',
      item.skill === null ? clause('nobody-works') : clause('no-skill', { skill: item.skill }),
      item.skill === null ? 'Nobody works in these days' : `Nobody with the skill ${item.skill} works in these days`,
    );
  }
  const able = skilled.filter((v) => canDo(instance, index, v));
  if (able.length === 0) {
    const supplied = skilled.filter((v) => technicianDays[v]!.day >= item.releaseDay);
    if (supplied.length === 0) {
      const last = dates[technicianDays[skilled.at(-1)!]!.day]!;
      return answer(
        'part',
        clause('part-after-last-day', { fromDate: source.releaseDate!, lastDate: last }),
        `Its parts are there from ${source.releaseDate!}, but the last day of a skilled technician is ${last}`,
      );
    }
    if (supplied.every((v) => technicianDays[v]!.day > item.latestDay)) {
      return answer(
        'time',
        clause('deadline', { byDate: source.latestDate! }),
        `It has to be done by ${source.latestDate!}, and nobody can do it until then`,
      );
    }
    return answer(
      'access',
      clause('nobody-may-be-sent', { site: site.name }),
      `Nobody who could do it may be sent to ${site.name} in these days`,
    );
  }
  const { total } = visitMinutes(instance, item.site, [index]);
  if (!able.some((v) => longestAccess(instance, item.site, v).inside >= total)) {
    const rooms = able.map((v) => longestAccess(instance, item.site, v));
    if (Math.max(...rooms.map((room) => room.shift)) < total) {
      return answer(
        'time',
        clause('too-long-for-shifts', { visitMinutes: total }),
        `The visit takes ${total} min on site, and no shift has room for it with lunch and the drive`,
      );
    }
    const most = Math.max(0, ...rooms.map((room) => room.inside));
    return answer(
      'access',
      most === 0
        ? clause('site-closed', { site: site.name })
        : clause('site-open-too-short', { site: site.name, visitMinutes: total, openMinutes: most }),
      most === 0
        ? `${site.name} cannot be entered while a skilled technician works and the parts are there`
        : `The visit takes ${total} min on site, but ${site.name} can be entered for at most ${most} min`,
    );
  }
  const addition = additions.cheapest(index);
  if (addition === null) return answer('time', clause('no-room'), 'No shift has room for it beside the visits planned');
  // Labour that is only put off is left out of both figures, so that they can be compared with the price of waiting.
  const extra = addition.cents - item.laterLabourCents;
  const how = addition.joins === 'visit' ? 'Adding it to a planned visit' : 'A visit for it';
  return answer(
    'cheaper-later',
    clause(addition.joins === 'visit' ? 'dearer-joined' : 'dearer-alone', {
      extraCents: Math.max(0, extra),
      moreCents: Math.max(0, extra - waitingCents),
    }),
    `${how} would cost ${money(Math.max(0, extra), snapshot)} beyond its own work, ${money(Math.max(0, extra - waitingCents), snapshot)} more than waiting`,
  );
}

/** Longest stay at a site within access and shift, and within the shift alone; minutes, none of them over lunch. */
function longestAccess(instance: PlanningInstance, site: number, v: number): { inside: number; shift: number } {
  const day = instance.technicianDays[v]!;
  const { minutes, size } = instance.travel;
  const base = basePlace(instance, day.technician);
  const from = day.shiftStart + minutes[day.startPlace * size + site]!;
  const to = day.latestReturn - minutes[site * size + base]!;
  const stretches =
    day.lunch === null
      ? [{ from, to }]
      : [
          { from, to: Math.min(to, day.lunch.to) },
          { from: Math.max(from, day.lunch.from + day.lunch.minutes), to },
        ];
  const inside = instance.windows[site]![day.day]!.flatMap((span) =>
    stretches.map((stretch) => Math.min(span.close, stretch.to) - Math.max(span.open, stretch.from)),
  );
  return { inside: Math.max(-1, ...inside), shift: Math.max(...stretches.map((stretch) => stretch.to - stretch.from)) };
}
