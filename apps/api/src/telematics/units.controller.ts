import { pageOf, TelematicsMatch, TelematicsUnit, TelematicsUnitQuery } from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { takeReadings } from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Put, Query, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { requireMachines } from '../field-work/require-machine.js';
import { Answers, Changes } from '../http/answer.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { hoursText, instantOrNull } from '../register/values.js';

const INCLUDE = { machine: true } as const;
type Row = Prisma.TelematicsUnitGetPayload<{ include: typeof INCLUDE }>;
const IdParam = z.uuid();

/** Whose machine is not known and what nobody has put aside. */
const UNMATCHED = { machineId: null, matchedBy: null } as const;

@ApiTags('Telematics')
@ApiBearerAuth()
@Controller('v1/telematics/units')
export class TelematicsUnitsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get()
  @Allow(['manager'], 'read')
  @Answers(200, pageOf(TelematicsUnit, 'TelematicsUnit'), 'Machines heard from, in order of first hearing')
  async list(
    @Caller() actor: Actor,
    @Query({ schema: TelematicsUnitQuery }) query: z.infer<typeof TelematicsUnitQuery>,
  ) {
    const { cursor, limit, matched } = query;
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.telematicsUnit.findMany({
        where: {
          AND: [
            matched === undefined ? {} : matched === 'true' ? { NOT: UNMATCHED } : UNMATCHED,
            afterCursor('firstHeardAt', readCursor(cursor), (key) => new Date(key)),
          ],
        },
        include: INCLUDE,
        orderBy: [{ firstHeardAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.firstHeardAt.toISOString(), toView);
  }

  @Get(':id')
  @Allow(['manager'], 'read')
  @Answers(200, TelematicsUnit, 'The machine as it was heard; its ETag is needed to match it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => find(tx, id));
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }

  @Put(':id/machine')
  @Allow(['manager'])
  @Changes(TelematicsUnit, 'Matched by hand, which stays; its last reading has entered, later ones will')
  async match(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: TelematicsMatch }) { machineId }: z.infer<typeof TelematicsMatch>,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const now = this.clock.now();
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await find(tx, id);
      requireVersion(ifMatch, before.version);
      if (machineId !== null) await requireMachines(tx, actor, [machineId]);
      await tx.telematicsUnit.update({
        where: { id },
        data: { machineId, matchedBy: 'hand', version: { increment: 1 } },
      });
      if (machineId !== null && before.lastHours !== null && before.lastHoursAt !== null) {
        const hours = String(before.lastHours);
        await takeReadings(
          tx,
          actor.shopId,
          [{ machineId, readAt: before.lastHoursAt, hours, source: 'telematics' }],
          now,
        );
      }
      const act = { action: 'telematics.matched', subjectKind: 'telematics-unit', subjectId: id };
      await audit(tx, actor, { ...act, detail: { machineId, before: before.machineId } }, now);
      return find(tx, id);
    });
    reply.header('etag', etagOf(row.version));
    return toView(row);
  }
}

async function find(tx: Tx, id: string): Promise<Row> {
  const row = await tx.telematicsUnit.findUnique({ where: { id }, include: INCLUDE });
  if (!row) throw new DomainError('not-found', 'No such machine was heard from.');
  return row;
}

function toView({ machine, ...row }: Row) {
  return {
    ...row,
    machineCode: machine?.code ?? null,
    firstHeardAt: row.firstHeardAt.toISOString(),
    lastHeardAt: row.lastHeardAt.toISOString(),
    lastHours: hoursText(row.lastHours),
    lastHoursAt: instantOrNull(row.lastHoursAt),
  };
}
