import { createHash } from 'node:crypto';
import { writeCalendar } from '@deckround/calendar';
import { type Clock, DomainError } from '@deckround/platform';
import { shopNow, siteCalendar, technicianCalendar } from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Controller, Get, Headers, Inject, Param, Res } from '@nestjs/common';
import { ApiOkResponse, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { Public } from '../access/actor.js';
import { hashSecret } from '../access/secrets.js';
import { CLOCK, STORE } from '../http/tokens.js';

/** A reading is written down at most this often. */
const SEEN_EVERY_MS = 60_000;
const FileName = z.string().max(120).meta({ description: 'The secret, with .ics after it' });

/** Calendars for programs that cannot sign in: the address itself is the secret. */
@ApiTags('Calendar')
@Controller('v1/calendars')
export class CalendarFeedController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get(':file')
  @Public()
  @ApiOkResponse({
    description:
      'iCalendar (RFC 5545). Times are UTC; a visit keeps its UID, SEQUENCE grows when it is moved, and one that was given up stays as CANCELLED for a while',
    content: { 'text/calendar': { schema: { type: 'string' } } },
  })
  @ApiResponse({ status: 304, description: 'Nothing has changed since the ETag in If-None-Match' })
  async read(
    @Param('file', { schema: FileName }) file: string,
    @Headers('if-none-match') seen: string | undefined,
    @Res() reply: FastifyReply,
  ): Promise<void> {
    const text = await this.calendarOf(file);
    const etag = `"${createHash('sha256').update(text).digest('base64url')}"`;
    reply.header('etag', etag).header('cache-control', 'private, no-cache');
    if (seen?.split(',').some((each) => each.trim().replace(/^W\//, '') === etag)) {
      await reply.status(304).send();
      return;
    }
    await reply
      .header('content-type', 'text/calendar; charset=utf-8')
      .header('content-disposition', 'inline; filename="visits.ics"')
      .send(text);
  }

  private async calendarOf(file: string): Promise<string> {
    const secret = /^(drc_[\w-]{43})\.ics$/.exec(file)?.[1];
    const address =
      secret === undefined
        ? null
        : await this.store.asOwner((tx) => tx.calendarAddress.findUnique({ where: { tokenHash: hashSecret(secret) } }));
    if (!address || address.revokedAt !== null) throw leadsNowhere();
    const now = this.clock.now();
    return this.store.inShop(address.shopId, async (tx) => {
      await requireStillTheirs(tx, address);
      if (!address.lastReadAt || now.getTime() - address.lastReadAt.getTime() > SEEN_EVERY_MS)
        await tx.calendarAddress.update({ where: { id: address.id }, data: { lastReadAt: now } });
      const present = await shopNow(tx, now);
      return writeCalendar(
        address.siteId === null
          ? await technicianCalendar(tx, address.technicianId!, present)
          : await siteCalendar(tx, address.siteId, present),
      );
    });
  }
}

/**
 * An address opened by a supervisor ends when the site is no longer theirs, a technician's when somebody else drives the
 * days. The shop's own go on.
 *
 * @throws DomainError not-found
 */
async function requireStillTheirs(
  tx: Tx,
  { createdBy, siteId, technicianId }: Prisma.CalendarAddressGetPayload<object>,
): Promise<void> {
  const person = await tx.person.findUniqueOrThrow({
    where: { id: createdBy },
    include: { personSites: true, technicians: true },
  });
  const isTheirs =
    person.role === 'manager' ||
    (person.role === 'technician' && person.technicians.some(({ id }) => id === technicianId)) ||
    (person.role === 'supervisor' && person.personSites.some((own) => own.siteId === siteId));
  if (!isTheirs) throw leadsNowhere();
}

function leadsNowhere(): DomainError {
  return new DomainError('not-found', 'This calendar address leads nowhere: ask the shop for another.');
}
