import { FieldRecord, FieldRecordCreate, FieldRecordDecision, FieldRecordQuery, pageOf } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { shopNow } from '@deckround/register-store';
import type { Store } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Post, Query, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Changes } from '../http/answer.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { lockVisit } from '../planning/lock-visit.js';
import { VISIT_INCLUDE } from '../planning/visit-view.js';
import { instantOrNull } from '../register/values.js';
import { applyRecord, RECORD_INCLUDE, type RecordRow, takeRecord } from './take-record.js';

@ApiTags('Field record')
@ApiBearerAuth()
@Controller('v1/field-records')
export class FieldRecordsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, pageOf(FieldRecord, 'FieldRecord'), 'Records in the order in which they arrived')
  async list(@Caller() actor: Actor, @Query({ schema: FieldRecordQuery }) query: z.infer<typeof FieldRecordQuery>) {
    const { cursor, limit, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.fieldRecord.findMany({
        where: { AND: [equal, afterCursor('receivedAt', readCursor(cursor), (key) => new Date(key))] },
        include: RECORD_INCLUDE,
        orderBy: [{ receivedAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.receivedAt.toISOString(), toView);
  }

  @Post()
  @Allow(['manager', 'technician'])
  @Answers(201, FieldRecord, 'Recorded, once however often it is sent; a late one waits in review')
  async record(@Caller() actor: Actor, @Body({ schema: FieldRecordCreate }) body: z.infer<typeof FieldRecordCreate>) {
    const row = await this.store.inShop(actor.shopId, async (tx) =>
      takeRecord(tx, actor, body, await shopNow(tx, this.clock.now())),
    );
    return toView(row);
  }

  @Post(':id/decision')
  @Allow(['manager'])
  @Changes(FieldRecord, 'The late record counts now, or is kept without effect')
  async decide(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: FieldRecordDecision }) body: z.infer<typeof FieldRecordDecision>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await tx.fieldRecord.findUniqueOrThrow({ where: { id }, include: RECORD_INCLUDE });
      requireVersion(ifMatch, before.version);
      if (before.state !== 'review')
        throw new DomainError('conflict', 'It waits for no decision: it counts already, or somebody has decided.');
      const now = await shopNow(tx, this.clock.now());
      if (body.decision === 'accept') {
        const { visitId } = before;
        if (visitId !== null) await lockVisit(tx, visitId);
        const visit =
          visitId === null ? null : await tx.visit.findUnique({ where: { id: visitId }, include: VISIT_INCLUDE });
        await applyRecord(tx, actor, before, visit, now);
      }
      return tx.fieldRecord.update({
        where: { id },
        data: {
          state: body.decision === 'accept' ? 'accepted' : 'dismissed',
          decidedBy: actor.id,
          decidedAt: now,
          version: { increment: 1 },
        },
        include: RECORD_INCLUDE,
      });
    });
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }
}

function toView({ recordedByPerson, ...row }: RecordRow) {
  return {
    ...row,
    recordedByName: recordedByPerson.name,
    deviceAt: row.deviceAt.toISOString(),
    receivedAt: row.receivedAt.toISOString(),
    decidedAt: instantOrNull(row.decidedAt),
  };
}
