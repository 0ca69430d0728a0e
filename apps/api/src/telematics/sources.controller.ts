import {
  PageQuery,
  pageOf,
  TelematicsSource,
  TelematicsSourceChanges,
  TelematicsSourceCreate,
} from '@deckround/contracts';
import { type Clock, type Config, DomainError } from '@deckround/platform';
import type { Prisma, Store, Tx } from '@deckround/store';
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
  Req,
  Res,
} from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { requirePublicAddress } from '../http/called-address.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { instantOrNull } from '../register/values.js';

const IdParam = z.uuid();
type Row = Prisma.TelematicsSourceGetPayload<object>;

/** Where snapshots are fetched. What is pushed needs no source, only a key with the scope `telematics`. */
@ApiTags('Telematics')
@ApiBearerAuth()
@Controller('v1/telematics/sources')
@Allow(['manager'])
export class TelematicsSourcesController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Answers(200, pageOf(TelematicsSource, 'TelematicsSource'), 'Sources, and how the last look at each went')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.telematicsSource.findMany({
        where: afterCursor('createdAt', readCursor(cursor), (key) => new Date(key)),
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.createdAt.toISOString(), toView);
  }

  @Post()
  @Creates(TelematicsSource, 'It is asked for the first time in a moment')
  create(
    @Caller() actor: Actor,
    @Body({ schema: TelematicsSourceCreate }) body: z.infer<typeof TelematicsSourceCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    requirePublicAddress(this.config, body.url, 'Snapshots cannot be fetched there.');
    return this.once.create(actor, request, reply, async (tx) => {
      const { authorization, ...fields } = body;
      const row = await tx.telematicsSource.create({
        data: {
          shopId: actor.shopId,
          ...fields,
          authorizationHeader: authorization,
          nextPollAt: this.clock.now(),
          createdAt: this.clock.now(),
        },
      });
      await this.note(tx, actor, row.id, 'telematics.source-created', { host: new URL(body.url).host });
      return toView(row);
    });
  }

  @Get(':id')
  @Answers(200, TelematicsSource, 'The source; its ETag is needed to change it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => find(tx, id));
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }

  @Patch(':id')
  @Changes(TelematicsSource, 'The source now')
  async change(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: TelematicsSourceChanges }) body: z.infer<typeof TelematicsSourceChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    if (body.url !== undefined) requirePublicAddress(this.config, body.url, 'Snapshots cannot be fetched there.');
    const { authorization, ...fields } = body;
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await find(tx, id);
      requireVersion(ifMatch, before.version);
      // Credentials are the old sender's: another address gets them only when they are stated again.
      const isElsewhere = body.url !== undefined && new URL(body.url).origin !== new URL(before.url).origin;
      const header = authorization !== undefined ? authorization : isElsewhere ? null : before.authorizationHeader;
      await this.note(tx, actor, id, 'telematics.source-changed', { fields: Object.keys(body) });
      return tx.telematicsSource.update({
        where: { id },
        data: {
          ...fields,
          authorizationHeader: header,
          ...(body.url !== undefined && { nextPage: null }),
          version: { increment: 1 },
        },
      });
    });
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }

  @Delete(':id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'It is not asked any more; what was heard stays' })
  async remove(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string): Promise<void> {
    await this.store.inShop(actor.shopId, async (tx) => {
      await find(tx, id);
      await tx.telematicsSource.delete({ where: { id } });
      await this.note(tx, actor, id, 'telematics.source-removed', {});
    });
  }

  private note(tx: Tx, actor: Actor, subjectId: string, action: string, detail: object): Promise<void> {
    return audit(tx, actor, { action, subjectKind: 'telematics-source', subjectId, detail }, this.clock.now());
  }
}

async function find(tx: Tx, id: string): Promise<Row> {
  const row = await tx.telematicsSource.findUnique({ where: { id } });
  if (!row) throw new DomainError('not-found', 'There is no such telematics source.');
  return row;
}

function toView({ authorizationHeader, ...row }: Row) {
  return {
    ...row,
    hasAuthorization: authorizationHeader !== null,
    lastPollAt: instantOrNull(row.lastPollAt),
    createdAt: row.createdAt.toISOString(),
  };
}
