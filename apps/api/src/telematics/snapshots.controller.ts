import type { IncomingMessage } from 'node:http';
import { SnapshotTaken } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { addHeard, HEARD_AT_ONCE, HEARD_NOTHING, type Heard, hearUnits } from '@deckround/register-store';
import type { Store } from '@deckround/store';
import { atMost, type HeardUnit, InvalidSnapshot, readSnapshot } from '@deckround/telematics';
import { Controller, Inject, Post, Req } from '@nestjs/common';
import { ApiBearerAuth, ApiBody, ApiConsumes, ApiTags } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { CLOCK, STORE } from '../http/tokens.js';

const MAX_BYTES = 256 * 2 ** 20;

@ApiTags('Telematics')
@ApiBearerAuth()
@Controller('v1/telematics/snapshots')
export class SnapshotsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Post()
  @Allow(['manager'], 'telematics')
  @ApiConsumes('application/xml', 'text/xml', 'application/json')
  @ApiBody({
    schema: { type: 'string', format: 'binary' },
    description:
      'A fleet snapshot of ISO/TS 15143-3 (AEMP 2.0), XML or JSON in UTF-8, at most 256 MiB; read while it comes in. Sent again, it changes nothing.',
  })
  @Answers(200, SnapshotTaken, 'What was taken in; hours go through the same cleaning as all others')
  async take(@Caller() actor: Actor, @Req() request: FastifyRequest): Promise<Heard> {
    const body = request.body as IncomingMessage | string | null | undefined;
    if (typeof body !== 'object' || body === null || !(Symbol.asyncIterator in body))
      throw new DomainError(
        'invalid-input',
        'Send the snapshot itself, with Content-Type application/xml or application/json.',
      );
    const encoding = request.headers['content-encoding'] ?? 'identity';
    if (encoding !== 'identity')
      throw new DomainError(
        'invalid-input',
        `Content-Encoding ${encoding.slice(0, 20)} is not read: send it unpacked.`,
      );
    const format = /json/.test(request.headers['content-type'] ?? '') ? 'json' : 'xml';
    let heard = HEARD_NOTHING;
    let batch: HeardUnit[] = [];
    const take = async () => {
      const units = batch;
      batch = [];
      heard = addHeard(
        heard,
        await this.store.inShop(actor.shopId, (tx) => hearUnits(tx, actor.shopId, units, this.clock.now())),
      );
    };
    try {
      for await (const item of readSnapshot(atMost(body, MAX_BYTES), format)) {
        if (item.kind === 'unit' && batch.push(item.unit) === HEARD_AT_ONCE) await take();
      }
    } catch (error) {
      if (!(error instanceof InvalidSnapshot)) throw error;
      throw new DomainError(
        'invalid-input',
        `The snapshot cannot be read. ${error.message} ${heard.units} machines before that were taken in: sending the whole again does no harm.`,
      );
    }
    if (batch.length > 0) await take();
    return heard;
  }
}
