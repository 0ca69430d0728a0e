import {
  IntegrationKey,
  IntegrationKeyCreate,
  IntegrationKeyCreated,
  Person,
  PersonCreate,
  pageOf,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import type { Store } from '@deckround/store';
import { Body, Controller, Delete, Get, HttpCode, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { STORE } from '../http/tokens.js';
import { type Actor, Allow, Caller } from './actor.js';
import { hashPassword, KEY_PREFIX, newSecret } from './secrets.js';

@ApiTags('People and keys')
@ApiBearerAuth()
@Controller('v1')
@Allow(['manager'])
export class PeopleController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('people')
  @Answers(200, pageOf(Person, 'Person'), 'Everyone who can sign in')
  async people(@Caller() actor: Actor) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.person.findMany({ include: { personSites: true }, orderBy: { name: 'asc' } }),
    );
    return {
      items: rows.map(({ personSites, ...row }) => ({ ...row, siteIds: personSites.map((each) => each.siteId) })),
      next: null,
    };
  }

  @Post('people')
  @Creates(Person, 'Can sign in now')
  async addPerson(
    @Caller() actor: Actor,
    @Body({ schema: PersonCreate }) body: z.infer<typeof PersonCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const passwordHash = await hashPassword(body.password);
    return this.once.create(actor, request, reply, async (tx) => {
      const { password: _, siteIds, email, ...rest } = body;
      const row = await tx.person.create({
        data: { shopId: actor.shopId, email: email.toLowerCase(), passwordHash, ...rest },
      });
      await tx.personSite.createMany({
        data: siteIds.map((siteId) => ({ shopId: actor.shopId, personId: row.id, siteId })),
      });
      return { id: row.id, name: row.name, email: row.email, role: body.role, active: row.active, siteIds };
    });
  }

  @Delete('people/:id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'Can no longer sign in; running sign-ins have ended' })
  async disable(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    if (id === actor.id) throw new DomainError('conflict', 'You cannot lock yourself out: ask another manager.');
    await this.store.inShop(actor.shopId, async (tx) => {
      await tx.person.update({ where: { id }, data: { active: false } });
      await tx.session.updateMany({ where: { personId: id, endedAt: null }, data: { endedAt: new Date() } });
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
    const row = await this.store.inShop(actor.shopId, (tx) =>
      tx.integrationKey.create({
        data: {
          shopId: actor.shopId,
          name: body.name,
          scopes: body.scopes,
          expiresAt: body.expiresAt === null ? null : new Date(body.expiresAt),
          prefix: secret.slice(0, 12),
          keyHash: hash,
          createdBy: actor.id,
        },
      }),
    );
    return { ...toKeyView(row), key: secret };
  }

  @Delete('integration-keys/:id')
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'The key is of no more use' })
  async revoke(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
    await this.store.inShop(actor.shopId, (tx) =>
      tx.integrationKey.update({ where: { id }, data: { revokedAt: new Date() } }),
    );
  }
}

function toKeyView(row: {
  id: string;
  name: string;
  prefix: string;
  scopes: string[];
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
    createdAt: row.createdAt.toISOString(),
    expiresAt: row.expiresAt?.toISOString() ?? null,
    lastUsedAt: row.lastUsedAt?.toISOString() ?? null,
    revokedAt: row.revokedAt?.toISOString() ?? null,
  };
}
