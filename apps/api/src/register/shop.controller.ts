import { Shop, ShopChanges } from '@deckround/contracts';
import type { Clock, Config } from '@deckround/platform';
import { shopNow, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Patch, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Changes } from '../http/answer.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { dateOrNull, given, requireTimeZone } from './values.js';

@ApiTags('Shop')
@ApiBearerAuth()
@Controller('v1/shop')
export class ShopController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Get()
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, Shop, 'The shop; its ETag is needed to change it')
  async read(@Caller() actor: Actor, @Res({ passthrough: true }) reply: FastifyReply) {
    const view = await this.store.inShop(actor.shopId, (tx) => this.view(tx, actor));
    reply.header('etag', etagOf(view.version));
    return view;
  }

  @Patch()
  @Allow(['manager'])
  @Changes(Shop, 'The shop as it stands now')
  async change(
    @Caller() actor: Actor,
    @Body({ schema: ShopChanges }) body: z.infer<typeof ShopChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    if (body.timeZone !== undefined) requireTimeZone(body.timeZone);
    const view = await this.store.inShop(actor.shopId, async (tx) => {
      requireVersion(ifMatch, (await tx.shop.findFirstOrThrow()).version);
      await tx.shop.update({ where: { id: actor.shopId }, data: { ...given(body), version: { increment: 1 } } });
      return this.view(tx, actor);
    });
    reply.header('etag', etagOf(view.version));
    return view;
  }

  private async view(tx: Tx, actor: Actor) {
    const shop = await tx.shop.findFirstOrThrow();
    const newest = { where: { status: 'done' }, orderBy: { finishedAt: 'desc' } } as const;
    const [forecast, plan] = [
      await tx.forecastRun.findFirst({ ...newest, select: { asOf: true } }),
      await tx.planRun.findFirst({ ...newest, select: { weekOf: true } }),
    ];
    return {
      ...shop,
      mapTiles: this.config.MAP_TILES ? { address: this.config.MAP_TILES, credit: this.config.MAP_TILES_CREDIT } : null,
      today: wallClockOf(await shopNow(tx, this.clock.now()), shop.timeZone).slice(0, 10),
      forecastAsOf: dateOrNull(forecast?.asOf ?? null),
      plannedWeekOf: dateOrNull(plan?.weekOf ?? null),
      counts: actor.role === 'supervisor' ? null : await counts(tx),
    };
  }
}

async function counts(tx: Tx) {
  return {
    customers: await tx.customer.count(),
    sites: await tx.site.count(),
    machines: await tx.machine.count(),
    technicians: await tx.technician.count(),
    readingsSetAside: await tx.reading.count({ where: { status: 'set-aside', decidedAt: null } }),
    openRoadCalls: await tx.roadCall.count({ where: { state: 'open' } }),
    toDecide:
      (await tx.visitAnswer.count({ where: { state: 'open' } })) +
      (await tx.fieldRecord.count({ where: { state: 'review' } })),
  };
}
