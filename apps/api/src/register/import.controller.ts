import { RegisterFiles, RegisterPreview } from '@deckround/contracts';
import { DomainError } from '@deckround/platform';
import { DEFAULT_SHOP, type RegisterReading, readRegister } from '@deckround/register';
import { type ImportResult, importRegister } from '@deckround/register-store';
import type { Store, Tx } from '@deckround/store';
import { Body, Controller, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { Answers, Creates } from '../http/answer.js';
import { Once } from '../http/once.js';
import { STORE } from '../http/tokens.js';

type Files = z.infer<typeof RegisterFiles>['files'];

@ApiTags('Register import')
@ApiBearerAuth()
@Controller('v1/register-imports')
export class ImportController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(Once) private readonly once: Once,
  ) {}

  @Post('check')
  @Allow(['manager'], 'register')
  @HttpCode(200)
  @Answers(200, RegisterPreview, 'What importing these files would do, fault by fault; nothing is changed')
  async check(@Caller() actor: Actor, @Body({ schema: RegisterFiles }) body: z.infer<typeof RegisterFiles>) {
    const timeZone = await this.store.inShop(actor.shopId, zoneOf);
    const reading = await read(body.files, timeZone);
    if (reading.register === null) return preview(reading, null);
    return preview(reading, await this.tryOut(actor.shopId, reading.register));
  }

  @Post()
  @Allow(['manager'], 'register')
  @Creates(RegisterPreview, 'Imported: new rows added, differing ones changed, none removed')
  import(
    @Caller() actor: Actor,
    @Body({ schema: RegisterFiles }) body: z.infer<typeof RegisterFiles>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return this.once.create(actor, request, reply, async (tx) => {
      const reading = await read(body.files, await zoneOf(tx));
      if (reading.register === null) {
        throw new DomainError(
          'invalid-input',
          'The files have faults. Nothing was imported.',
          reading.faults.map(({ file, line, column, message, clause }) => ({
            pointer: [`/files/${file}`, line, column].filter(Boolean).join(':'),
            detail: message,
            ...(clause === null ? {} : { clause }),
          })),
        );
      }
      return preview(reading, await importRegister(tx, actor.shopId, reading.register));
    });
  }

  /** The import itself, taken back at its end: the preview cannot differ from what follows. */
  private async tryOut(shopId: string, register: NonNullable<RegisterReading['register']>): Promise<ImportResult> {
    let result: ImportResult | undefined;
    try {
      await this.store.inShop(shopId, async (tx) => {
        result = await importRegister(tx, shopId, register);
        throw new TakenBack();
      });
    } catch (error) {
      if (!(error instanceof TakenBack)) throw error;
    }
    return result!;
  }
}

class TakenBack extends Error {}

async function zoneOf(tx: Tx): Promise<string> {
  return (await tx.shop.findFirstOrThrow()).timeZone;
}

function read(files: Files, timeZone: string): Promise<RegisterReading> {
  const source = {
    open: (name: string) => {
      const text = files[name as keyof Files];
      return text === undefined ? null : bytesOf(text);
    },
  };
  return readRegister(source, { ...DEFAULT_SHOP, timeZone });
}

async function* bytesOf(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text);
}

function preview({ faults, faultCount, counts }: RegisterReading, result: ImportResult | null) {
  return {
    faultCount,
    faults: [...faults],
    rows: { ...counts },
    counts: result && { ...result.counts },
    readingsSetAside: result?.readings.setAside ?? null,
  };
}
