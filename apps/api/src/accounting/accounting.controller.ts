import { type ChargeDocument as Body_, type ChargeSettings, imbalance, journalEntry } from '@deckround/billing';
import {
  AccountingChanges,
  AccountingChangesQuery,
  Acknowledgement,
  ChargeDocument,
  JournalQuery,
  Payment,
  Reconciled,
  Reconciliation,
  Refusal,
} from '@deckround/contracts';
import { type Clock, DomainError } from '@deckround/platform';
import { dateColumn, dateText } from '@deckround/register-store';
import type { Prisma, Store, Tx } from '@deckround/store';
import { Body, Controller, Get, Inject, Param, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiBearerAuth, ApiOkResponse, ApiTags } from '@nestjs/swagger';
import { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { audit } from '../audit/audit.js';
import { pdfFile, ublFile } from '../charges/document-files.js';
import { DOCUMENT_INCLUDE, type DocumentRow, documentView } from '../charges/document-view.js';
import { Answers } from '../http/answer.js';
import { CLOCK, STORE } from '../http/tokens.js';
import { type DocumentChange, nextChange, recordChange } from './changes.js';
import { journalCsv, journalLines } from './journal-file.js';

const IdParam = z.uuid();
/** The accounts that held on the day of issue. */
type Kept = { readonly accounts: ChargeSettings['accounts'] };
type State = Prisma.AccountingStateGetPayload<object>;

/** What another system needs to take over documents exactly once. Every answer can be asked for again. */
@ApiTags('Accounting')
@ApiBearerAuth()
@Controller('v1/accounting')
@Allow(['manager'], 'accounting')
export class AccountingController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  @Get('changes')
  @Answers(200, AccountingChanges, 'What happened to issued documents after the sequence you handled last')
  async changes(
    @Caller() actor: Actor,
    @Query({ schema: AccountingChangesQuery }) { after, limit }: z.infer<typeof AccountingChangesQuery>,
  ) {
    const rows = await this.store.inShop(actor.shopId, (tx) =>
      tx.accountingChange.findMany({
        where: { sequence: { gt: after } },
        include: { document: true },
        orderBy: { sequence: 'asc' },
        take: limit + 1,
      }),
    );
    const shown = rows.slice(0, limit);
    return {
      items: shown.map(({ document, ...row }) => ({
        ...row,
        at: row.at.toISOString(),
        number: String(document.number),
        kind: document.kind,
        totalCents: document.totalMinor,
        currency: document.currency,
      })),
      last: shown.at(-1)?.sequence ?? after,
      more: rows.length > limit,
    };
  }

  @Get('documents/:id')
  @Answers(200, ChargeDocument, 'The issued document as JSON')
  async read(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return documentView(await this.find(actor, id));
  }

  @Get('documents/:id/ubl')
  @ApiOkResponse({ description: 'UBL 2.1', content: { 'application/xml': { schema: { type: 'string' } } } })
  async ubl(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return ublFile(await this.find(actor, id));
  }

  @Get('documents/:id/pdf')
  @ApiOkResponse({
    description: 'To be read by people',
    content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } },
  })
  async pdf(@Caller() actor: Actor, @Param('id', { schema: IdParam }) id: string) {
    return pdfFile(await this.find(actor, id));
  }

  @Post('documents/:id/acknowledge')
  @Answers(200, ChargeDocument, 'Taken over under your own number; the same again changes nothing')
  acknowledge(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: Acknowledgement }) { receiverNumber }: z.infer<typeof Acknowledgement>,
  ) {
    return this.turn(actor, id, 'acknowledged', (state) => {
      if (state.receiverNumber === receiverNumber) return null;
      if (state.receiverNumber !== null)
        throw new DomainError('conflict', `It was taken over before, as "${state.receiverNumber}".`);
      return { state: 'acknowledged', receiverNumber, refusedReason: null };
    });
  }

  @Post('documents/:id/paid')
  @Answers(200, ChargeDocument, 'Marked as paid; the same again changes nothing')
  paid(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: Payment }) { paidOn, reference }: z.infer<typeof Payment>,
  ) {
    return this.turn(actor, id, 'paid', (state) => {
      if (state.paidOn !== null) {
        if (dateText(state.paidOn) === paidOn && state.paymentReference === reference) return null;
        throw new DomainError('conflict', `It was marked as paid on ${dateText(state.paidOn)} before.`);
      }
      if (state.receiverNumber === null)
        throw new DomainError('conflict', 'Acknowledge it first, with your own number.');
      return { state: 'paid', paidOn: dateColumn(paidOn), paymentReference: reference };
    });
  }

  @Post('documents/:id/refuse')
  @Answers(200, ChargeDocument, 'Refused: the shop sees why; the same again changes nothing')
  refuse(
    @Caller() actor: Actor,
    @Param('id', { schema: IdParam }) id: string,
    @Body({ schema: Refusal }) { reason }: z.infer<typeof Refusal>,
  ) {
    return this.turn(actor, id, 'refused', (state) => {
      if (state.refusedReason === reason) return null;
      if (state.state !== 'waiting') throw new DomainError('conflict', `It is ${state.state} already.`);
      return { state: 'refused', refusedReason: reason };
    });
  }

  @Get('journal')
  @ApiOkResponse({
    description: 'Rows of the documents issued in these days; the same bytes whenever it is asked for again',
    content: { 'text/csv': { schema: { type: 'string' } }, 'application/jsonl': { schema: { type: 'string' } } },
  })
  async journal(
    @Caller() actor: Actor,
    @Query({ schema: JournalQuery }) { from, to, format }: z.infer<typeof JournalQuery>,
  ) {
    const rows = await this.store.inShop(actor.shopId, async (tx) => {
      const documents = await issuedBetween(tx, from, to);
      return documents.flatMap((row) => {
        const entry = journalEntry(row.id, row.document as unknown as Body_, (row.record as unknown as Kept).accounts);
        if (Number(imbalance(entry, row.currency)) !== 0) throw new Error(`The entry of ${row.id} does not balance`);
        return entry;
      });
    });
    const [text, type] =
      format === 'csv' ? [journalCsv(rows), 'text/csv; charset=utf-8'] : [journalLines(rows), 'application/jsonl'];
    return new StreamableFile(Buffer.from(text), {
      type,
      disposition: `attachment; filename="journal-${from}-${to}.${format}"`,
    });
  }

  @Post('reconcile')
  @Answers(200, Reconciled, 'What you lack of these days, and what differs')
  async reconcile(
    @Caller() actor: Actor,
    @Body({ schema: Reconciliation }) { from, to, known }: z.infer<typeof Reconciliation>,
  ) {
    const rows = await this.store.inShop(actor.shopId, (tx) => issuedBetween(tx, from, to));
    const theirs = new Map(known.map((each) => [each.documentId, each.totalCents]));
    const ours = new Set(rows.map((row) => row.id));
    const listed = (row: (typeof rows)[number]) => ({
      documentId: row.id,
      number: String(row.number),
      totalCents: row.totalMinor,
    });
    return {
      issued: rows.length,
      missing: rows.filter((row) => !theirs.has(row.id)).map(listed),
      different: rows.filter((row) => theirs.has(row.id) && theirs.get(row.id) !== row.totalMinor).map(listed),
      unknown: [...theirs.keys()].filter((id) => !ours.has(id)),
    };
  }

  private find(actor: Actor, id: string): Promise<DocumentRow> {
    return this.store.inShop(actor.shopId, (tx) => findIssued(tx, id));
  }

  /** Moves what accounting said of a document on; `null` = it stands so already, and nothing is recorded twice. */
  private turn(
    actor: Actor,
    id: string,
    what: DocumentChange,
    next: (state: State) => Prisma.AccountingStateUpdateInput | null,
  ) {
    return this.store.inShop(actor.shopId, async (tx) => {
      await findIssued(tx, id);
      await tx.$queryRaw`select id from accounting_state where document_id = ${id}::uuid for update`;
      const state = await tx.accountingState.findUniqueOrThrow({ where: { documentId: id } });
      const data = next(state);
      if (data !== null) {
        const now = this.clock.now();
        await tx.accountingState.update({ where: { id: state.id }, data: { ...data, version: { increment: 1 } } });
        await recordChange(tx, actor.shopId, await nextChange(tx, actor.shopId), id, what, now);
        await audit(tx, actor, { action: `document.${what}`, subjectKind: 'charge-document', subjectId: id }, now);
      }
      return documentView(await findIssued(tx, id));
    });
  }
}

async function findIssued(tx: Tx, id: string): Promise<DocumentRow> {
  const row = await tx.chargeDocument.findFirst({ where: { id, state: 'issued' }, include: DOCUMENT_INCLUDE });
  if (!row) throw new DomainError('not-found', 'There is no such issued document.');
  return row;
}

function issuedBetween(tx: Tx, from: string, to: string) {
  return tx.chargeDocument.findMany({
    where: { state: 'issued', issuedOn: { gte: dateColumn(from), lte: dateColumn(to) } },
    orderBy: { number: 'asc' },
  });
}
