import {
  LabelId,
  LabelSheetQuery,
  MachineLabel,
  MachineLabelCreate,
  MachineLabelQuery,
  MachineLabels,
  pageOf,
} from '@deckround/contracts';
import { type Clock, type Config, DomainError } from '@deckround/platform';
import { machineInUse, shopNow, todayOf } from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import {
  Body,
  Controller,
  Delete,
  Get,
  HttpCode,
  Inject,
  Param,
  Post,
  Query,
  Req,
  Res,
  StreamableFile,
} from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, machineScope } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { publicAddress } from '../http/public-address.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import { keptId, newLabelId } from './label-id.js';
import { machineName } from './machine-name.js';

const INCLUDE = { machine: true } as const;
type Row = Prisma.MachineLabelGetPayload<{ include: typeof INCLUDE }>;

@ApiTags('Machine label')
@ApiBearerAuth()
@Controller('v1')
export class MachineLabelsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get('machine-labels')
  @Allow(['manager'])
  @Answers(200, pageOf(MachineLabel, 'MachineLabel'), 'Labels in order of making')
  async list(@Caller() actor: Actor, @Query({ schema: MachineLabelQuery }) query: z.infer<typeof MachineLabelQuery>) {
    const { cursor, limit, siteId, machineId, revoked } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.machineLabel.findMany({
        where: {
          AND: [
            machineId === undefined ? {} : { machineId },
            siteId === undefined ? {} : { machine: { siteId } },
            revoked === undefined ? {} : { revokedAt: revoked === 'true' ? { not: null } : null },
            afterCursor('madeAt', readCursor(cursor, LabelId), (key) => new Date(key)),
          ],
        },
        include: INCLUDE,
        orderBy: [{ madeAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.madeAt.toISOString(), toView);
  }

  @Get('machine-labels/:id')
  @Allow(['manager', 'technician', 'supervisor'])
  @Answers(200, MachineLabel, 'Whose label it is: for those who scan it signed in')
  async read(@Caller() actor: Actor, @Param('id', { schema: LabelId }) id: string) {
    return toView(await this.store.inShop(actor.shopId, (tx) => find(tx, actor, id)));
  }

  @Post('machine-labels')
  @Allow(['manager'])
  @Creates(MachineLabels, 'The labels of these machines; those that had none have a new one')
  make(
    @Caller() actor: Actor,
    @Body({ schema: MachineLabelCreate }) body: z.infer<typeof MachineLabelCreate>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const machineIds = await machinesFor(tx, body, await todayOf(tx, this.clock.now()));
      const madeAt = await shopNow(tx, this.clock.now());
      const had = await tx.machineLabel.findMany({ where: { machineId: { in: machineIds }, revokedAt: null } });
      const bare = machineIds.filter((id) => !had.some((label) => label.machineId === id));
      const { count } = await tx.machineLabel.createMany({
        data: bare.map((machineId) => ({
          id: newLabelId(),
          shopId: actor.shopId,
          machineId,
          madeAt,
          madeBy: actor.id,
        })),
        skipDuplicates: true, // another call may just have made them
      });
      if (count > 0) {
        const { machineId, siteId } = body;
        const subject = { subjectKind: machineId ? 'machine' : 'site', subjectId: (machineId ?? siteId)! };
        await audit(tx, actor, { action: 'labels.made', ...subject, detail: { made: count } }, madeAt);
      }
      return { made: count, items: (await liveLabels(tx, { id: { in: machineIds } })).map(toView) };
    });
  }

  @Delete('machine-labels/:id')
  @Allow(['manager'])
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'Whoever scans it is refused from now on' })
  async revoke(@Caller() actor: Actor, @Param('id', { schema: LabelId }) id: string): Promise<void> {
    await this.store.inShop(actor.shopId, async (tx) => {
      const label = await find(tx, actor, id);
      if (label.revokedAt !== null) return;
      const revokedAt = await shopNow(tx, this.clock.now());
      await tx.machineLabel.update({ where: { id: label.id }, data: { revokedAt, revokedBy: actor.id } });
      const act = { action: 'label.revoked', subjectKind: 'machine', subjectId: label.machineId };
      await audit(tx, actor, act, revokedAt);
    });
  }

  @Get('sites/:id/label-sheet')
  @Allow(['manager'])
  @ApiOkResponse({
    description: 'To be printed at 100 % on label paper; made labels only',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  async sheet(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) siteId: string,
    @Query({ schema: LabelSheetQuery }) query: z.infer<typeof LabelSheetQuery>,
    @Req() request: FastifyRequest,
  ) {
    const { machineId, ...options } = query;
    const address = publicAddress(this.config, request);
    const { shop, site, labels } = await this.store.inShop(actor.shopId, async (tx) => {
      const found = await tx.site.findFirst({ where: { id: siteId } });
      if (!found) throw new DomainError('not-found', 'There is no such site.');
      const inUse = machineInUse(await todayOf(tx, this.clock.now()));
      const machine = { siteId, ...inUse, ...(machineId !== undefined && { id: machineId }) };
      const live = await liveLabels(tx, machine);
      if (live.length < (await tx.machine.count({ where: machine })) || live.length === 0)
        throw new DomainError(
          'conflict',
          'Some of these machines have no label yet. Make them with POST /v1/machine-labels, then print.',
        );
      return { shop: await tx.shop.findFirstOrThrow(), site: found, labels: live };
    });
    const printed = labels.map(({ id, machine }) => ({
      // Capitals make a code of fewer modules; the address is read in either case.
      address: `${address}/l/${id}`.toUpperCase(),
      machineCode: machine.code,
      machineName: machineName(machine),
      serial: machine.serial,
    }));
    const day = labels.map((label) => label.madeAt).sort((a, b) => b.getTime() - a.getTime())[0]!;
    const { drawLabelSheet } = await import('./draw-sheet.js');
    return new StreamableFile(await drawLabelSheet(printed, { name: shop.name, day }, options), {
      type: 'application/pdf',
      disposition: `inline; filename="labels-${site.code.replaceAll('/', '-')}.pdf"`,
    });
  }
}

async function machinesFor(
  tx: Tx,
  { machineId, siteId }: z.infer<typeof MachineLabelCreate>,
  today: string,
): Promise<string[]> {
  const where = machineId === undefined ? { siteId: siteId! } : { id: machineId };
  const rows = await tx.machine.findMany({ where: { ...where, ...machineInUse(today) }, select: { id: true } });
  if (rows.length === 0)
    throw new DomainError(
      'not-found',
      machineId === undefined ? 'No machine stands at that site.' : 'There is no such machine, or it is retired.',
    );
  return rows.map((row) => row.id);
}

function liveLabels(tx: Tx, machine: object): Promise<Row[]> {
  return tx.machineLabel.findMany({
    where: { revokedAt: null, machine },
    include: INCLUDE,
    orderBy: [{ machine: { code: 'asc' } }, { id: 'asc' }],
  });
}

async function find(tx: Tx, actor: Actor, id: string): Promise<Row> {
  const row = await tx.machineLabel.findFirst({ where: { id: keptId(id), ...machineScope(actor) }, include: INCLUDE });
  if (!row) throw new DomainError('not-found', 'There is no such label, or its machine is not yours to see.');
  return row;
}

function toView({ machine, ...row }: Row) {
  return {
    ...row,
    machineCode: machine.code,
    siteId: machine.siteId,
    madeAt: row.madeAt.toISOString(),
    revokedAt: row.revokedAt?.toISOString() ?? null,
  };
}
