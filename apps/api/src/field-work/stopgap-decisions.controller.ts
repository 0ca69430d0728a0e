import { ForecastRunCreate, Stopgap, StopgapClose, StopgapRenewal } from '@deckround/contracts';
import type { JobQueue } from '@deckround/jobs';
import type { Clock, Logger } from '@deckround/platform';
import { Body, Controller, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, LOGGER, QUEUE } from '../http/tokens.js';
import { askForecast } from '../planning/ask-forecast.js';
import { askRun } from '../planning/ask-run.js';
import { closeStopgap } from './close-stopgap.js';
import { renewStopgap } from './renew-stopgap.js';
import { stopgaps } from './stopgaps.js';

/** What the desk decides about a temporary repair that is still open. */
@ApiTags('Stopgap')
@ApiBearerAuth()
@Controller('v1/stopgaps')
export class StopgapDecisionsController {
  constructor(
    @Inject(QUEUE) private readonly queue: JobQueue,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(LOGGER) private readonly logger: Logger,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post(':id/renew')
  @Allow(['manager'], 'register')
  @Creates(Stopgap, 'The stopgap with its new limit; a forecast that goes by it is asked for')
  async renew(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: StopgapRenewal }) body: z.infer<typeof StopgapRenewal>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    let runId: string | undefined;
    const view = await this.once.create(actor, request, reply, async (tx) => {
      const now = this.clock.now();
      await renewStopgap(tx, actor, id, body, now);
      runId = (await askForecast(tx, actor, ForecastRunCreate.parse({}), now)).id;
      return stopgaps.toView(await tx.stopgap.findUniqueOrThrow({ where: { id } }));
    });
    if (runId !== undefined) await askRun(this.queue, this.logger, 'forecast', actor.shopId, runId);
    return view;
  }

  @Post(':id/close')
  @Allow(['manager'], 'register')
  @Creates(Stopgap, 'The closed stopgap: its return is owed no more, and stands in no visit to come')
  close(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: StopgapClose }) body: z.infer<typeof StopgapClose>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      await closeStopgap(tx, actor, id, body, this.clock.now());
      return stopgaps.toView(await tx.stopgap.findUniqueOrThrow({ where: { id } }));
    });
  }
}
