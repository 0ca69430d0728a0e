import { pageOf, VisitAnswer, VisitAnswerCreate, VisitAnswerQuery, VisitAnswerReply } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { dateColumn, shopNow } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, siteScope } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { answerView } from './visit-view.js';
import { findVisit } from './visits.controller.js';

const IdParam = z.uuid();

/** The site's word on a visit, and the shop's word on that. Moving itself is done with the week. */
@ApiTags('Visit answer')
@ApiBearerAuth()
@Controller('v1')
export class VisitAnswersController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post('visits/:id/answers')
  @Allow(['manager', 'supervisor'])
  @Creates(VisitAnswer, 'The shop sees it; what was said of this visit before no longer counts')
  say(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: VisitAnswerCreate }) body: z.infer<typeof VisitAnswerCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const now = await shopNow(tx, this.clock.now());
      const visit = await findVisit(tx, actor, id);
      if (visit.state === 'done' || visit.state === 'cancelled')
        throw new DomainError('visit-closed', 'The visit is done or given up: call the shop instead.');
      await tx.visitAnswer.updateMany({
        where: { visitId: id, state: { in: ['noted', 'open', 'declined'] } },
        data: { state: 'withdrawn', version: { increment: 1 } },
      });
      const row = await tx.visitAnswer.create({
        data: {
          shopId: actor.shopId,
          siteId: visit.siteId,
          visitId: id,
          kind: body.kind,
          aboutStart: visit.startAt,
          aboutDate: visit.visitDate,
          reason: body.reason.trim(),
          days: [...new Set(body.days)].sort().map(dateColumn),
          saidAt: now,
          saidBy: actor.id,
          state: body.kind === 'suits' ? 'noted' : 'open',
        },
      });
      const act = {
        action: `visit.${body.kind === 'suits' ? 'suits' : 'move-asked'}`,
        subjectKind: 'visit',
        subjectId: id,
      };
      await audit(tx, actor, act, now);
      return answerView(row);
    });
  }

  @Get('visit-answers')
  @Allow(['manager', 'supervisor'])
  @Answers(200, pageOf(VisitAnswer, 'VisitAnswer'), 'What was said, in order of time')
  async list(@Caller() actor: Actor, @Query({ schema: VisitAnswerQuery }) query: z.infer<typeof VisitAnswerQuery>) {
    const { cursor, limit, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.visitAnswer.findMany({
        where: { AND: [siteScope(actor), equal, afterCursor('saidAt', readCursor(cursor), (key) => new Date(key))] },
        orderBy: [{ saidAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.saidAt.toISOString(), answerView);
  }

  @Get('visit-answers/:id')
  @Allow(['manager', 'supervisor'])
  @Answers(200, VisitAnswer, 'The answer; its ETag is needed to reply')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => find(tx, actor, id));
    reply.header('etag', etagOf(row.version));
    return answerView(row);
  }

  @Post('visit-answers/:id/reply')
  @Allow(['manager'])
  @Changes(VisitAnswer, 'The site sees it. Moving the visit to a day that suits replies by itself.')
  async reply(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: VisitAnswerReply }) body: z.infer<typeof VisitAnswerReply>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await find(tx, actor, id);
      requireVersion(ifMatch, before.version);
      if (before.state !== 'open')
        throw new DomainError('conflict', 'It is answered already, or was withdrawn: read it again.');
      const repliedAt = await shopNow(tx, this.clock.now());
      const act = { action: `visit.move-${body.decision}`, subjectKind: 'visit-answer', subjectId: id };
      await audit(tx, actor, act, repliedAt);
      return tx.visitAnswer.update({
        where: { id },
        data: {
          state: body.decision,
          reply: body.reply.trim(),
          repliedAt,
          repliedBy: actor.id,
          version: { increment: 1 },
        },
      });
    });
    reply.header('etag', etagOf(row.version));
    return answerView(row);
  }
}

async function find(tx: Tx, actor: Actor, id: string) {
  const row = await tx.visitAnswer.findFirst({ where: { id, ...siteScope(actor) } });
  if (!row) throw new DomainError('not-found', 'There is no such answer, or it is not yours to see.');
  return row;
}
