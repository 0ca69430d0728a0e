import { TravelLearn, TravelLearned } from '@deckround/contracts';
import { TravelSettings } from '@deckround/planning';
import { DEFAULT_SHOP } from '@deckround/register';
import { learnTravel } from '@deckround/routing';
import { Body, Controller, Inject, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Creates } from '../http/answer.js';
import { Once } from '../http/once.js';

@ApiTags('Travel')
@ApiBearerAuth()
@Controller('v1/travel-settings')
export class TravelController {
  constructor(@Inject(Once) private readonly once: Once) {}

  @Post('learn')
  @Allow(['manager'], 'register')
  @Creates(TravelLearned, 'Settings after the drives, taken over where that was asked for')
  learn(
    @Caller() actor: Actor,
    @Body({ schema: TravelLearn }) { drives, apply }: z.infer<typeof TravelLearn>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const shop = await tx.shop.findFirstOrThrow();
      const kept = shop.settings as Record<string, unknown>;
      const present = TravelSettings.parse(kept.travel ?? DEFAULT_SHOP.travel);
      const learned = learnTravel(present, drives);
      const travel = { ...learned.settings, kind: 'geodesic' };
      if (apply) {
        const settings = { ...kept, travel } as object;
        await tx.shop.update({ where: { id: actor.shopId }, data: { settings, version: { increment: 1 } } });
      }
      return { ...learned, before: present, applied: apply };
    });
  }
}
