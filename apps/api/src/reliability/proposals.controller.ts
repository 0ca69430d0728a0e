import { IntervalProposal, LifeRun, ProposalDecision, ProposalQuery, pageOf } from '@deckround/contracts';
import type { JobQueue } from '@deckround/jobs';
import { type Clock, DomainError, type Logger } from '@deckround/platform';
import { dateColumn, dateText, shopNow, wallClockOf } from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, LOGGER, QUEUE, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { askRun } from '../planning/ask-run.js';
import { hoursText, instantOrNull } from '../register/values.js';

const WITH_ITEM = { serviceItem: { include: { plan: { include: { class: true } } } } } as const;
type Row = Prisma.IntervalProposalGetPayload<{ include: typeof WITH_ITEM }>;
const RowId = z.uuid();

/** Interval changes that the shop's own lives suggest; a person decides, and can take an accepted one back. */
@ApiTags('Reliability')
@ApiBearerAuth()
@Controller('v1/reliability')
export class ProposalsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(QUEUE) private readonly queue: JobQueue,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(LOGGER) private readonly logger: Logger,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post('refits')
  @Allow(['manager'])
  @Creates(LifeRun, 'Asks for a re-fit of all lives now; one runs each month by itself')
  async refit(@Caller() actor: Actor, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply) {
    const view = await this.once.create(actor, request, reply, async (tx) => {
      const underWay = await tx.lifeRun.findFirst({ where: { status: { in: ['asked', 'running'] } } });
      if (underWay) return runView(underWay);
      const { timeZone } = await tx.shop.findFirstOrThrow();
      const row = await tx.lifeRun.create({
        data: {
          shopId: actor.shopId,
          asOf: dateColumn(wallClockOf(await this.now(tx), timeZone).slice(0, 10)),
          askedBy: actor.kind === 'person' ? actor.id : null,
          askedAt: this.clock.now(),
        },
      });
      return runView(row);
    });
    await askRun(this.queue, this.logger, 'lives', actor.shopId, view.id);
    return view;
  }

  @Get('refits/:id')
  @Allow(['manager', 'technician'])
  @Answers(200, LifeRun, 'How far a re-fit is')
  async run(@Caller() actor: Actor, @Param('id', { schema: RowId }) id: string) {
    const row = await this.store.inShop(actor.shopId, (tx) => tx.lifeRun.findFirst({ where: { id } }));
    if (!row) throw new DomainError('not-found', 'There is no such re-fit.');
    return runView(row);
  }

  @Get('interval-proposals')
  @Allow(['manager', 'technician'])
  @Answers(200, pageOf(IntervalProposal, 'IntervalProposal'), 'Interval changes proposed and what became of them')
  async list(@Caller() actor: Actor, @Query({ schema: ProposalQuery }) query: z.infer<typeof ProposalQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.intervalProposal.findMany({
        where: {
          AND: [
            query.state === undefined ? {} : { state: query.state },
            afterCursor('proposedOn', readCursor(query.cursor), (key) => new Date(key)),
          ],
        },
        include: WITH_ITEM,
        orderBy: [{ proposedOn: 'asc' }, { id: 'asc' }],
        take: query.limit + 1,
      }),
    );
    return toPage(rows, query.limit, (row) => row.proposedOn.toISOString(), proposalView);
  }

  @Get('interval-proposals/:id')
  @Allow(['manager', 'technician'])
  @Answers(200, IntervalProposal, 'The proposal with its evidence; its ETag is needed to decide')
  read(
    @Caller() actor: Actor,
    @Param('id', { schema: RowId }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const row = await find(tx, id);
      reply.header('etag', etagOf(row.version));
      return proposalView(row);
    });
  }

  @Post('interval-proposals/:id/accept')
  @Allow(['manager'])
  @Changes(IntervalProposal, 'Accepts it: the item’s interval changes from today on')
  accept(
    @Caller() actor: Actor,
    @Param('id', { schema: RowId }) id: string,
    @Headers('if-match') ifMatch: string | undefined,
    @Body({ schema: ProposalDecision }) body: z.infer<typeof ProposalDecision>,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.decide(actor, id, ifMatch, reply, async (tx, row) => {
      requireState(row, 'proposed');
      const { serviceItem } = row;
      if (hoursText(serviceItem.intervalHours) !== hoursText(row.currentHours))
        throw new DomainError(
          'conflict',
          `The interval is ${hoursText(serviceItem.intervalHours) ?? 'not by hours'} now, not ${hoursText(row.currentHours)} as when this was proposed: ask for a re-fit.`,
        );
      await setInterval(tx, row, row.proposedHours);
      return { state: 'accepted', decidedBy: personOf(actor), decidedAt: await this.now(tx), decisionNote: body.note };
    });
  }

  @Post('interval-proposals/:id/refuse')
  @Allow(['manager'])
  @Changes(IntervalProposal, 'Refuses it; the same change is not proposed again')
  refuse(
    @Caller() actor: Actor,
    @Param('id', { schema: RowId }) id: string,
    @Headers('if-match') ifMatch: string | undefined,
    @Body({ schema: ProposalDecision }) body: z.infer<typeof ProposalDecision>,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.decide(actor, id, ifMatch, reply, async (tx, row) => {
      requireState(row, 'proposed');
      return { state: 'refused', decidedBy: personOf(actor), decidedAt: await this.now(tx), decisionNote: body.note };
    });
  }

  @Post('interval-proposals/:id/reverse')
  @Allow(['manager'])
  @Changes(IntervalProposal, 'Takes an accepted change back: the interval is what it was before')
  reverse(
    @Caller() actor: Actor,
    @Param('id', { schema: RowId }) id: string,
    @Headers('if-match') ifMatch: string | undefined,
    @Body({ schema: ProposalDecision }) body: z.infer<typeof ProposalDecision>,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.decide(actor, id, ifMatch, reply, async (tx, row) => {
      requireState(row, 'accepted');
      if (hoursText(row.serviceItem.intervalHours) !== hoursText(row.proposedHours))
        throw new DomainError(
          'conflict',
          'The interval was changed again since: set it at the service item if it should be what it was before.',
        );
      await setInterval(tx, row, row.currentHours);
      const note = body.note === '' ? row.decisionNote : body.note;
      return { state: 'reversed', reversedBy: personOf(actor), reversedAt: await this.now(tx), decisionNote: note };
    });
  }

  private now(tx: Tx): Promise<Date> {
    return shopNow(tx, this.clock.now());
  }

  private decide(
    actor: Actor,
    id: string,
    ifMatch: string | undefined,
    reply: FastifyReply,
    change: (tx: Tx, row: Row) => Promise<Prisma.IntervalProposalUncheckedUpdateInput>,
  ) {
    return this.store.inShop(actor.shopId, async (tx) => {
      await tx.$executeRaw`select 1 from interval_proposal where id = ${id}::uuid for update`;
      const row = await find(tx, id);
      requireVersion(ifMatch, row.version);
      await tx.intervalProposal.update({
        where: { id },
        data: { ...(await change(tx, row)), version: { increment: 1 } },
      });
      const after = await find(tx, id);
      reply.header('etag', etagOf(after.version));
      return proposalView(after);
    });
  }
}

async function find(tx: Tx, id: string): Promise<Row> {
  const row = await tx.intervalProposal.findFirst({ where: { id }, include: WITH_ITEM });
  if (!row) throw new DomainError('not-found', 'There is no such proposal.');
  return row;
}

function requireState(row: Row, state: string): void {
  if (row.state !== state)
    throw new DomainError('conflict', `The proposal is ${row.state}: only one that is ${state} allows this.`);
}

async function setInterval(tx: Tx, row: Row, hours: Row['currentHours']): Promise<void> {
  await tx.serviceItem.update({
    where: { id: row.serviceItemId },
    data: { intervalHours: hours, version: { increment: 1 } },
  });
}

const personOf = (actor: Actor) => (actor.kind === 'person' ? actor.id : null);

function runView(row: Prisma.LifeRunGetPayload<object>) {
  return {
    id: row.id,
    status: row.status,
    asOf: dateText(row.asOf),
    askedAt: row.askedAt.toISOString(),
    finishedAt: instantOrNull(row.finishedAt),
    error: row.error,
  };
}

function proposalView(row: Row) {
  return {
    id: row.id,
    serviceItemId: row.serviceItemId,
    itemCode: row.serviceItem.code,
    itemTitle: row.serviceItem.title,
    machineClass: row.serviceItem.plan.class.code,
    state: row.state,
    currentHours: hoursText(row.currentHours),
    proposedHours: String(row.proposedHours),
    savesCentsPerThousandHours: row.savesCentsPerThousandHours,
    evidence: row.evidence as Record<string, unknown>,
    sentence: row.sentence,
    proposedOn: dateText(row.proposedOn),
    decidedAt: instantOrNull(row.decidedAt),
    decisionNote: row.decisionNote,
    reversedAt: instantOrNull(row.reversedAt),
    version: row.version,
  };
}
