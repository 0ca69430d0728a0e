import {
  PageQuery,
  pageOf,
  Reading,
  ReadingDecision,
  ReadingDecisionMade,
  ReadingQuery,
  ReadingsCreate,
  ReadingsTaken,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import {
  dateColumn,
  revisitReadings,
  shopNow,
  type TakenReading,
  takeReadings,
  wallClockOf,
} from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { hoursText, instantOrNull } from '../register/values.js';
import { refuseFuture } from './refuse-future.js';
import { requireMachines } from './require-machine.js';

type Row = Prisma.ReadingGetPayload<object>;

@ApiTags('Reading')
@ApiBearerAuth()
@Controller('v1/readings')
export class ReadingsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, pageOf(Reading, 'Reading'), 'Readings in order of time')
  async list(@Caller() actor: Actor, @Query({ schema: ReadingQuery }) query: z.infer<typeof ReadingQuery>) {
    const { cursor, limit, machineId, status } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.reading.findMany({
        where: {
          AND: [
            machineScope(actor),
            machineId === undefined ? {} : { machineId },
            status === undefined ? {} : { status },
            afterCursor('readAt', readCursor(cursor), (key) => new Date(key)),
          ],
        },
        orderBy: [{ readAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.readAt.toISOString(), toView);
  }

  @Post()
  @Allow(['manager', 'technician', 'supervisor'], 'readings')
  @Creates(ReadingsTaken, 'Each reading as it stands now, accepted or set aside with its reason')
  record(
    @Caller() actor: Actor,
    @Body({ schema: ReadingsCreate }) body: z.infer<typeof ReadingsCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const machineIds = [...new Set(body.readings.map((each) => each.machineId))];
      await requireMachines(tx, actor, machineIds);
      const now = await shopNow(tx, this.clock.now());
      refuseFuture(
        body.readings.map(({ readAt }, index) => ({ pointer: `/readings/${index}/readAt`, readAt })),
        now,
      );
      const readings = body.readings.map(({ machineId, readAt, hours, source }) => ({
        machineId,
        readAt: new Date(readAt),
        hours,
        source: sourceOf(actor, source),
      }));
      const { added, rows } = await takeReadings(tx, actor.shopId, readings, now);
      return { added, repeated: readings.length - added, readings: rows.map(toView) };
    });
  }

  @Get(':id')
  @Allow(['manager', 'technician', 'supervisor'], 'read')
  @Answers(200, Reading, 'The reading; its ETag is needed to decide on it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => find(tx, actor, id));
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }

  @Post(':id/decision')
  @Allow(['manager'])
  @Changes(Reading, 'A person has decided; the decision is not revisited by later readings')
  async decide(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Body({ schema: ReadingDecision }) body: z.infer<typeof ReadingDecision>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await find(tx, actor, id);
      requireVersion(ifMatch, before.version);
      const decidedAt = await shopNow(tx, this.clock.now());
      await keepDecision(tx, actor, before, body, decidedAt);
      const decided = { decidedBy: actor.id, decidedAt, version: { increment: 1 } };
      if (body.decision === 'accept') {
        await tx.reading.update({
          where: { id },
          data: { ...decided, status: 'accepted', reasonCode: null, reason: null },
        });
      } else {
        const reason = body.reason ?? `corrected to ${body.hours} h`;
        await tx.reading.update({
          where: { id },
          data: { ...decided, status: 'set-aside', reasonCode: 'by-hand', reason },
        });
      }
      if (body.decision === 'correct') {
        // The wrong figure stays on record; the right one is a reading of its own.
        await tx.reading.createMany({
          skipDuplicates: true,
          data: [
            {
              shopId: actor.shopId,
              machineId: before.machineId,
              readAt: before.readAt,
              hours: body.hours!,
              source: 'manager',
              ...{ decidedBy: actor.id, decidedAt },
            },
          ],
        });
      }
      await followInCompletions(tx, before, body);
      await revisitReadings(tx, [before.machineId]);
      return find(tx, actor, id);
    });
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }

  @Get(':id/decisions')
  @Allow(['manager', 'technician'], 'read')
  @Answers(200, pageOf(ReadingDecisionMade, 'ReadingDecisionMade'), 'What persons decided about it, first to last')
  async decisions(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Query({ schema: PageQuery }) { cursor, limit }: z.infer<typeof PageQuery>,
  ) {
    const rows = await this.store.inShop(actor.shopId, async (tx) => {
      await find(tx, actor, id);
      return tx.readingDecision.findMany({
        where: { AND: [{ readingId: id }, afterCursor('decidedAt', readCursor(cursor), (key) => new Date(key))] },
        include: { decidedByPerson: true },
        orderBy: [{ decidedAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      });
    });
    return toPage(rows, limit, (row) => row.decidedAt.toISOString(), toDecisionView);
  }
}

async function find(tx: Tx, actor: Actor, id: string): Promise<Row> {
  const row = await tx.reading.findFirst({ where: { id, ...machineScope(actor) } });
  if (!row) throw new DomainError('not-found', 'There is no such reading, or it is not yours to see.');
  return row;
}

/**
 * Work done that day was recorded at the same figure: where that was wrong, so was the start of the next interval. Work of
 * which no figure is known, or none since the reading was set aside, takes the one that is found right.
 */
async function followInCompletions(tx: Tx, before: Row, { decision, hours }: z.infer<typeof ReadingDecision>) {
  const { site } = await tx.machine.findUniqueOrThrow({ where: { id: before.machineId }, select: { site: true } });
  const doneOn = dateColumn(wallClockOf(before.readAt, site.timeZone).slice(0, 10));
  const meterHours = { accept: before.hours, 'set-aside': null, correct: hours ?? null }[decision];
  const unknown = decision === 'set-aside' ? [] : [{ meterHours: null }];
  await tx.completion.updateMany({
    where: { machineId: before.machineId, doneOn, OR: [{ meterHours: before.hours }, ...unknown] },
    data: { meterHours },
  });
}

/** Writes down what is decided now, and what stood before, in the transaction that decides it. */
async function keepDecision(
  tx: Tx,
  actor: Actor,
  before: Row,
  body: z.infer<typeof ReadingDecision>,
  decidedAt: Date,
): Promise<void> {
  const hoursAfter = { accept: before.hours, 'set-aside': null, correct: body.hours ?? null }[body.decision];
  await tx.readingDecision.create({
    data: {
      shopId: actor.shopId,
      readingId: before.id,
      decision: body.decision,
      hoursBefore: before.hours,
      hoursAfter,
      statusBefore: before.status,
      codeBefore: before.reasonCode,
      reasonBefore: before.reason,
      reason: body.reason ?? null,
      decidedBy: actor.id,
      decidedAt,
    },
  });
}

/** A person's reading is theirs, whatever the body says; an integration may say where it has it from. */
function sourceOf(actor: Actor, stated: TakenReading['source'] | undefined): TakenReading['source'] {
  return actor.role ?? stated ?? 'telematics';
}

function toDecisionView(row: Prisma.ReadingDecisionGetPayload<{ include: { decidedByPerson: true } }>) {
  const { decidedByPerson, ...fields } = row;
  return {
    ...fields,
    hoursBefore: String(row.hoursBefore),
    hoursAfter: hoursText(row.hoursAfter),
    decidedByName: decidedByPerson.name,
    decidedAt: row.decidedAt.toISOString(),
  };
}

function toView(row: Row) {
  return {
    ...row,
    readAt: row.readAt.toISOString(),
    hours: String(row.hours),
    suggestedHours: hoursText(row.suggestedHours),
    decidedAt: instantOrNull(row.decidedAt),
  };
}
