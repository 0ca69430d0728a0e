import {
  DueItem,
  DueQuery,
  DueSummary,
  DueSummaryQuery,
  ForecastRun,
  ForecastRunCreate,
  pageOf,
  UsageForecast,
} from '@deckround/contracts';
import type { JobQueue } from '@deckround/jobs';
import { type Clock, DomainError, type Logger } from '@deckround/platform';
import { dateText, todayOf } from '@deckround/register-store';
import type { Prisma, Store } from '@deckround/store';
import { Body, Controller, Get, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, LOGGER, QUEUE, STORE } from '../http/tokens.js';
import { dateOrNull, instantOrNull } from '../register/values.js';
import { askForecast } from './ask-forecast.js';
import { askRun } from './ask-run.js';
import { type DueRow, readDuePage, sumUpDue } from './due-list.js';

@ApiTags('Due')
@ApiBearerAuth()
@Controller('v1')
export class DueController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(QUEUE) private readonly queue: JobQueue,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(LOGGER) private readonly logger: Logger,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('due')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, pageOf(DueItem, 'DueItem'), 'What falls due, in the order asked for')
  async due(@Caller() actor: Actor, @Query({ schema: DueQuery }) query: z.infer<typeof DueQuery>) {
    if (query.order !== 'date') mayKnowCosts(actor);
    const { rows, next } = await this.store.inShop(actor.shopId, async (tx) =>
      readDuePage(tx, actor, await todayOf(tx, this.clock.now()), query),
    );
    return { items: rows.map((row) => dueViewFor(actor, row)), next };
  }

  @Get('due/summary')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, DueSummary, 'How much falls due')
  async summary(@Caller() actor: Actor, @Query({ schema: DueSummaryQuery }) query: z.infer<typeof DueSummaryQuery>) {
    const sums = await this.store.inShop(actor.shopId, async (tx) =>
      sumUpDue(tx, actor, await todayOf(tx, this.clock.now()), query),
    );
    if (knowsCosts(actor)) return sums;
    return { ...sums, deferralCents: null, sites: sums.sites.map((site) => ({ ...site, deferralCents: null })) };
  }

  @Get('machines/:id/usage')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, UsageForecast, 'How many hours the machine will have run')
  async usage(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string) {
    const row = await this.store.inShop(actor.shopId, (tx) =>
      tx.usageForecast.findFirst({ where: { machineId: id, ...machineScope(actor) } }),
    );
    if (!row) throw new DomainError('not-found', 'There is no forecast for this machine yet: ask for a forecast run.');
    return { ...row, asOf: dateText(row.asOf) };
  }

  @Post('forecast-runs')
  @Allow(['manager'], 'register')
  @Creates(ForecastRun, 'The forecast is asked for; read it again to see it done')
  async askForecast(
    @Caller() actor: Actor,
    @Body({ schema: ForecastRunCreate }) body: z.infer<typeof ForecastRunCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const view = await this.once.create(actor, request, reply, async (tx) => {
      return toRunView(await askForecast(tx, actor, body, this.clock.now()));
    });
    await askRun(this.queue, this.logger, 'forecast', actor.shopId, view.id);
    return view;
  }

  @Get('forecast-runs/:id')
  @Allow(['manager'], 'read')
  @Answers(200, ForecastRun, 'Where the forecast stands')
  async forecastRun(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string) {
    const row = await this.store.inShop(actor.shopId, (tx) => tx.forecastRun.findFirst({ where: { id } }));
    if (!row) throw new DomainError('not-found', 'There is no such forecast run.');
    return toRunView(row);
  }
}

function toRunView(row: Prisma.ForecastRunGetPayload<object>) {
  const result = row.result as { machines?: number; items?: number } | null;
  return {
    id: row.id,
    status: row.status,
    asOf: dateText(row.asOf),
    costFrom: dateText(row.costFrom),
    costDays: row.costDays,
    askedAt: row.askedAt.toISOString(),
    startedAt: instantOrNull(row.startedAt),
    finishedAt: instantOrNull(row.finishedAt),
    machines: result?.machines ?? null,
    items: result?.items ?? null,
    error: row.error,
  };
}

function toDueView(row: DueRow) {
  const why = row.why as Record<string, unknown>;
  return {
    id: row.id,
    machineId: row.machineId,
    machineCode: row.machine.code,
    machineClass: row.machine.class.code,
    siteId: row.machine.siteId,
    siteName: row.machine.site.name,
    kind: row.stopgapId === null ? 'service' : 'stopgap',
    code: row.code,
    slot: row.slot,
    title: row.title,
    p10: dateOrNull(row.p10),
    p50: dateOrNull(row.p50),
    p90: dateOrNull(row.p90),
    costFrom: dateText(row.costFrom),
    probabilityOverdue: row.probabilityOverdue,
    timingCostCents: row.timingCostCents,
    deferralCents: row.deferralCents,
    sentence: String(why.sentence ?? ''),
    why,
  };
}

/** How the shop reckons stays in the shop; what waiting costs is not shown to a grounds supervisor either. */
function dueViewFor(actor: Actor, row: Parameters<typeof toDueView>[0]) {
  const view = toDueView(row);
  if (actor.role === 'manager' || actor.role === 'technician') return view;
  if (!knowsCosts(actor)) return { ...view, why: null, timingCostCents: null, deferralCents: null };
  return { ...view, why: null };
}

const knowsCosts = (actor: Actor) => actor.role !== 'supervisor';

function mayKnowCosts(actor: Actor) {
  if (knowsCosts(actor)) return;
  throw new DomainError('not-allowed', 'What waiting costs is the shop’s to know: ask for the list by date.');
}
