import { pageOf, Visit, VisitChanges, VisitFinish, VisitQuery } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { BEGUN, dateColumn, shopNow } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Patch, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, siteScope } from '../access/actor.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { cancelVisit } from './cancel-visit.js';
import { confirmVisit } from './confirm-visit.js';
import { finishVisit } from './finish-visit.js';
import { lockVisit } from './lock-visit.js';
import { VISIT_INCLUDE, type VisitRow, visitViewFor } from './visit-view.js';

const IdParam = z.uuid();

@ApiTags('Visit')
@ApiBearerAuth()
@Controller('v1/visits')
export class VisitsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(Once) private readonly once: Once,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, pageOf(Visit, 'Visit'), 'Visits in order of start')
  async list(@Caller() actor: Actor, @Query({ schema: VisitQuery }) query: z.infer<typeof VisitQuery>) {
    const { cursor, limit, from, to, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.visit.findMany({
        where: {
          AND: [
            siteScope(actor),
            equal,
            from === undefined ? {} : { visitDate: { gte: dateColumn(from) } },
            to === undefined ? {} : { visitDate: { lte: dateColumn(to) } },
            afterCursor('startAt', readCursor(cursor), (key) => new Date(key)),
          ],
        },
        include: VISIT_INCLUDE,
        orderBy: [{ startAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(
      rows,
      limit,
      (row) => row.startAt.toISOString(),
      (row) => visitViewFor(actor, row),
    );
  }

  @Get(':id')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, Visit, 'The visit; its ETag is needed to change it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return answer(reply, actor, await this.store.inShop(actor.shopId, (tx) => findVisit(tx, actor, id)));
  }

  @Patch(':id')
  @Allow(['manager'])
  @Changes(Visit, 'The visit as it stands now')
  async change(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: VisitChanges }) body: z.infer<typeof VisitChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      await lockVisit(tx, id);
      const before = await findVisit(tx, actor, id);
      requireVersion(ifMatch, before.version);
      if (before.state === 'done')
        throw new DomainError('visit-closed', 'The visit is done: what was done cannot be planned any more.');
      if (before.state === 'cancelled' && body.state !== 'cancelled')
        throw new DomainError('visit-closed', 'The visit was cancelled: plan the week again to have its work done.');
      if (body.state === 'cancelled') {
        await refuseBegun(tx, id);
        await cancelVisit(tx, before, this.clock.now());
      } else {
        const { pinned, ...promise } = body;
        if (pinned !== undefined) {
          await tx.visit.update({ where: { id }, data: { pinned, version: { increment: 1 } } });
        }
        if (Object.keys(promise).length > 0)
          await confirmVisit(tx, before, promise, await shopNow(tx, this.clock.now()));
      }
      return findVisit(tx, actor, id);
    });
    return answer(reply, actor, row);
  }

  @Post(':id/finish')
  @Allow(['manager', 'technician'])
  @Creates(Visit, 'The visit is done: its completions and readings are recorded, its stopgaps made good')
  finish(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: VisitFinish }) body: z.infer<typeof VisitFinish>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      await lockVisit(tx, id);
      await finishVisit(tx, actor, await findVisit(tx, actor, id), body, await shopNow(tx, this.clock.now()));
      return visitViewFor(actor, await findVisit(tx, actor, id));
    });
  }
}

/** @throws DomainError not-found */
export async function findVisit(tx: Tx, actor: Actor, id: string): Promise<VisitRow> {
  const row = await tx.visit.findFirst({ where: { id, ...siteScope(actor) }, include: VISIT_INCLUDE });
  if (!row)
    throw new DomainError(
      'not-found',
      'There is no such visit, or it is not yours to see. A re-plan replaces proposed visits.',
    );
  return row;
}

/** @throws DomainError conflict: what was recorded on a cancelled visit would never be charged */
async function refuseBegun(tx: Tx, id: string): Promise<void> {
  if ((await tx.visit.count({ where: { AND: [{ id }, BEGUN] } })) === 0) return;
  throw new DomainError(
    'conflict',
    'Something has been recorded on this visit: finish it, so that it is charged. What was not done stays due.',
  );
}

function answer(reply: FastifyReply, actor: Actor, row: VisitRow) {
  reply.header('etag', etagOf(row.version));
  return visitViewFor(actor, row);
}
