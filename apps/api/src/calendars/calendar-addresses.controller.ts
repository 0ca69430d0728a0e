import {
  CalendarAddress,
  CalendarAddressCreate,
  CalendarAddressCreated,
  PageQuery,
  pageOf,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Post, Query } from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { CALENDAR_PREFIX, newSecret } from '../access/secrets.js';
import { audit } from '../audit/audit.js';
import { Answers } from '../http/answer.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { instantOrNull } from '../register/values.js';

const EVERYONE = ['manager', 'technician', 'supervisor'] as const;
type Row = Prisma.CalendarAddressGetPayload<object>;

/** Secret addresses of calendars: a manager's for everybody, a technician's own days, a supervisor's own sites. */
@ApiTags('Calendar')
@ApiBearerAuth()
@Controller('v1/calendar-addresses')
@Allow(EVERYONE)
export class CalendarAddressesController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Answers(200, pageOf(CalendarAddress, 'CalendarAddress'), 'Addresses in order of making, revoked ones included')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.calendarAddress.findMany({
        where: { AND: [reachOf(actor), afterCursor('createdAt', readCursor(cursor), (key) => new Date(key))] },
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.createdAt.toISOString(), toView);
  }

  @Post()
  @Answers(201, CalendarAddressCreated, 'The address, shown only this once')
  create(@Caller() actor: Actor, @Body({ schema: CalendarAddressCreate }) body: z.infer<typeof CalendarAddressCreate>) {
    const { secret, hash } = newSecret(CALENDAR_PREFIX);
    return this.store.inShop(actor.shopId, async (tx) => {
      await requireWithinReach(tx, actor, body);
      const row = await tx.calendarAddress.create({
        data: { shopId: actor.shopId, ...body, tokenHash: hash, createdBy: actor.id, createdAt: this.clock.now() },
      });
      await this.note(tx, actor, row, 'calendar.opened');
      return { ...toView(row), path: `/v1/calendars/${secret}.ics` };
    });
  }

  @Delete(':id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'The address leads nowhere any more' })
  async revoke(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    await this.store.inShop(actor.shopId, async (tx) => {
      const row = await tx.calendarAddress.findFirst({ where: { id, ...reachOf(actor) } });
      if (!row) throw new DomainError('not-found', 'There is no such calendar address, or it is not yours.');
      if (row.revokedAt !== null) return;
      await tx.calendarAddress.update({ where: { id }, data: { revokedAt: this.clock.now() } });
      await this.note(tx, actor, row, 'calendar.revoked');
    });
  }

  private note(tx: Tx, actor: Actor, { id, technicianId, siteId }: Row, action: string): Promise<void> {
    const detail = { technicianId, siteId };
    return audit(tx, actor, { action, subjectKind: 'calendar-address', subjectId: id, detail }, this.clock.now());
  }
}

/** Which addresses a person may see and revoke. */
function reachOf(actor: Actor): Prisma.CalendarAddressWhereInput {
  if (actor.role === 'technician') return { technician: { personId: actor.id } };
  if (actor.siteIds !== null) return { siteId: { in: [...actor.siteIds] } };
  return {};
}

async function requireWithinReach(
  tx: Tx,
  actor: Actor,
  { technicianId, siteId }: z.infer<typeof CalendarAddressCreate>,
): Promise<void> {
  const technician = technicianId === null ? null : await tx.technician.findFirst({ where: { id: technicianId } });
  const site = siteId === null ? null : await tx.site.findFirst({ where: { id: siteId } });
  if (!technician && !site) throw new DomainError('not-found', 'There is no such technician or site.');
  const isOwn =
    actor.role === 'manager' ||
    (actor.role === 'technician' && technician?.personId === actor.id) ||
    (site !== null && actor.siteIds?.includes(site.id));
  if (!isOwn) {
    throw new DomainError(
      'not-allowed',
      'Technicians open calendars of their own days, supervisors of their own sites: ask the shop for others.',
    );
  }
}

function toView(row: Row) {
  return {
    ...row,
    createdAt: row.createdAt.toISOString(),
    lastReadAt: instantOrNull(row.lastReadAt),
    revokedAt: instantOrNull(row.revokedAt),
  };
}
