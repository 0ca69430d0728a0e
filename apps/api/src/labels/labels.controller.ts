import { LabelId, LabelledMachine, LabelReadingCreate, LabelReadingTaken } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { dateColumn, nowAt, shopNow, takeReadings, wallClockOf } from '@deckround/register-store';
import { lastReadings, type Prisma, type Store, type Tx } from '@deckround/store';
import { Body, Controller, Get, Inject, Param, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { Public } from '../access/actor.js';
import { refuseFuture } from '../field-work/refuse-future.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { keptId } from './label-id.js';
import { machineName } from './machine-name.js';

const INCLUDE = { machine: true, shop: true } as const;
type Row = Prisma.MachineLabelGetPayload<{ include: typeof INCLUDE }>;

/** One label takes so many readings in that time: a person at a machine needs one or two. */
const MOST = 10;
const WITHIN_MS = 15 * 60_000;

/** What whoever holds a label may do without a sign-in: see the machine's last reading and enter the next. */
@ApiTags('Label')
@Controller('v1/labels/:id')
export class LabelsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Public()
  @Answers(200, LabelledMachine, 'The machine by name, and its last reading. The label’s id is all that is needed.')
  async read(@Param('id', { schema: LabelId }) id: string) {
    const label = await this.find(id);
    return this.store.inShop(label.shopId, async (tx) => {
      const last = (await lastReadings(tx, [label.machineId])).get(label.machineId);
      return {
        machineCode: label.machine.code,
        machineName: machineName(label.machine),
        lastReading: last ? { readAt: last.readAt.toISOString(), hours: String(last.hours) } : null,
      };
    });
  }

  @Post('readings')
  @Public()
  @Creates(LabelReadingTaken, 'The reading is kept; a doubtful one is set aside for the shop to look at')
  async record(
    @Param('id', { schema: LabelId }) id: string,
    @Body({ schema: LabelReadingCreate }) body: z.infer<typeof LabelReadingCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const { id: labelId, shopId, machineId } = await this.find(id);
    return this.once.create({ id: labelId, shopId }, request, reply, async (tx) => {
      const now = await shopNow(tx, this.clock.now());
      // Whoever scans a label knows the world's clock alone.
      const readAt = await shopNow(tx, new Date(body.readAt));
      refuseFuture([{ pointer: '/readAt', readAt: readAt.toISOString() }], now);
      await refuseHurry(tx, machineId, now);
      const reading = { machineId, readAt, hours: body.hours, source: 'label' } as const;
      const [row] = (await takeReadings(tx, shopId, [reading], now)).rows;
      return { readAt: row!.readAt.toISOString(), hours: String(row!.hours), status: row!.status };
    });
  }

  /** The shop is not known before the label is: like a sign-in, it is looked up across shops. */
  private async find(id: string): Promise<Row> {
    const row = await this.store.asOwner((tx) =>
      tx.machineLabel.findUnique({ where: { id: keptId(id) }, include: INCLUDE }),
    );
    if (!row) throw new DomainError('not-found', 'There is no such label. Scan it again, or tell the shop the hours.');
    const today = dateColumn(wallClockOf(nowAt(row.shop, this.clock.now()), row.shop.timeZone).slice(0, 10));
    const { retiredOn } = row.machine;
    if (row.revokedAt !== null || (retiredOn !== null && retiredOn <= today))
      throw new DomainError(
        'label-revoked',
        'This label is no longer valid. Scan the machine’s new label, or tell the shop the hours.',
      );
    return row;
  }
}

/** Counted in the database, so that it holds for any number of processes. */
async function refuseHurry(tx: Tx, machineId: string, now: Date): Promise<void> {
  const since = new Date(now.getTime() - WITHIN_MS);
  const recent = await tx.reading.count({ where: { machineId, source: 'label', recordedAt: { gt: since } } });
  if (recent >= MOST)
    throw new DomainError('too-many-readings', 'Too many readings by this label: wait a quarter of an hour.');
}
