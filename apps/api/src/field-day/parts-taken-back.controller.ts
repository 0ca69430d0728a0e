import { PartTakenBack, PartUse } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { shopNow } from '@deckround/register-store';
import { Body, Controller, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK } from '../http/tokens.js';
import { takeBackPart } from './take-back-part.js';
import { partUses } from './visit-facts.js';

@ApiTags('Part use')
@ApiBearerAuth()
@Controller('v1/part-uses')
export class PartsTakenBackController {
  constructor(
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post(':id/take-back')
  @Allow(['manager'], 'register')
  @Creates(PartUse, 'The used part as it was: it counts no more, and lies in stock again')
  takeBack(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: PartTakenBack }) body: z.infer<typeof PartTakenBack>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const row = await tx.partUse.findUnique({ where: { id } });
      if (row === null) throw new DomainError('not-found', 'There is no such used part: it was taken back, it seems.');
      await takeBackPart(tx, actor, row, body, await shopNow(tx, this.clock.now()));
      return partUses.toView(row);
    });
  }
}
