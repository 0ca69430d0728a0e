import { AlertList, OrderList, OrderListQuery } from '@deckround/contracts';
import { orderList } from '@deckround/planning';
import type { Clock } from '@deckround/platform';
import { inUse, partRows } from '@deckround/register';
import { loadRegister, shopNow, wallClockOf } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { partName } from '../register/part-name.js';
import { alertsOf } from './alerts.js';
import { partNeeds } from './part-needs.js';

@ApiTags('Supplies')
@ApiBearerAuth()
@Controller('v1')
export class SuppliesController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get('order-list')
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, OrderList, 'What to order by when, the most urgent first')
  orders(@Caller() actor: Actor, @Query({ schema: OrderListQuery }) { weeks }: z.infer<typeof OrderListQuery>) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const { register, asOf } = await this.present(tx);
      const parts = new Map(register.parts.map((part) => [part.id, part]));
      const lines = orderList(partRows(register.parts), await partNeeds(tx, register, asOf, weeks), asOf);
      return {
        asOf,
        lines: lines.map((line) => {
          const part = parts.get(line.partId)!;
          const purposes = line.uses.map(({ title, siteName }) => `${title}, ${siteName}`);
          return { ...line, purposes, code: part.code, name: partName(part) };
        }),
      };
    });
  }

  @Get('alerts')
  @Allow(['manager'], 'read')
  @Answers(200, AlertList, 'What needs a decision, each with the next best thing to do')
  alerts(@Caller() actor: Actor) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const { register, now } = await this.present(tx);
      return { items: await alertsOf(tx, register, now) };
    });
  }

  /** The register as it is today. */
  private async present(tx: Tx) {
    const now = await shopNow(tx, this.clock.now());
    const told = await loadRegister(tx, false);
    const asOf = wallClockOf(now, told.shop.timeZone).slice(0, 10);
    return { register: inUse(told, asOf), asOf, now };
  }
}
