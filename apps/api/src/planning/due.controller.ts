import { DueItem, DueQuery, ForecastRun, ForecastRunCreate, pageOf, UsageForecast } from '@deckround/contracts';
import type { JobQueue } from '@deckround/jobs';
import { type Clock, DomainError, type Logger } from '@deckround/platform';
import { addDays, weekdayOf } from '@deckround/register';
import { dateColumn, dateText, machineInUse, todayOf } from '@deckround/register-store';
import type { Prisma, Store } from '@deckround/store';
import { chanceOverdue } from '@deckround/upkeep';
import { Body, Controller, Get, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { readCursor, toPage } from '../http/paging.js';
import { CLOCK, LOGGER, QUEUE, STORE } from '../http/tokens.js';
import { dateOrNull, instantOrNull } from '../register/values.js';
import { askRun } from './ask-run.js';

/** Items that fall due within no foreseeable time come last. */
const NEVER = '9999-12-31';

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
  @Answers(200, pageOf(DueItem, 'DueItem'), 'What falls due, soonest first')
  async due(@Caller() actor: Actor, @Query({ schema: DueQuery }) query: z.infer<typeof DueQuery>) {
    const cursor = readCursor(query.cursor);
    const { rows, today } = await this.store.inShop(actor.shopId, async (tx) => {
      const today = await todayOf(tx, this.clock.now());
      const rows = await tx.dueForecast.findMany({
        where: {
          AND: [
            machineScope(actor),
            { machine: machineInUse(today) },
            query.siteId === undefined ? {} : { machine: { siteId: query.siteId } },
            query.machineId === undefined ? {} : { machineId: query.machineId },
            query.code === undefined ? {} : { code: query.code },
            query.kind === undefined
              ? {}
              : query.kind === 'stopgap'
                ? { stopgapId: { not: null } }
                : { stopgapId: null },
            query.until === undefined ? {} : { p50: { lte: dateColumn(query.until) } },
            cursor === null ? {} : afterDue(cursor),
          ],
        },
        include: { machine: { include: { site: true } } },
        orderBy: [{ p50: { sort: 'asc', nulls: 'last' } }, { id: 'asc' }],
        take: query.overdueAtLeast === undefined ? query.limit + 1 : 10_000,
      });
      return { rows, today };
    });
    const wanted =
      query.overdueAtLeast === undefined
        ? rows
        : rows.filter(
            (row) => chanceOverdue({ ...row, costFrom: dateText(row.costFrom) }, today) >= query.overdueAtLeast!,
          );
    return toPage(
      wanted,
      query.limit,
      (row) => dateOrNull(row.p50) ?? NEVER,
      (row) => dueViewFor(actor, row),
    );
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
      const asOf = body.asOf ?? (await todayOf(tx, this.clock.now()));
      const costFrom = body.costFrom ?? nextMonday(asOf);
      if (costFrom <= addDays(asOf, -1) || costFrom > addDays(asOf, 60)) {
        throw new DomainError('invalid-input', 'The first day priced has to lie within 60 days after asOf.', [
          { pointer: '/costFrom', detail: `between ${asOf} and ${addDays(asOf, 60)}` },
        ]);
      }
      const row = await tx.forecastRun.create({
        data: {
          shopId: actor.shopId,
          asOf: dateColumn(asOf),
          costFrom: dateColumn(costFrom),
          costDays: body.costDays,
          askedBy: actor.kind === 'person' ? actor.id : null,
        },
      });
      return toRunView(row);
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

function afterDue({ key, id }: { key: string; id: string }): Prisma.DueForecastWhereInput {
  if (key === NEVER) return { p50: null, id: { gt: id } };
  const p50 = dateColumn(key);
  if (Number.isNaN(p50.getTime()))
    throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
  return { OR: [{ p50: { gt: p50 } }, { p50: null }, { p50, id: { gt: id } }] };
}

function nextMonday(date: string): string {
  return addDays(date, 8 - weekdayOf(date));
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

function toDueView(row: Prisma.DueForecastGetPayload<{ include: { machine: { include: { site: true } } } }>) {
  const why = row.why as Record<string, unknown>;
  return {
    id: row.id,
    machineId: row.machineId,
    machineCode: row.machine.code,
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
  if (actor.role === 'supervisor') return { ...view, why: null, timingCostCents: null, deferralCents: null };
  return { ...view, why: null };
}
