import { PageQuery, PlanDifference, PlanDifferenceQuery, PlanRun, PlanRunCreate, pageOf } from '@deckround/contracts';
import type { JobQueue } from '@deckround/jobs';
import { planDifference, type WeekPlan } from '@deckround/planning';
import { type Config, DomainError, type Logger } from '@deckround/platform';
import { addDays } from '@deckround/register';
import { dateColumn, dateText } from '@deckround/register-store';
import { cancelPlanRun, PLAN_DOCUMENTS, type Prisma, type Store, type Tx } from '@deckround/store';
import { Body, Controller, Get, HttpCode, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CONFIG, LOGGER, QUEUE, STORE } from '../http/tokens.js';
import { instantOrNull } from '../register/values.js';
import { askRun } from './ask-run.js';
import { sendProgress } from './progress.js';

/** A run without its documents, and which one follows it. */
const SHOWN = { omit: PLAN_DOCUMENTS, include: { nextRun: { select: { id: true } } } } as const;
type Row = Prisma.PlanRunGetPayload<typeof SHOWN>;
const IdParam = z.uuid();
/** Combining routes takes some seconds itself: it pays in longer runs. */
const COMBINE_FROM_SECONDS = 20;

@ApiTags('Plan')
@ApiBearerAuth()
@Controller('v1/plan-runs')
export class PlansController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(QUEUE) private readonly queue: JobQueue,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(LOGGER) private readonly logger: Logger,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Allow(['manager'], 'read')
  @Answers(200, pageOf(PlanRun, 'PlanRun'), 'Plan runs in order of asking')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.planRun.findMany({
        where: afterCursor('askedAt', readCursor(cursor), (key) => new Date(key)),
        orderBy: [{ askedAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
        ...SHOWN,
      }),
    );
    return toPage(rows, limit, (row) => row.askedAt.toISOString(), toView);
  }

  @Post()
  @Allow(['manager'])
  @Creates(PlanRun, 'The plan is asked for; watch its progress')
  async ask(
    @Caller() actor: Actor,
    @Body({ schema: PlanRunCreate }) body: z.infer<typeof PlanRunCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const view = await this.once.create(actor, request, reply, async (tx) => {
      const first = await this.askWeeks(tx, actor, body);
      return toView(await find(tx, first));
    });
    await askRun(this.queue, this.logger, 'plan', actor.shopId, view.id);
    return view;
  }

  /** @returns the run of the first week; each leads to the next */
  private async askWeeks(tx: Tx, actor: Actor, body: z.infer<typeof PlanRunCreate>): Promise<string> {
    const lastDate = addDays(body.weekOf, body.weeks * body.days - 1);
    const runs: string[] = [];
    for (let week = 0; week < body.weeks; week++) {
      const weekOf = addDays(body.weekOf, week * body.days);
      const { id } = await tx.planRun.create({
        data: {
          shopId: actor.shopId,
          weekOf: dateColumn(weekOf),
          days: body.days,
          seed: body.seed,
          seconds: body.seconds ?? this.config.PLAN_SECONDS,
          iterations: body.iterations ?? null,
          threads: body.threads ?? (body.iterations === undefined ? this.config.PLAN_THREADS : 1),
          combine: body.combine ?? (body.seconds ?? 0) >= COMBINE_FROM_SECONDS,
          askedBy: actor.id,
          followsRunId: runs.at(-1) ?? null,
          replansTo: week < body.weeks - 1 ? dateColumn(lastDate) : null,
        },
        select: { id: true },
      });
      runs.push(id);
    }
    return runs[0]!;
  }

  @Get(':id')
  @Allow(['manager'], 'read')
  @Answers(200, PlanRun, 'Where the plan run stands')
  async read(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return toView(await this.store.inShop(actor.shopId, (tx) => find(tx, id)));
  }

  @Post(':id/cancel')
  @Allow(['manager'])
  @HttpCode(202)
  @Answers(
    202,
    PlanRun,
    'The search stops within a moment and keeps the best plan it has; weeks that were to follow are not begun',
  )
  async cancel(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.store.inShop(actor.shopId, async (tx) => {
      await find(tx, id);
      await cancelPlanRun(tx, id);
      return toView(await find(tx, id));
    });
  }

  @Get(':id/progress')
  @Allow(['manager'], 'read')
  @ApiOkResponse({
    description: 'Server-sent events `progress` (the plan run) until `end`',
    content: { 'text/event-stream': { schema: { type: 'string' } } },
  })
  async progress(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Req() request: FastifyRequest,
    @Res() reply: FastifyReply,
  ) {
    const look = async () => toView(await this.store.inShop(actor.shopId, (tx) => find(tx, id)));
    await sendProgress(request, reply, look, (run) => !['asked', 'running'].includes(run.status));
  }

  @Get(':id/difference')
  @Allow(['manager'], 'read')
  @Answers(200, PlanDifference, 'How this plan differs from another one')
  async difference(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Query({ schema: PlanDifferenceQuery }) { from }: z.infer<typeof PlanDifferenceQuery>,
  ) {
    const [before, after] = [await this.document(actor, from, 'plan'), await this.document(actor, id, 'plan')];
    return planDifference(before as WeekPlan, after as WeekPlan);
  }

  @Get(':id/snapshot')
  @Allow(['manager'])
  @ApiOkResponse({
    description: 'The planning snapshot: everything the plan was made of, to keep, mail or replay',
    content: { 'application/json': { schema: { type: 'object' } } },
  })
  async snapshot(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.document(actor, id, 'snapshot');
  }

  @Get(':id/plan')
  @Allow(['manager'])
  @ApiOkResponse({
    description: 'The whole plan document with its reasons',
    content: { 'application/json': { schema: { type: 'object' } } },
  })
  async plan(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.document(actor, id, 'plan');
  }

  private async document(actor: Actor, id: string, which: 'snapshot' | 'plan'): Promise<unknown> {
    return this.store.inShop(actor.shopId, async (tx) => {
      const { status } = await find(tx, id);
      const where = { id };
      const document =
        which === 'plan'
          ? (await tx.planRun.findUniqueOrThrow({ where, select: { plan: true } })).plan
          : (await tx.planRun.findUniqueOrThrow({ where, select: { snapshot: true } })).snapshot;
      if (document === null)
        throw new DomainError('plan-not-ready', `The plan run is ${status}: its ${which} is not there yet.`);
      return document;
    });
  }
}

async function find(tx: Tx, id: string): Promise<Row> {
  const row = await tx.planRun.findFirst({ where: { id }, ...SHOWN });
  if (!row) throw new DomainError('not-found', 'There is no such plan run.');
  return row;
}

function toView(row: Row) {
  return {
    id: row.id,
    version: row.version,
    status: row.status,
    weekOf: dateText(row.weekOf),
    days: row.days,
    seed: row.seed,
    seconds: row.seconds,
    threads: row.threads,
    combine: row.combine,
    iterations: row.iterations,
    cancelAsked: row.cancelAsked,
    attempts: row.attempts,
    askedAt: row.askedAt.toISOString(),
    startedAt: instantOrNull(row.startedAt),
    finishedAt: instantOrNull(row.finishedAt),
    totalCents: row.totalCents,
    snapshotHash: row.snapshotHash,
    warning: row.warning,
    progress: row.progress as z.infer<typeof PlanRun>['progress'],
    error: row.error,
    nextRunId: row.nextRun?.id ?? null,
  };
}
