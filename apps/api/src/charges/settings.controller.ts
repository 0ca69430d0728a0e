import { ChargeSettings, ChargeSettingsChanges, CustomerCharges, CustomerChargesChanges } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Patch, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { Answers, Changes } from '../http/answer.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { merged, shopCharges, withoutNulls } from './settings.js';

const IdParam = z.uuid();

@ApiTags('Charge settings')
@ApiBearerAuth()
@Controller('v1')
@Allow(['manager'])
export class ChargeSettingsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get('charge-settings')
  @Answers(200, ChargeSettings, 'How the shop charges; its ETag is needed to change it')
  async read(@Caller() actor: Actor, @Res({ passthrough: true }) reply: FastifyReply) {
    return answer(reply, await this.store.inShop(actor.shopId, shopView));
  }

  @Patch('charge-settings')
  @Changes(ChargeSettings, 'The settings as they stand now; documents issued before stay as they are')
  async change(
    @Caller() actor: Actor,
    @Body({ schema: ChargeSettingsChanges }) body: z.infer<typeof ChargeSettingsChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const view = await this.store.inShop(actor.shopId, async (tx) => {
      await this.save(tx, actor, null, ifMatch, body);
      return shopView(tx);
    });
    return answer(reply, view);
  }

  @Get('customers/:id/charge-settings')
  @Answers(200, CustomerCharges, 'What differs for this customer; its ETag is needed to change it')
  async readCustomer(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return answer(reply, await this.store.inShop(actor.shopId, (tx) => customerView(tx, id)));
  }

  @Patch('customers/:id/charge-settings')
  @Changes(CustomerCharges, 'What differs for this customer now')
  async changeCustomer(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: CustomerChargesChanges }) body: z.infer<typeof CustomerChargesChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const view = await this.store.inShop(actor.shopId, async (tx) => {
      await customerView(tx, id);
      await this.save(tx, actor, id, ifMatch, body);
      return customerView(tx, id);
    });
    return answer(reply, view);
  }

  private async save(
    tx: Tx,
    actor: Actor,
    customerId: string | null,
    ifMatch: string | undefined,
    body: object,
  ): Promise<void> {
    const { shopId } = actor;
    const row = await tx.chargeSettings.findFirst({ where: { customerId } });
    requireVersion(ifMatch, row?.version ?? 0);
    if (row) {
      const settings = withoutNulls(merged(row.settings as object, body));
      await tx.chargeSettings.update({ where: { id: row.id }, data: { settings, version: { increment: 1 } } });
    } else {
      await tx.chargeSettings.create({ data: { shopId, customerId, settings: withoutNulls(body) } });
    }
    const act = { action: 'charge-settings.changed', detail: { fields: Object.keys(body) } };
    const subject =
      customerId === null
        ? { subjectKind: 'shop', subjectId: shopId }
        : { subjectKind: 'customer', subjectId: customerId };
    await audit(tx, actor, { ...act, ...subject }, this.clock.now());
  }
}

async function shopView(tx: Tx) {
  const { version, settings } = await shopCharges(tx);
  return { version, ...settings };
}

async function customerView(tx: Tx, customerId: string) {
  if (!(await tx.customer.findFirst({ where: { id: customerId } })))
    throw new DomainError('not-found', 'There is no such customer.');
  const row = await tx.chargeSettings.findFirst({ where: { customerId } });
  return { version: row?.version ?? 0, customerId, terms: (row?.settings ?? {}) as object };
}

function answer<V extends { version: number }>(reply: FastifyReply, view: V): V {
  reply.header('etag', etagOf(view.version));
  return view;
}
