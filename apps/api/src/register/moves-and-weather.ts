import {
  Id,
  MachineMove,
  MachineMoveCreate,
  PageQuery,
  pageOf,
  WeatherCreate,
  WeatherDay,
  WeatherKept,
} from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma, Store } from '@deckround/store';
import { Body, Controller, Get, Inject, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { requireMachines } from '../field-work/require-machine.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { STORE } from '../http/tokens.js';
import { type Resource, resourceController } from './resource.js';
import { given } from './values.js';

const moves: Resource<Prisma.MachineMoveGetPayload<object>> = {
  path: 'machine-moves',
  name: 'MachineMove',
  view: MachineMove,
  query: PageQuery.extend({ machineId: Id.optional() }),
  create: MachineMoveCreate,
  readers: ['manager', 'technician'],
  writers: ['manager'],
  order: 'untilDate',
  orderValue: (key) => new Date(key),
  scope: machineScope,
  where: ({ machineId }) => given({ machineId }),
  table: (tx) => tx.machineMove,
  toView: ({ untilDate, ...row }) => ({ ...row, until: dateText(untilDate) }),
  insert: async (tx, actor, { machineId, fromSiteId, until }: z.infer<typeof MachineMoveCreate>) => {
    await requireMachines(tx, actor, [machineId]);
    const row = await tx.machineMove.create({
      data: { shopId: actor.shopId, machineId, fromSiteId, untilDate: dateColumn(until) },
    });
    return row.id;
  },
  remove: async (tx, _actor, row) => {
    await tx.machineMove.delete({ where: { id: row.id } });
  },
};
export const MachineMovesController = resourceController(moves);

@ApiTags('Weather')
@ApiBearerAuth()
@Controller('v1/weather')
export class WeatherController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Allow(['manager'], 'read')
  @Answers(200, pageOf(WeatherDay, 'WeatherDay'), 'Days of weather, in order of date')
  async list(@Caller() actor: Actor, @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.weatherDay.findMany({
        where: afterCursor('weatherDate', readCursor(cursor), (key) => new Date(key)),
        orderBy: [{ weatherDate: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(
      rows,
      limit,
      (row) => row.weatherDate.toISOString(),
      ({ weatherDate, ...row }) => ({ ...row, date: dateText(weatherDate) }),
    );
  }

  @Post()
  @Allow(['manager'], 'readings')
  @Creates(WeatherKept, 'The days are kept; a day that was there before has the new values')
  keep(
    @Caller() actor: Actor,
    @Body({ schema: WeatherCreate }) { days }: z.infer<typeof WeatherCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const known = new Set((await tx.site.findMany({ select: { id: true } })).map((site) => site.id));
      const foreign = days.findIndex((day) => day.siteId !== null && !known.has(day.siteId));
      if (foreign >= 0) {
        throw new DomainError('invalid-input', 'There is no such site.', [
          { pointer: `/days/${foreign}/siteId`, detail: 'not a site of this shop; null = the whole region' },
        ]);
      }
      const dates = days.map((day) => dateColumn(day.date));
      const before = await tx.weatherDay.findMany({ where: { weatherDate: { in: dates } } });
      const keyOf = (siteId: string | null, date: string) => `${siteId}|${date}`;
      const newest = new Map(days.map((day) => [keyOf(day.siteId, day.date), day]));
      const replaced = before.filter((row) => newest.has(keyOf(row.siteId, dateText(row.weatherDate))));
      await tx.weatherDay.deleteMany({ where: { id: { in: replaced.map((row) => row.id) } } });
      await tx.weatherDay.createMany({
        data: [...newest.values()].map(({ date, ...day }) => ({
          shopId: actor.shopId,
          weatherDate: dateColumn(date),
          ...day,
        })),
      });
      return { kept: newest.size, replaced: replaced.length };
    });
  }
}
