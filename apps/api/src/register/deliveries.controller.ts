import { DeliveryTakenBack, PartOrder } from '@deckround/contracts';
import type { Clock } from '@deckround/platform';
import { Body, Controller, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK } from '../http/tokens.js';
import { takeBackDelivery } from './order-deliveries.js';
import { partOrders } from './part-orders.js';

@ApiTags('Part order')
@ApiBearerAuth()
@Controller('v1/part-orders')
export class DeliveriesController {
  constructor(
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post(':id/take-back')
  @Allow(['manager'], 'register')
  @Creates(PartOrder, 'What was received by mistake is off the shelf, and still to come')
  takeBack(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: DeliveryTakenBack }) body: z.infer<typeof DeliveryTakenBack>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      await takeBackDelivery(tx, actor, id, body, this.clock.now());
      return partOrders.toView(await tx.partOrder.findUniqueOrThrow({ where: { id } }));
    });
  }
}
