import { MovePrices, PageQuery, pageOf, VisitMove, VisitMoved, WeekChange } from '@deckround/contracts';
import { moveVisit, priceMoves } from '@deckround/planning';
import { type Clock, DomainError } from '@deckround/platform';
import { dateText, shopNow } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { differenceView } from './difference-view.js';
import { loadStandingWeek } from './load-standing-week.js';
import { requireStamp } from './stamp.js';
import { writeWeekChange } from './write-week-change.js';

const IdParam = z.uuid();

@ApiTags('Week change')
@ApiBearerAuth()
@Controller('v1')
export class MovesController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('visits/:id/move-prices')
  @Allow(['manager'])
  @Answers(200, MovePrices, 'What the visit would cost at every other place of its week')
  prices(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const loaded = await loadAround(tx, id, await shopNow(tx, this.clock.now()));
      const prices = priceMoves(loaded.week, id);
      if (prices === null) throw hasBegun();
      return { ...prices, stamp: loaded.stamp };
    });
  }

  @Post('visits/:id/move')
  @Allow(['manager'])
  @Creates(VisitMoved, 'The visit stands elsewhere now, and its neighbours have their new times')
  move(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: VisitMove }) body: z.infer<typeof VisitMove>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const now = await shopNow(tx, this.clock.now());
      const loaded = await loadAround(tx, id, now);
      if (body.stamp !== undefined) requireStamp(loaded, body.stamp);
      const moved = moveVisit(loaded.week, id, body);
      if (moved === null) {
        throw new DomainError(
          'conflict',
          'The visit cannot go there: ask for its prices again to see where it can, and why not elsewhere.',
        );
      }
      const pin = { visitId: id, pinned: body.pinned };
      await writeWeekChange(tx, actor, loaded, { kind: 'move', ...moved, pin }, now);
      return { visitId: id, difference: await differenceView(tx, moved.change) };
    });
  }

  @Get('week-changes')
  @Allow(['manager'], 'read')
  @Answers(200, pageOf(WeekChange, 'WeekChange'), 'Changes made to planned weeks, in order of time')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.weekChange.findMany({
        where: afterCursor('madeAt', readCursor(cursor), (key) => new Date(key)),
        orderBy: [{ madeAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(
      rows,
      limit,
      (row) => row.madeAt.toISOString(),
      ({ change, ...row }) => ({ ...row, madeAt: row.madeAt.toISOString(), difference: change }),
    );
  }
}

async function loadAround(tx: Tx, visitId: string, now: Date) {
  const visit = await tx.visit.findFirst({ where: { id: visitId } });
  if (!visit)
    throw new DomainError('not-found', 'There is no such visit. A re-plan replaces proposed visits: look again.');
  if (visit.state === 'done' || visit.state === 'cancelled')
    throw new DomainError('visit-closed', `The visit is ${visit.state}: it cannot be moved any more.`);
  const loaded = await loadStandingWeek(tx, dateText(visit.visitDate), now);
  if (loaded.begun.some((row) => row.id === visitId)) throw hasBegun();
  return loaded;
}

function hasBegun(): DomainError {
  return new DomainError(
    'visit-closed',
    'The visit has begun, or nothing of its work is left to do: plan the week again.',
  );
}
