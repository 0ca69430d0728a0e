import { SYMPTOMS } from '@deckround/catalogue';
import { RoadCall, RoadCallChoice, RoadCallOptions, RoadCallOptionsAsk, SymptomList } from '@deckround/contracts';
import type { Clock } from '@deckround/platform';
import { shopNow } from '@deckround/register-store';
import type { Store } from '@deckround/store';
import { Body, Controller, Get, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { chooseOption, giveOptions } from './answer-road-call.js';

const IdParam = z.uuid();

@ApiTags('Road call')
@ApiBearerAuth()
@Controller('v1')
export class RoadCallAnswersController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('symptoms')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, SymptomList, 'What a caller can tell, and what to ask')
  symptoms() {
    return { items: SYMPTOMS };
  }

  @Post('road-calls/:id/options')
  @Allow(['manager'])
  @Answers(200, RoadCallOptions, 'The best ways to fit the call into the planned days as they stand now')
  options(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: RoadCallOptionsAsk }) body: z.infer<typeof RoadCallOptionsAsk>,
  ) {
    return this.store.inShop(actor.shopId, async (tx) =>
      giveOptions(tx, id, body.daysAhead, await shopNow(tx, this.clock.now())),
    );
  }

  @Post('road-calls/:id/choose')
  @Allow(['manager'])
  @Creates(RoadCall, 'The call is planned; everybody concerned stands at the new time')
  choose(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: RoadCallChoice }) body: z.infer<typeof RoadCallChoice>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) =>
      chooseOption(tx, actor, id, body, await shopNow(tx, this.clock.now())),
    );
  }
}
