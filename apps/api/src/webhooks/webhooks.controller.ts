import { randomBytes } from 'node:crypto';
import {
  PageQuery,
  pageOf,
  WebhookDelivery,
  WebhookDeliveryQuery,
  WebhookEndpoint,
  WebhookEndpointChanges,
  WebhookEndpointCreate,
  WebhookEndpointCreated,
  WebhookRetried,
  WebhookRotate,
} from '@deckround/contracts';
import { type Clock, type Config, DomainError } from '@deckround/platform';
import { emitEvent, type Prisma, type Store, type Tx } from '@deckround/store';
import {
  Body,
  Controller,
  Delete,
  Get,
  Headers,
  HttpCode,
  Inject,
  Param,
  Patch,
  Post,
  Query,
  Res,
} from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { Answers, Changes } from '../http/answer.js';
import { requirePublicAddress } from '../http/called-address.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { instantOrNull } from '../register/values.js';

const IdParam = z.uuid();
type Row = Prisma.WebhookEndpointGetPayload<object>;

@ApiTags('Webhooks')
@ApiBearerAuth()
@Controller('v1/webhook-endpoints')
@Allow(['manager'])
export class WebhooksController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Answers(200, pageOf(WebhookEndpoint, 'WebhookEndpoint'), 'Where events go')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.webhookEndpoint.findMany({
        where: afterCursor('createdAt', readCursor(cursor), (key) => new Date(key)),
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.createdAt.toISOString(), endpointView);
  }

  @Post()
  @Answers(201, WebhookEndpointCreated, 'The endpoint and its secret, shown only this once')
  create(@Caller() actor: Actor, @Body({ schema: WebhookEndpointCreate }) body: z.infer<typeof WebhookEndpointCreate>) {
    requirePublicAddress(this.config, body.url, 'Events cannot be sent there.');
    const secret = newWebhookSecret();
    return this.store.inShop(actor.shopId, async (tx) => {
      const row = await tx.webhookEndpoint.create({ data: { shopId: actor.shopId, ...body, secret } });
      await this.note(tx, actor, row.id, 'webhook.created', { host: new URL(body.url).host });
      return { ...endpointView(row), secret };
    });
  }

  @Get(':id')
  @Answers(200, WebhookEndpoint, 'The endpoint; its ETag is needed to change it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => findEndpoint(tx, id));
    reply.header('etag', etagOf(row.version));
    return endpointView(row);
  }

  @Patch(':id')
  @Changes(WebhookEndpoint, 'The endpoint now; made active again, it gets what has waited')
  async change(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: WebhookEndpointChanges }) body: z.infer<typeof WebhookEndpointChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    if (body.url !== undefined) requirePublicAddress(this.config, body.url, 'Events cannot be sent there.');
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      requireVersion(ifMatch, (await findEndpoint(tx, id)).version);
      const state =
        body.state === undefined
          ? {}
          : { disabledReason: body.state === 'disabled' ? 'Switched off by hand.' : null, failingSince: null };
      await this.note(tx, actor, id, 'webhook.changed', { fields: Object.keys(body) });
      return tx.webhookEndpoint.update({ where: { id }, data: { ...body, ...state, version: { increment: 1 } } });
    });
    reply.header('etag', etagOf(row.version));
    return endpointView(row);
  }

  @Delete(':id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'Nothing is sent there any more; what has waited is dropped' })
  async remove(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string): Promise<void> {
    await this.store.inShop(actor.shopId, async (tx) => {
      await tx.webhookEndpoint.delete({ where: { id } });
      await this.note(tx, actor, id, 'webhook.removed', {});
    });
  }

  @Post(':id/rotate-secret')
  @Answers(200, WebhookEndpointCreated, 'The new secret, shown only this once; until the overlap ends both sign')
  rotate(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: WebhookRotate }) { overlapHours }: z.infer<typeof WebhookRotate>,
  ) {
    const secret = newWebhookSecret();
    const previousUntil = new Date(this.clock.now().getTime() + overlapHours * 3_600_000);
    return this.store.inShop(actor.shopId, async (tx) => {
      const before = await findEndpoint(tx, id);
      const row = await tx.webhookEndpoint.update({
        where: { id },
        data: { secret, previousSecret: before.secret, previousUntil, version: { increment: 1 } },
      });
      await this.note(tx, actor, id, 'webhook.secret-rotated', { overlapHours });
      return { ...endpointView(row), secret };
    });
  }

  @Post(':id/test')
  @Answers(200, WebhookRetried, 'An event of the type endpoint.test is on its way: see its deliveries')
  test(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.store.inShop(actor.shopId, async (tx) => {
      await findEndpoint(tx, id);
      await emitEvent(tx, actor.shopId, 'endpoint.test', { endpointId: id }, this.clock.now(), id);
      return { asked: 1 };
    });
  }

  @Post(':id/retry')
  @Answers(200, WebhookRetried, 'All that waits is tried again now')
  retry(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.store.inShop(actor.shopId, async (tx) => {
      await findEndpoint(tx, id);
      const { count } = await tx.webhookDelivery.updateMany({
        where: { endpointId: id, state: 'waiting' },
        data: { nextAttemptAt: this.clock.now() },
      });
      return { asked: count };
    });
  }

  @Get(':id/deliveries')
  @Answers(200, pageOf(WebhookDelivery, 'WebhookDelivery'), 'What was sent there, how often, and what came back')
  async deliveries(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Query({ schema: WebhookDeliveryQuery }) query: z.infer<typeof WebhookDeliveryQuery>,
  ) {
    const { cursor, limit, ...equal } = query;
    const after = readCursor(cursor);
    const rows = await this.store.inShop(actor.shopId, async (tx) => {
      await findEndpoint(tx, id);
      return tx.webhookDelivery.findMany({
        where: { endpointId: id, ...equal, ...(after && { id: { gt: after.id } }) },
        include: { event: true },
        orderBy: { id: 'asc' },
        take: limit + 1,
      });
    });
    return toPage(
      rows,
      limit,
      (row) => row.id,
      ({ event, ...row }) => ({
        ...row,
        type: event.type,
        occurredAt: event.occurredAt.toISOString(),
        nextAttemptAt: row.state === 'waiting' ? row.nextAttemptAt.toISOString() : null,
        deliveredAt: instantOrNull(row.deliveredAt),
      }),
    );
  }

  private note(tx: Tx, actor: Actor, subjectId: string, action: string, detail: object): Promise<void> {
    return audit(tx, actor, { action, subjectKind: 'webhook-endpoint', subjectId, detail }, this.clock.now());
  }
}

/** Standard Webhooks 1.0.0: whsec_ and 24 to 64 random bytes. */
function newWebhookSecret(): string {
  return `whsec_${randomBytes(32).toString('base64')}`;
}

async function findEndpoint(tx: Tx, id: string): Promise<Row> {
  const row = await tx.webhookEndpoint.findUnique({ where: { id } });
  if (!row) throw new DomainError('not-found', 'There is no such endpoint.');
  return row;
}

function endpointView(row: Row) {
  return { ...row, createdAt: row.createdAt.toISOString(), failingSince: instantOrNull(row.failingSince) };
}
