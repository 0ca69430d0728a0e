import { SignedIn } from '@deckround/contracts';
import { createDemo, DEMO_TODAY, DEMO_WEEK } from '@deckround/demo';
import type { JobQueue } from '@deckround/jobs';
import { type Clock, DomainError, type Logger } from '@deckround/platform';
import { dateColumn } from '@deckround/register-store';
import type { Store } from '@deckround/store';
import { Controller, Inject, Post } from '@nestjs/common';
import { ApiBearerAuth, ApiTags } from '@nestjs/swagger';
import { AccessService } from '../access/access.service.js';
import { type Actor, Allow, Caller } from '../access/actor.js';
import { hashPassword } from '../access/secrets.js';
import { audit } from '../audit/audit.js';
import { Answers } from '../http/answer.js';
import { CLOCK, LOGGER, QUEUE, STORE } from '../http/tokens.js';
import { askRun } from '../planning/ask-run.js';

const FORECAST_DAYS = 14;

/** A full shop to look around in before one's own is filled. */
@ApiTags('Demo shop')
@ApiBearerAuth()
@Controller('v1/demo-shop')
export class DemoShopController {
  /** Pressed twice, the second waits for the first. */
  private readonly making = new Map<string, Promise<string>>();

  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(QUEUE) private readonly queue: JobQueue,
    @Inject(CLOCK) private readonly clock: Clock,
    @Inject(LOGGER) private readonly logger: Logger,
    @Inject(AccessService) private readonly access: AccessService,
  ) {}

  @Post()
  @Allow(['manager'])
  @Answers(201, SignedIn, 'A sign-in as manager of an invented shop, made at the first call and apart from one’s own')
  async open(@Caller() actor: Actor) {
    const making = this.making.get(actor.shopId) ?? this.shopFor(actor);
    this.making.set(actor.shopId, making);
    try {
      const shopId = await making;
      const manager = await this.store.asOwner((tx) =>
        tx.person.findFirstOrThrow({ where: { shopId, role: 'manager' }, include: { shop: true } }),
      );
      return this.access.openSession(manager);
    } finally {
      this.making.delete(actor.shopId);
    }
  }

  private async shopFor(actor: Actor): Promise<string> {
    const before = await this.store.asOwner(async (tx) => {
      const { demoOf } = await tx.shop.findUniqueOrThrow({ where: { id: actor.shopId } });
      if (demoOf !== null) throw new DomainError('conflict', 'This is the demo shop already.');
      const found = await tx.shop.findUnique({
        where: { demoOf: actor.shopId },
        include: { _count: { select: { personRows: true } } },
      });
      // Cut off while it was made, it has nobody in it: it is made anew.
      if (found && found._count.personRows === 0) {
        await tx.shop.delete({ where: { id: found.id } });
        return null;
      }
      return found?.id ?? null;
    });
    if (before !== null) return before;
    const { shopId } = await createDemo(this.store, {
      hashPassword,
      demoOf: actor.shopId,
      now: this.clock.now(),
    });
    const run = await this.store.inShop(shopId, (tx) =>
      tx.forecastRun.create({
        data: { shopId, asOf: dateColumn(DEMO_TODAY), costFrom: dateColumn(DEMO_WEEK), costDays: FORECAST_DAYS },
      }),
    );
    await askRun(this.queue, this.logger, 'forecast', shopId, run.id);
    const act = { action: 'demo.made', subjectKind: 'shop', subjectId: shopId };
    await this.store.inShop(actor.shopId, (tx) => audit(tx, actor, act, this.clock.now()));
    return shopId;
  }
}
