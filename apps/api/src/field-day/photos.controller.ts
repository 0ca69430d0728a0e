import { createHash } from 'node:crypto';
import { Photo, PhotoQuery, PhotoUpload, pageOf } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import type { Store } from '@deckround/store';
import { Controller, Get, Inject, Param, Put, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiBody, ApiConsumes, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { requireMachines } from '../field-work/require-machine.js';
import { Answers } from '../http/answer.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { imageTypeOf } from './image-type.js';

const IMAGE = { 'image/jpeg': {}, 'image/png': {}, 'image/webp': {} };
const EVERYONE = ['manager', 'technician', 'supervisor'] as const;
const IdParam = z.uuid();
/** Everything but the bytes. */
const DESCRIPTION = {
  id: true,
  visitId: true,
  machineId: true,
  roadCallId: true,
  takenAt: true,
  receivedAt: true,
  contentType: true,
  sizeBytes: true,
  sha256: true,
} as const;

@ApiTags('Photo')
@ApiBearerAuth()
@Controller('v1/photos')
export class PhotosController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Allow(EVERYONE, 'read')
  @Answers(200, pageOf(Photo, 'Photo'), 'Photos in order of time')
  async list(@Caller() actor: Actor, @Query({ schema: PhotoQuery }) query: z.infer<typeof PhotoQuery>) {
    const { cursor, limit, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.photo.findMany({
        where: {
          AND: [machineScope(actor), equal, afterCursor('takenAt', readCursor(cursor), (key) => new Date(key))],
        },
        select: DESCRIPTION,
        orderBy: [{ takenAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.takenAt.toISOString(), toView);
  }

  @Put(':id')
  @Allow(EVERYONE)
  @ApiConsumes(...Object.keys(IMAGE))
  @ApiBody({
    schema: { type: 'string', format: 'binary' },
    description: 'The picture: JPEG, PNG or WebP, at most 4 MiB',
  })
  @Answers(200, Photo, 'Kept, under the id that the device made: sent again, it is kept once')
  async keep(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Query({ schema: PhotoUpload }) query: z.infer<typeof PhotoUpload>,
    @Req() request: FastifyRequest,
  ) {
    const bytes = request.body;
    if (!(bytes instanceof Buffer))
      throw new DomainError(
        'invalid-input',
        'Send the picture itself, with Content-Type image/jpeg, image/png or image/webp.',
      );
    const contentType = imageTypeOf(bytes);
    if (contentType === null)
      throw new DomainError('invalid-input', 'It is no JPEG, PNG or WebP picture. Nothing was kept: take it again.');
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    return this.store.inShop(actor.shopId, async (tx) => {
      await requireMachines(tx, actor, [query.machineId]);
      const { count } = await tx.photo.createMany({
        skipDuplicates: true,
        data: [
          {
            id,
            shopId: actor.shopId,
            machineId: query.machineId,
            visitId: query.visitId ?? null,
            roadCallId: query.roadCallId ?? null,
            takenAt: new Date(query.takenAt),
            takenBy: actor.id,
            receivedAt: this.clock.now(),
            contentType,
            sizeBytes: bytes.length,
            sha256,
            bytes: new Uint8Array(bytes),
          },
        ],
      });
      const row = await tx.photo.findUnique({ where: { id }, select: DESCRIPTION });
      if (!row || (count === 0 && row.sha256 !== sha256))
        throw new DomainError('conflict', 'Another photo has this id: give the new one an id of its own.');
      return toView(row);
    });
  }

  @Get(':id/image')
  @Allow(EVERYONE, 'read')
  @ApiOkResponse({ description: 'The picture', content: IMAGE })
  async image(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string, @Res() reply: FastifyReply) {
    const row = await this.store.inShop(actor.shopId, (tx) =>
      tx.photo.findFirst({ where: { id, ...machineScope(actor) } }),
    );
    if (!row) throw new DomainError('not-found', 'There is no such photo, or it is not yours to see.');
    return reply
      .header('content-type', row.contentType)
      .header('cache-control', 'private, max-age=31536000, immutable')
      .send(Buffer.from(row.bytes));
  }
}

function toView<T extends { takenAt: Date; receivedAt: Date }>(row: T) {
  return { ...row, takenAt: row.takenAt.toISOString(), receivedAt: row.receivedAt.toISOString() };
}
