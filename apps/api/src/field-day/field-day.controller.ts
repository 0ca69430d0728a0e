import { FieldDay, FieldDayQuery } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { shopNow, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { chooseDay, loadDay } from './load-day.js';

@ApiTags('Field day')
@ApiBearerAuth()
@Controller('v1/field-day')
export class FieldDayController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, FieldDay, 'The day, whole')
  read(@Caller() actor: Actor, @Query({ schema: FieldDayQuery }) query: z.infer<typeof FieldDayQuery>) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const technicianId = query.technicianId ?? (await technicianOf(tx, actor));
      const { timeZone } = await tx.shop.findFirstOrThrow();
      const today = wallClockOf(await shopNow(tx, this.clock.now()), timeZone).slice(0, 10);
      const { dates, date } = await chooseDay(tx, technicianId, today, query.date);
      return { dates, ...(await loadDay(tx, technicianId, date)) };
    });
  }
}

/** The technician whose days this person drives. @throws DomainError not-found */
export async function technicianOf(tx: Tx, actor: Actor): Promise<string> {
  const technician = await tx.technician.findFirst({ where: { personId: actor.id } });
  if (!technician)
    throw new DomainError(
      'not-found',
      'Nobody has said yet whose days you drive. The shop manager sets technicianId with PATCH /v1/people/{id}.',
    );
  return technician.id;
}
