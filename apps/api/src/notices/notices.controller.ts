import { NoticeList, NoticeQuery, WebhookRetried } from '@deckround/contracts';
import { type Clock, type Config, DomainError } from '@deckround/platform';
import type { Prisma, Store } from '@deckround/store';
import { Controller, Get, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { readCursor, toPage } from '../http/paging.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import { instantOrNull } from '../register/values.js';

const INCLUDE = { contact: true, event: true } as const;
type Row = Prisma.NoticeGetPayload<{ include: typeof INCLUDE }>;

@ApiTags('Notice')
@ApiBearerAuth()
@Controller('v1/notices')
@Allow(['manager'])
export class NoticesController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Answers(200, NoticeList, 'What contacts were told by e-mail, newest first, and what became of it')
  async list(@Caller() actor: Actor, @Query({ schema: NoticeQuery }) query: z.infer<typeof NoticeQuery>) {
    const { cursor, limit, siteId, state } = query;
    const after = readCursor(cursor);
    const at = after && new Date(after.key);
    if (at && Number.isNaN(at.getTime()))
      throw new DomainError('invalid-input', 'The cursor does not belong to this list: start again without it.');
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.notice.findMany({
        where: {
          ...(state !== undefined && { state }),
          ...(siteId !== undefined && { contact: { siteId } }),
          ...(at && {
            OR: [{ event: { occurredAt: { lt: at } } }, { event: { occurredAt: at }, id: { gt: after!.id } }],
          }),
        },
        include: INCLUDE,
        orderBy: [{ event: { occurredAt: 'desc' } }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    const page = toPage(rows, limit, (row) => row.event.occurredAt.toISOString(), toView);
    return { ...page, isMailSetUp: this.config.SMTP_URL !== undefined };
  }

  @Post(':id/retry')
  @Answers(200, WebhookRetried, 'It is tried again now, unless it was sent or newer news took its place')
  async retry(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string) {
    const asked = await this.store.inShop(actor.shopId, async (tx) => {
      if (!(await tx.notice.findUnique({ where: { id } })))
        throw new DomainError('not-found', 'There is no such notice.');
      const { count } = await tx.notice.updateMany({
        where: { id, state: { in: ['waiting', 'refused'] } },
        data: { state: 'waiting', nextAttemptAt: this.clock.now() },
      });
      return count;
    });
    return { asked };
  }
}

function toView({ contact, event, ...row }: Row) {
  return {
    ...row,
    siteId: contact.siteId,
    contactName: contact.name,
    email: contact.email,
    type: event.type,
    occurredAt: event.occurredAt.toISOString(),
    nextAttemptAt: row.state === 'waiting' ? row.nextAttemptAt.toISOString() : null,
    sentAt: instantOrNull(row.sentAt),
  };
}
