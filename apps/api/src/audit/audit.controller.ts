import { AuditEntry, AuditQuery, pageOf } from '@deckround/contracts';
import type { Store } from '@deckround/store';
import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { STORE } from '../http/tokens.js';

@ApiTags('Audit trail')
@ApiBearerAuth()
@Controller('v1/audit-entries')
export class AuditController {
  constructor(@Inject(STORE) private readonly store: Store) {}

  @Get()
  @Allow(['manager'])
  @Answers(200, pageOf(AuditEntry, 'AuditEntry'), 'Who did what, the oldest first')
  async list(@Caller() actor: Actor, @Query({ schema: AuditQuery }) query: z.infer<typeof AuditQuery>) {
    const { cursor, limit, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.auditEntry.findMany({
        where: { AND: [equal, afterCursor('at', readCursor(cursor), (key) => new Date(key))] },
        orderBy: [{ at: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(
      rows,
      limit,
      (row) => row.at.toISOString(),
      (row) => ({ ...row, at: row.at.toISOString() }),
    );
  }
}
