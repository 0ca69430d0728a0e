import { PageQuery, pageOf } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import type { Store, Tx } from '@deckround/store';
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
  type Type,
} from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, type PersonRole } from '../access/actor.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';

/** A kind of row of the register: what it looks like outside, and how it is read and written. */
export interface Resource<R extends { id: string }> {
  readonly path: string;
  /** Singular name, as in the contract. */
  readonly name: string;
  readonly view: z.ZodType;
  readonly query?: z.ZodObject;
  readonly create?: z.ZodType;
  readonly changes?: z.ZodType;
  readonly readers: readonly PersonRole[];
  readonly writers: readonly PersonRole[];
  /** Column that orders the list, with the id. */
  readonly order: string;
  /** Turns a cursor's key back into the column's value. */
  readonly orderValue?: (key: string) => unknown;
  /** What this actor may see. */
  readonly scope?: (actor: Actor) => object;
  /** Filters of the list. */
  readonly where?: (query: Record<string, unknown>) => object;
  readonly table: (tx: Tx) => ReadableTable;
  readonly include?: object;
  readonly toView: (row: R) => object;
  /** Writes a new row. @returns its id */
  readonly insert?: (tx: Tx, actor: Actor, body: never, now: Date) => Promise<string>;
  readonly update?: (tx: Tx, actor: Actor, row: R, body: never, now: Date) => Promise<void>;
  readonly remove?: (tx: Tx, actor: Actor, row: R, now: Date) => Promise<void>;
}

interface ReadableTable {
  // biome-ignore lint/suspicious/noExplicitAny: Prisma's delegates share these calls but no type
  findMany(args: any): Promise<any[]>;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  findFirst(args: any): Promise<any>;
}

/** The routes of a resource: list, read, and, where it can be written, create, change, remove. */
export function resourceController<R extends { id: string }>(resource: Resource<R>): Type<unknown> {
  const { path, name, view } = resource;
  const query = resource.query ?? PageQuery;
  const find = async (tx: Tx, actor: Actor, id: string): Promise<R> => {
    const row = await resource
      .table(tx)
      .findFirst({ where: { AND: [{ id }, resource.scope?.(actor) ?? {}] }, include: resource.include });
    if (!row) throw new DomainError('not-found', `There is no such ${name.toLowerCase()}, or it is not yours to see.`);
    return row as R;
  };

  @ApiTags(tagOf(name))
  @ApiBearerAuth()
  @Controller(`v1/${path}`)
  class ReadController {
    constructor(
      @Inject(STORE) protected readonly store: Store,
      @Inject(Once) protected readonly once: Once,
      @Inject(CLOCK) protected readonly clock: Clock,
    ) {}

    @Get()
    @Allow(resource.readers, 'read')
    @Answers(200, pageOf(view, name), `A page of the list, ordered by ${resource.order}`)
    async list(
      @Caller() actor: Actor,
      @Query({ schema: query }) asked: z.infer<typeof PageQuery> & Record<string, unknown>,
    ) {
      const { cursor, limit, ...filters } = asked;
      const rows = await this.store.inShop(actor.shopId, (tx) =>
        resource.table(tx).findMany({
          where: {
            AND: [
              resource.scope?.(actor) ?? {},
              resource.where?.(filters) ?? {},
              afterCursor(resource.order, readCursor(cursor), resource.orderValue),
            ],
          },
          include: resource.include,
          orderBy: [{ [resource.order]: 'asc' }, { id: 'asc' }],
          take: limit + 1,
        }),
      );
      return toPage(
        rows as (R & Record<string, unknown>)[],
        limit,
        (row) => keyText(row[resource.order]),
        resource.toView,
      );
    }

    @Get(':id')
    @Allow(resource.readers, 'read')
    @Answers(200, view, 'The row; its ETag is needed to change it')
    async read(
      @Caller() actor: Actor,
      @Param('id', { schema: z.uuid() }) id: string,
      @Headers('if-none-match') seen: string | undefined,
      @Res({ passthrough: true }) reply: FastifyReply,
    ) {
      const row = await this.store.inShop(actor.shopId, (tx) => find(tx, actor, id));
      setEtag(reply, row);
      if (seen !== undefined && seen === reply.getHeader('etag')) reply.status(304);
      return resource.toView(row);
    }
  }

  let controller: AnyController = ReadController;
  if (resource.create && resource.insert) controller = withCreating(controller, resource, find);
  if (resource.changes && resource.update) controller = withChanges(controller, resource, find);
  if (resource.remove) controller = withRemoving(controller, resource, find);
  // Nest and OpenAPI name routes after their class.
  Object.defineProperty(controller, 'name', { value: `${name}Controller` });
  return controller;
}

// biome-ignore lint/suspicious/noExplicitAny: a mixin's base must be a constructor of any arguments
type AnyController = new (...args: any[]) => any;
type Find<R> = (tx: Tx, actor: Actor, id: string) => Promise<R>;

function withCreating<R extends { id: string }>(
  Parent: AnyController,
  resource: Resource<R>,
  find: Find<R>,
): AnyController {
  const { path, name, view, create, insert } = resource as Required<Resource<R>>;

  @ApiTags(tagOf(name))
  @ApiBearerAuth()
  @Controller(`v1/${path}`)
  class CreatingController extends Parent {
    @Post()
    @Allow(resource.writers, 'register')
    @Creates(view, `A new ${name.toLowerCase()}`)
    add(
      @Caller() actor: Actor,
      @Body({ schema: create }) body: unknown,
      @Req() request: FastifyRequest,
      @Res({ passthrough: true }) reply: FastifyReply,
    ) {
      return (this.once as Once).create(actor, request, reply, async (tx) => {
        const id = await insert(tx, actor, body as never, (this.clock as Clock).now());
        return resource.toView(await find(tx, actor, id));
      });
    }
  }
  return CreatingController;
}

function withChanges<R extends { id: string }>(
  Parent: AnyController,
  resource: Resource<R>,
  find: Find<R>,
): AnyController {
  const { path, name, view, changes, update } = resource as Required<Resource<R>>;

  @ApiTags(tagOf(name))
  @ApiBearerAuth()
  @Controller(`v1/${path}`)
  class ChangingController extends Parent {
    @Patch(':id')
    @Allow(resource.writers, 'register')
    @Changes(view, `The changed ${name.toLowerCase()}`)
    async change(
      @Caller() actor: Actor,
      @Param('id', { schema: z.uuid() }) id: string,
      @Body({ schema: changes }) body: unknown,
      @Headers('if-match') ifMatch: string | undefined,
      @Res({ passthrough: true }) reply: FastifyReply,
    ) {
      const row = await (this.store as Store).inShop(actor.shopId, async (tx) => {
        const before = await find(tx, actor, id);
        requireVersion(ifMatch, (before as unknown as { version: number }).version);
        await update(tx, actor, before, body as never, (this.clock as Clock).now());
        return find(tx, actor, id);
      });
      setEtag(reply, row);
      return resource.toView(row);
    }
  }
  return ChangingController;
}

function withRemoving<R extends { id: string }>(
  Parent: AnyController,
  resource: Resource<R>,
  find: Find<R>,
): AnyController {
  const { path, name, remove } = resource as Required<Resource<R>>;

  @ApiTags(tagOf(name))
  @ApiBearerAuth()
  @Controller(`v1/${path}`)
  class RemovingController extends Parent {
    @Delete(':id')
    @Allow(resource.writers, 'register')
    @HttpCode(204)
    @ApiNoContentResponse({ description: 'It is gone' })
    async remove(@Caller() actor: Actor, @Param('id', { schema: z.uuid() }) id: string): Promise<void> {
      const now = (this.clock as Clock).now();
      await (this.store as Store).inShop(actor.shopId, async (tx) => remove(tx, actor, await find(tx, actor, id), now));
    }
  }
  return RemovingController;
}

/** `PartOrder` is headed `Part order`. */
function tagOf(name: string): string {
  return name.replace(/([a-z])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}

function setEtag(reply: FastifyReply, row: object): void {
  const { version } = row as { version?: number };
  if (version !== undefined) reply.header('etag', etagOf(version));
}

function keyText(value: unknown): string {
  return value instanceof Date ? value.toISOString() : String(value);
}
