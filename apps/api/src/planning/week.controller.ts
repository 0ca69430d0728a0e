import {
  ExtraTime,
  LeftOutItem,
  LeftOutQuery,
  pageOf,
  Week,
  WeekConfirm,
  WeekConfirmed,
  WeekQuery,
} from '@deckround/contracts';
import { extraTime, type WeekPlan } from '@deckround/planning';
import type { Clock } from '@deckround/platform';
import { addDays } from '@deckround/register';
import { cannotBeMade, dateColumn, dateText, shopNow } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Inject, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { instantOrNull } from '../register/values.js';
import { loadStandingWeek } from '../week-changes/load-standing-week.js';
import { confirmVisit } from './confirm-visit.js';
import { costOfUnmade } from './cost-of-unmade.js';
import { leftOutOfWeek, leftOutPage } from './left-out.js';
import { toVisitView, VISIT_INCLUDE } from './visit-view.js';
import { costNow, planOfWeek, standingWork } from './week-as-planned.js';

const QUARTER_HOUR = 15;

@ApiTags('Week')
@ApiBearerAuth()
@Controller('v1/week')
export class WeekController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, Week, 'The week as it is planned now')
  read(@Caller() actor: Actor, @Query({ schema: WeekQuery }) query: z.infer<typeof WeekQuery>) {
    return this.store.inShop(actor.shopId, async (tx) => readWeek(tx, query, await shopNow(tx, this.clock.now())));
  }

  @Get('left-out')
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, pageOf(LeftOutItem, 'LeftOutItem'), 'What the week’s plan left for later: must-dos, then the dearest')
  leftOut(@Caller() actor: Actor, @Query({ schema: LeftOutQuery }) query: z.infer<typeof LeftOutQuery>) {
    const { weekOf, cursor, limit } = query;
    return this.store.inShop(actor.shopId, (tx) => leftOutPage(tx, weekOf, cursor, limit));
  }

  @Get('extra-time')
  @Allow(['manager'], 'read')
  @Answers(200, ExtraTime, 'What a quarter of an hour more on each technician’s day would save')
  extra(@Caller() actor: Actor, @Query({ schema: WeekQuery }) { weekOf }: z.infer<typeof WeekQuery>) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const { week } = await loadStandingWeek(tx, weekOf, await shopNow(tx, this.clock.now()));
      const titles = new Map(week.instance.snapshot.items.map((item) => [item.id, item.title]));
      const days = extraTime(week.instance, week.draft, QUARTER_HOUR);
      return {
        minutes: QUARTER_HOUR,
        days: days.map((day) => ({ ...day, title: day.itemId === null ? null : (titles.get(day.itemId) ?? null) })),
      };
    });
  }

  @Post('confirm')
  @Allow(['manager'])
  @Creates(WeekConfirmed, 'Every proposed visit of the week that can be made where it stands is promised now')
  confirm(
    @Caller() actor: Actor,
    @Body({ schema: WeekConfirm }) body: z.infer<typeof WeekConfirm>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const visits = await tx.visit.findMany({
        where: { state: 'proposed', visitDate: span(body) },
        include: VISIT_INCLUDE,
      });
      const now = await shopNow(tx, this.clock.now());
      const unmade = new Set((await cannotBeMade(tx, visits, now)).map((each) => each.visitId));
      const kept = visits.filter((visit) => !unmade.has(visit.id));
      for (const visit of kept) await confirmVisit(tx, visit, { moveCents: body.moveCents }, now, body.slotMinutes);
      return { confirmed: kept.length };
    });
  }
}

function span({ weekOf, days }: { weekOf: string; days: number }) {
  return dates({ from: weekOf, to: addDays(weekOf, days - 1) });
}

function dates({ from, to }: { from: string; to: string }) {
  return { gte: dateColumn(from), lte: dateColumn(to) };
}

function isOn({ gte, lte }: ReturnType<typeof dates>) {
  return ({ visitDate }: { visitDate: Date }) => gte <= visitDate && visitDate <= lte;
}

async function readWeek(tx: Tx, query: z.infer<typeof WeekQuery>, now: Date) {
  const routes = await tx.dayRoute.findMany({
    where: { routeDate: span(query) },
    include: { technician: true },
    orderBy: [{ routeDate: 'asc' }, { technicianId: 'asc' }],
  });
  const planned = await planOfWeek(tx, query.weekOf, query.days);
  // What a plan costs is of all its days, be they other ones than those asked for.
  const days = planned ? [span(query), dates(planned)] : [span(query)];
  const visits = await tx.visit.findMany({
    where: { OR: days.map((visitDate) => ({ visitDate })), state: { not: 'cancelled' } },
    include: VISIT_INCLUDE,
    orderBy: { startAt: 'asc' },
  });
  const unmade = await cannotBeMade(tx, visits, now);
  const shown = new Set(visits.filter(isOn(span(query))).map(({ id }) => id));
  const run =
    planned &&
    (await tx.planRun.findUniqueOrThrow({
      where: { id: planned.runId },
      select: { id: true, days: true, plan: true, warning: true }, // its snapshot is megabytes
    }));
  const plan = run?.plan as WeekPlan | null | undefined;
  const lost = new Set(unmade.map(({ visitId }) => visitId));
  const spared = planned ? await costOfUnmade(tx, planned.runId, visits.filter(isOn(dates(planned))), lost) : {};
  return {
    weekOf: query.weekOf,
    days: query.days,
    planRunId: run?.id ?? null,
    planned: planned && run && { weekOf: planned.from, days: run.days },
    routes: routes.map(({ technician, ...route }) => ({
      ...route,
      technicianName: technician.name,
      date: dateText(route.routeDate),
      leaveAt: route.leaveAt.toISOString(),
      returnAt: route.returnAt.toISOString(),
      lunchFrom: instantOrNull(route.lunchFrom),
      lunchTo: instantOrNull(route.lunchTo),
      visits: visits
        .filter(
          (visit) =>
            visit.technicianId === route.technicianId && visit.visitDate.getTime() === route.routeDate.getTime(),
        )
        .map(toVisitView),
    })),
    cannotBeMade: unmade.filter(({ visitId }) => shown.has(visitId)),
    ...(await leftOutOfWeek(tx, planned && run && { ...run, standing: await standingWork(tx, planned) })),
    cost: run && plan ? { ...(await costNow(tx, run.id, plan, spared)) } : null,
    warning: run?.warning ?? null,
  };
}
