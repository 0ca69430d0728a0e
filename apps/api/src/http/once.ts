import { createHash } from 'node:crypto';
import { type Clock, DomainError } from '@deckround/platform';
import type { Store, Tx } from '@deckround/store';
import { Inject, Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Actor } from '../access/actor.js';
import { CLOCK, STORE } from './tokens.js';
import { etagOf } from './version.js';

const KEPT_DAYS = 7;

/** Creating calls happen once per Idempotency-Key: the effect and the memory of it are one transaction. */
@Injectable()
export class Once {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(CLOCK) private readonly clock: Clock,
  ) {}

  /**
   * Runs `work` unless this actor has sent the same key to the same route before; then the first answer is given again.
   * @throws DomainError idempotency-key-missing, or idempotency-key-reused when the body differs from the first
   */
  async create<V extends object>(
    actor: Pick<Actor, 'id' | 'shopId'>,
    request: FastifyRequest,
    reply: FastifyReply,
    work: (tx: Tx) => Promise<V>,
  ): Promise<V> {
    const key = keyOf(request);
    const scope = `${request.method} ${request.url.split('?')[0]} ${actor.id}`;
    const requestHash = createHash('sha256')
      .update(JSON.stringify(request.body ?? null))
      .digest('hex');
    const answer = await this.store.inShop(actor.shopId, async (tx) => {
      const expiresAt = new Date(this.clock.now().getTime() + KEPT_DAYS * 86_400_000);
      await tx.idempotentRequest.deleteMany({ where: { scope, key, expiresAt: { lt: this.clock.now() } } });
      // A second request with the same key waits here until the first has ended, one way or the other.
      const { count } = await tx.idempotentRequest.createMany({
        data: [{ shopId: actor.shopId, scope, key, requestHash, expiresAt }],
        skipDuplicates: true,
      });
      if (count === 0) return this.repeat<V>(tx, scope, key, requestHash);
      const view = await work(tx);
      await tx.idempotentRequest.updateMany({
        where: { scope, key },
        data: { responseStatus: 201, responseBody: JSON.parse(JSON.stringify(view)) as object },
      });
      return view;
    });
    const version = (answer as { version?: unknown }).version;
    if (typeof version === 'number') reply.header('etag', etagOf(version));
    return answer;
  }

  private async repeat<V>(tx: Tx, scope: string, key: string, requestHash: string): Promise<V> {
    const first = await tx.idempotentRequest.findFirstOrThrow({ where: { scope, key } });
    if (first.requestHash !== requestHash) {
      throw new DomainError(
        'idempotency-key-reused',
        'This key came with another body before. Use a new key for a new request.',
      );
    }
    return first.responseBody as V;
  }
}

function keyOf(request: FastifyRequest): string {
  const header = request.headers['idempotency-key'];
  const key = (Array.isArray(header) ? header[0] : header)?.replace(/^"(.*)"$/, '$1');
  if (!key) {
    throw new DomainError(
      'idempotency-key-missing',
      'Send a header Idempotency-Key with a value of your own, so that a repeated request cannot create a second row.',
    );
  }
  if (key.length > 200) throw new DomainError('invalid-input', 'The Idempotency-Key is longer than 200 characters.');
  return key;
}
