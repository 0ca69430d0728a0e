import {
  IntegrationKey,
  IntegrationKeyCreate,
  IntegrationKeyCreated,
  Person,
  PersonChanges,
  PersonCreate,
  pageOf,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Delete, Get, Headers, HttpCode, Inject, Param, Patch, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { audit } from '../audit/audit.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { given } from '../register/values.js';
import { AccessService } from './access.service.js';
import { type Actor, Allow, Caller } from './actor.js';
import { hashPassword, KEY_PREFIX, newSecret } from './secrets.js';

@ApiTags('People and keys')
@ApiBearerAuth()
@Controller('v1')
@Allow(['manager'])
export class PeopleController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
    @Inject(AccessService) private readonly access: AccessService,
  ) {}

  @Get('people')
  @Answers(200, pageOf(Person, 'Person'), 'Everyone who can sign in')
  async people(@Caller() actor: Actor) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.person.findMany({ include: PERSON_INCLUDE, orderBy: { name: 'asc' } }),
    );
    return { items: rows.map(toPersonView), next: null };
  }

  @Post('people')
  @Creates(Person, 'Can sign in now; somebody who was removed is back')
  async addPerson(
    @Caller() actor: Actor,
    @Body({ schema: PersonCreate }) body: z.infer<typeof PersonCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const passwordHash = await hashPassword(body.password);
    return this.once.create(actor, request, reply, async (tx) => {
      const { password: _, siteIds, technicianId, email: typed, ...rest } = body;
      const email = typed.toLowerCase();
      const left = await tx.person.findFirst({ where: { email, active: false } });
      const { id } = left
        ? await tx.person.update({
            where: { id: left.id },
            data: { ...rest, passwordHash, active: true, version: { increment: 1 } },
          })
        : await tx.person.create({ data: { shopId: actor.shopId, email, passwordHash, ...rest } });
      if (left) await audit(tx, actor, { action: 'person.returned', ...subject(id) }, this.clock.now());
      await giveSites(tx, actor.shopId, id, siteIds);
      if (technicianId !== null) await giveTechnician(tx, id, technicianId);
      return toPersonView(await tx.person.findUniqueOrThrow({ where: { id }, include: PERSON_INCLUDE }));
    });
  }

  @Patch('people/:id')
  @Changes(Person, 'The person as it stands now')
  async changePerson(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: PersonChanges }) body: z.infer<typeof PersonChanges>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const { siteIds, technicianId, name, password } = body;
    const passwordHash = password === undefined ? undefined : await hashPassword(password);
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await tx.person.findUniqueOrThrow({ where: { id } });
      requireVersion(ifMatch, before.version);
      if (siteIds !== undefined) await giveSites(tx, actor.shopId, id, siteIds);
      if (technicianId !== undefined) await giveTechnician(tx, id, technicianId);
      if (passwordHash !== undefined) {
        const now = this.clock.now();
        await endSignIns(tx, id, now, actor.sessionId);
        await audit(tx, actor, { action: 'person.password-set', ...subject(id) }, now);
      }
      return tx.person.update({
        where: { id },
        data: { ...given({ name, passwordHash }), version: { increment: 1 } },
        include: PERSON_INCLUDE,
      });
    });
    if (passwordHash !== undefined) await this.access.forgetFailures(row.email);
    reply.header('etag', etagOf(row.version));
    return toPersonView(row);
  }

  @Delete('people/:id')
  @HttpCode(204)
  @ApiNoContentResponse({
    description:
      'Can no longer sign in; running sign-ins and calendars the person opened have ended, and the technician is free for somebody else',
  })
  async disable(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    if (id === actor.id) throw new DomainError('conflict', 'You cannot lock yourself out: ask another manager.');
    const now = this.clock.now();
    await this.store.inShop(actor.shopId, async (tx) => {
      await tx.person.update({ where: { id }, data: { active: false, version: { increment: 1 } } });
      await giveTechnician(tx, id, null);
      await endSignIns(tx, id, now);
      await tx.calendarAddress.updateMany({
        where: { createdBy: id, revokedAt: null },
        data: { revokedAt: now },
      });
    });
  }

  @Get('integration-keys')
  @Answers(200, pageOf(IntegrationKey, 'IntegrationKey'), 'Keys for other systems')
  async keys(@Caller() actor: Actor) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.integrationKey.findMany({ orderBy: { createdAt: 'asc' } }),
    );
    return { items: rows.map(toKeyView), next: null };
  }

  @Post('integration-keys')
  @Answers(201, IntegrationKeyCreated, 'The key, shown only this once')
  async addKey(
    @Caller() actor: Actor,
    @Body({ schema: IntegrationKeyCreate }) body: z.infer<typeof IntegrationKeyCreate>,
  ) {
    const { secret, hash } = newSecret(KEY_PREFIX);
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const created = await tx.integrationKey.create({
        data: {
          shopId: actor.shopId,
          name: body.name,
          scopes: body.scopes,
          requestsPerMinute: body.requestsPerMinute,
          expiresAt: body.expiresAt === null ? null : new Date(body.expiresAt),
          prefix: secret.slice(0, 12),
          keyHash: hash,
          createdBy: actor.id,
        },
      });
      const act = { action: 'key.created', subjectKind: 'integration-key', subjectId: created.id };
      await audit(
        tx,
        actor,
        { ...act, detail: { scopes: body.scopes, requestsPerMinute: body.requestsPerMinute } },
        this.clock.now(),
      );
      return created;
    });
    return { ...toKeyView(row), key: secret };
  }

  @Delete('integration-keys/:id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'The key is of no more use' })
  async revoke(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    const revokedAt = this.clock.now();
    await this.store.inShop(actor.shopId, async (tx) => {
      await tx.integrationKey.update({ where: { id }, data: { revokedAt } });
      const act = { action: 'key.revoked', subjectKind: 'integration-key', subjectId: id };
      await audit(tx, actor, act, revokedAt);
    });
  }
}

const PERSON_INCLUDE = { personSites: true, technicians: true } as const;

function toPersonView({
  personSites,
  technicians,
  ...row
}: Prisma.PersonGetPayload<{ include: typeof PERSON_INCLUDE }>) {
  return { ...row, siteIds: personSites.map((each) => each.siteId), technicianId: technicians[0]?.id ?? null };
}

async function giveSites(tx: Tx, shopId: string, personId: string, siteIds: readonly string[]): Promise<void> {
  await tx.personSite.deleteMany({ where: { personId } });
  await tx.personSite.createMany({ data: [...new Set(siteIds)].map((siteId) => ({ shopId, personId, siteId })) });
}

async function giveTechnician(tx: Tx, personId: string, technicianId: string | null): Promise<void> {
  await tx.technician.updateMany({ where: { personId }, data: { personId: null } });
  if (technicianId === null) return;
  const taken = await tx.technician.findUnique({ where: { id: technicianId }, include: { person: true } });
  if (!taken) throw new DomainError('not-found', 'There is no such technician.');
  if (taken.person?.active)
    throw new DomainError('conflict', 'Somebody else drives the days of this technician: take it from them first.');
  await tx.technician.update({ where: { id: technicianId }, data: { personId } });
}

/** @param except the sign-in that asks for it, if it is to go on */
async function endSignIns(tx: Tx, personId: string, endedAt: Date, except: string | null = null): Promise<void> {
  const others = except === null ? {} : { id: { not: except } };
  await tx.session.updateMany({ where: { personId, endedAt: null, ...others }, data: { endedAt } });
}

function subject(subjectId: string) {
  return { subjectKind: 'person', subjectId };
}

function toKeyView(row: {
  id: string;
  name: string;
  prefix: string;
  scopes: string[];
  requestsPerMinute: number | null;
  createdAt: Date;
  expiresAt: Date | null;
  lastUsedAt: Date | null;
  revokedAt: Date | null;
}) {
  return {
    id: row.id,
    name: row.name,
    prefix: row.prefix,
    scopes: row.scopes,
    requestsPerMinute: row.requestsPerMinute,
    createdAt: row.createdAt.toISOString(),
    expiresAt: row.expiresAt?.toISOString() ?? null,
    lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
    revokedAt: row.revokedAt?.toISOString() ?? null,
  };
}
