import type { ChargeDocument as Body_ } from '@deckround/billing';
import {
  ChargeAmendment,
  ChargeCredit,
  ChargeDocument,
  ChargeDocumentQuery,
  ChargeFacts,
  ChargeLeave,
  ChargesSince,
  pageOf,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { shopNow } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Headers, Inject, Param, Patch, Post, Query, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { type Actor, Allow, Caller, siteScope } from '../access/actor.js';
import { Answers, Changes, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { afterCursor, readCursor, toPage } from '../http/paging.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { etagOf, requireVersion } from '../http/version.js';
import { type Facts, factsOf } from './charged-visit.js';
import { pdfFile, ublFile } from './document-files.js';
import { DOCUMENT_INCLUDE, type DocumentRow, documentView } from './document-view.js';
import { draftCharges, redraftCharges } from './draft-charges.js';
import { creditDocument, issueDraft } from './issue.js';
import { chargesSince, leaveAsItIs } from './left-as-it-is.js';
import { shopCharges } from './settings.js';

const IdParam = z.uuid();
const NoBody = z.strictObject({}).meta({ id: 'Empty' });

@ApiTags('Charge document')
@ApiBearerAuth()
@Controller('v1/charge-documents')
export class ChargeDocumentsController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Get()
  @Allow(['manager', 'supervisor'])
  @Answers(
    200,
    pageOf(ChargeDocument, 'ChargeDocument'),
    'Documents in order of making; supervisors see issued ones of their sites, if the shop wants it',
  )
  async list(
    @Caller() actor: Actor,
    @Query({ schema: ChargeDocumentQuery }) query: z.infer<typeof ChargeDocumentQuery>,
  ) {
    const { cursor, limit, ...equal } = query;
    const rows = await this.store.inShop(actor.shopId, async (tx) =>
      tx.chargeDocument.findMany({
        where: {
          AND: [
            await visibleTo(tx, actor),
            equal,
            afterCursor('createdAt', readCursor(cursor), (key) => new Date(key)),
          ],
        },
        include: DOCUMENT_INCLUDE,
        orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
        take: limit + 1,
      }),
    );
    return toPage(rows, limit, (row) => row.createdAt.toISOString(), documentView);
  }

  @Get(':id')
  @Allow(['manager', 'supervisor'])
  @Answers(200, ChargeDocument, 'The document; the ETag of a draft is needed to change it')
  async read(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, (tx) => findDocument(tx, actor, id));
    reply.header('etag', etagOf(row.version));
    return documentView(row);
  }

  @Get(':id/since')
  @Allow(['manager'])
  @Answers(200, ChargesSince, 'What its visit’s records say by now, against what it charges; an amendment charges it')
  since(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return this.store.inShop(actor.shopId, async (tx) => {
      const row = await findDocument(tx, actor, id);
      return row.kind === 'invoice' ? chargesSince(tx, row) : { missing: [], surplus: [], left: null };
    });
  }

  @Post(':id/leave')
  @Allow(['manager'])
  @Creates(
    ChargesSince,
    'It stays as it is, although its visit’s records say otherwise; what comes to light later is told',
  )
  leave(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: ChargeLeave }) body: z.infer<typeof ChargeLeave>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const row = await holdDocument(tx, actor, id);
      await leaveAsItIs(tx, actor, row, body.reason, await shopNow(tx, this.clock.now()));
      return chargesSince(tx, row);
    });
  }

  @Get(':id/ubl')
  @Allow(['manager', 'supervisor'])
  @ApiOkResponse({ description: 'UBL 2.1', content: { 'application/xml': { schema: { type: 'string' } } } })
  async ubl(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return ublFile(await this.store.inShop(actor.shopId, (tx) => findDocument(tx, actor, id)));
  }

  @Get(':id/pdf')
  @Allow(['manager', 'supervisor'])
  @ApiOkResponse({
    description: 'To be read by people',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  async pdf(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return pdfFile(await this.store.inShop(actor.shopId, (tx) => findDocument(tx, actor, id)));
  }

  @Patch(':id')
  @Allow(['manager'])
  @Changes(ChargeDocument, 'The draft, computed anew by the settings of today')
  async change(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: ChargeFacts }) body: Facts,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const row = await this.store.inShop(actor.shopId, async (tx) => {
      const before = await holdDocument(tx, actor, id);
      requireVersion(ifMatch, before.version);
      if (before.state !== 'draft')
        throw new DomainError('document-issued', 'It is issued and stays as it is: amend or credit it instead.');
      await redraftCharges(tx, before, body);
      return findDocument(tx, actor, id);
    });
    reply.header('etag', etagOf(row.version));
    return documentView(row);
  }

  @Post(':id/issue')
  @Allow(['manager'])
  @Creates(ChargeDocument, 'It has its number now and cannot be changed any more; accounting sees it')
  issue(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: NoBody }) _body: object,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      await issueDraft(tx, actor, await holdDocument(tx, actor, id), await shopNow(tx, this.clock.now()));
      return documentView(await findDocument(tx, actor, id));
    });
  }

  @Post(':id/credit')
  @Allow(['manager'])
  @Creates(ChargeDocument, 'The credit, issued: it takes the whole document back')
  credit(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: ChargeCredit }) body: z.infer<typeof ChargeCredit>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const row = await holdDocument(tx, actor, id);
      const creditId = await creditDocument(tx, actor, row, body.reason, await shopNow(tx, this.clock.now()));
      return documentView(await findDocument(tx, actor, creditId));
    });
  }

  @Post(':id/amend')
  @Allow(['manager'])
  @Creates(ChargeDocument, 'The document is credited; this is the draft that stands for it')
  amend(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: ChargeAmendment }) body: z.infer<typeof ChargeAmendment>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const row = await holdDocument(tx, actor, id);
      await creditDocument(tx, actor, row, body.reason, await shopNow(tx, this.clock.now()));
      const { number, issuedOn } = row.document as unknown as Body_;
      const refersTo = { number: number!, issuedOn: issuedOn! };
      const replaced = { id: row.id, customerId: row.customerId, refersTo, facts: factsOf(row) };
      const draftId = await draftCharges(tx, row.visitId, body.facts, replaced);
      if (draftId === null)
        throw new DomainError('conflict', 'No work is left to charge: take the document back without another.');
      return documentView(await findDocument(tx, actor, draftId));
    });
  }
}

async function visibleTo(tx: Tx, actor: Actor): Promise<object> {
  if (actor.role !== 'supervisor') return {};
  const { settings } = await shopCharges(tx);
  if (!settings.supervisorsSeeDocuments)
    throw new DomainError('not-allowed', 'The shop does not show charge documents here: ask the shop.');
  return { state: 'issued', ...siteScope(actor) };
}

async function findDocument(tx: Tx, actor: Actor, id: string): Promise<DocumentRow> {
  const row = await tx.chargeDocument.findFirst({
    where: { AND: [{ id }, await visibleTo(tx, actor)] },
    include: DOCUMENT_INCLUDE,
  });
  if (!row) throw new DomainError('not-found', 'There is no such charge document, or it is not yours to see.');
  return row;
}

/** The document, held until the transaction ends: of two who change it at the same time, the second sees the first's. */
async function holdDocument(tx: Tx, actor: Actor, id: string): Promise<DocumentRow> {
  await tx.$queryRaw`select id from charge_document where id = ${id}::uuid for update`;
  return findDocument(tx, actor, id);
}
