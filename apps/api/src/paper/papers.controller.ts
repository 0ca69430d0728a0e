import { FieldDayPaperQuery, PaperQuery, WeekPaperQuery } from '@deckround/contracts';
import { type Clock, type Config, DomainError } from '@deckround/platform';
import { addDays } from '@deckround/register';
import { dateColumn, dateText, shopNow, wallClockOf } from '@deckround/register-store';
import type { Store } from '@deckround/store';
import { applyDecorators, Controller, Get, Inject, Param, Query, Req, StreamableFile } from '@nestjs/common';
import { ApiBearerAuth, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { technicianOf } from '../field-day/field-day.controller.js';
import { isDoneAhead } from '../field-day/left-to-load.js';
import { chooseDay, loadDay } from '../field-day/load-day.js';
import { publicAddress } from '../http/public-address.js';
import { CLOCK, CONFIG, STORE } from '../http/tokens.js';
import type { Day } from './day-of-paper.js';
import { paperWords } from './paper-words.js';

const Printed = (description: string) =>
  applyDecorators(
    ApiOkResponse({ description, content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } } }),
  );

/** What is carried along on paper: black on white, to be read and ticked with greasy hands. */
@ApiTags('Printed sheets')
@ApiBearerAuth()
@Controller('v1')
@Allow(['manager', 'technician'], 'read')
export class PapersController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CONFIG) private readonly config: Config,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get('week/load-lists.pdf')
  @Printed('Load lists of the week, a page or more for each technician-day with visits')
  async week(
    @Caller() actor: Actor,
    @Query({ schema: WeekPaperQuery }) { weekOf, days, language }: z.infer<typeof WeekPaperQuery>,
    @Req() request: FastifyRequest,
  ) {
    const loaded = await this.store.inShop(actor.shopId, async (tx) => {
      const routes = await tx.dayRoute.findMany({
        where: { routeDate: { gte: dateColumn(weekOf), lte: dateColumn(addDays(weekOf, days - 1)) } },
        orderBy: [{ routeDate: 'asc' }, { technician: { name: 'asc' } }],
      });
      const all: Day[] = [];
      for (const { technicianId, routeDate } of routes) all.push(await loadDay(tx, technicianId, dateText(routeDate)));
      return all.filter((day) => !day.visits.every(isDoneAhead));
    });
    if (loaded.length === 0)
      throw new DomainError('plan-not-ready', 'No visit is planned in these days: plan the week, then print.');
    const { drawLoadLists } = await import('./load-list.js');
    return pdfNamed(
      `load-lists-${weekOf}.pdf`,
      await drawLoadLists(loaded, addressOf(this.config, request), paperWords(language)),
    );
  }

  @Get('field-day/load-list.pdf')
  @Printed('What goes into the van on one day of a technician')
  async loadList(
    @Caller() actor: Actor,
    @Query({ schema: FieldDayPaperQuery }) query: z.infer<typeof FieldDayPaperQuery>,
    @Req() request: FastifyRequest,
  ) {
    const day = await this.store.inShop(actor.shopId, async (tx) => {
      const technicianId = query.technicianId ?? (await technicianOf(tx, actor));
      const { timeZone } = await tx.shop.findFirstOrThrow();
      const today = wallClockOf(await shopNow(tx, this.clock.now()), timeZone).slice(0, 10);
      const { date } = await chooseDay(tx, technicianId, today, query.date);
      return loadDay(tx, technicianId, date);
    });
    const { drawLoadLists } = await import('./load-list.js');
    return pdfNamed(
      `load-list-${day.date}.pdf`,
      await drawLoadLists([day], addressOf(this.config, request), paperWords(query.language)),
    );
  }

  @Get('visits/:id/visit-sheet.pdf')
  @Printed('One visit: machines with hours, cautions, steps and torque, and room to write')
  async visitSheet(
    @Caller() actor: Actor,
    @Param('id', { schema: z.uuid() }) id: string,
    @Query({ schema: PaperQuery }) { language }: z.infer<typeof PaperQuery>,
    @Req() request: FastifyRequest,
  ) {
    const day = await this.store.inShop(actor.shopId, async (tx) => {
      const row = await tx.visit.findFirst({ where: { id } });
      if (!row) throw new DomainError('not-found', 'There is no such visit. A re-plan replaces proposed visits.');
      if (row.state === 'cancelled') throw new DomainError('visit-closed', 'The visit is cancelled: nobody drives it.');
      return loadDay(tx, row.technicianId, dateText(row.visitDate));
    });
    const visit = day.visits.find((each) => each.id === id)!;
    const address = `${addressOf(this.config, request)(day)}/${id}`;
    const { drawVisitSheet } = await import('./visit-sheet.js');
    return pdfNamed(`visit-${day.date}.pdf`, await drawVisitSheet(day, visit, address, paperWords(language)));
  }
}

/** The page of a technician-day, as the code on the sheet has it. */
function addressOf(config: Config, request: FastifyRequest): (day: Day) => string {
  const root = publicAddress(config, request);
  return (day) => `${root}/day/${day.date}`;
}

function pdfNamed(name: string, bytes: Buffer): StreamableFile {
  return new StreamableFile(bytes, { type: 'application/pdf', disposition: `inline; filename="${name}"` });
}
