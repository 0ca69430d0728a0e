import { type Config, DomainError } from '@deckround/platform';
import { type CanActivate, type ExecutionContext, Inject, Injectable } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import type { RequestWithActor } from '../access/actor.js';
import { CONFIG, RATE_LIMITER } from '../http/tokens.js';
import type { RateLimiter } from './rate-limiter.js';

/** Quotas are told and counted by the minute. */
export const WINDOW_SECONDS = 60;
const POLICY = 'per-minute';

/**
 * Keeps each caller to its quota: a key by its own or the service's, a sign-in and an unknown caller by the service's.
 * Headers by draft-ietf-httpapi-ratelimit-headers-10.
 */
@Injectable()
export class RateLimitGuard implements CanActivate {
  constructor(
    @Inject(RATE_LIMITER) private readonly limiter: RateLimiter,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const { key, quota } = this.callerOf(http.getRequest<RequestWithActor>());
    if (quota === 0) return true;
    const taken = await this.limiter.take(key, { quota, windowSeconds: WINDOW_SECONDS });
    http
      .getResponse<FastifyReply>()
      .header('ratelimit-policy', `"${POLICY}";q=${quota};w=${WINDOW_SECONDS}`)
      .header('ratelimit', `"${POLICY}";r=${taken.remaining};t=${taken.resetSeconds}`);
    if (!taken.allowed) {
      throw new DomainError(
        'quota-exceeded',
        `More than ${quota} requests in a minute: wait as long as Retry-After says, and spread them out.`,
        [],
        taken.retryAfterSeconds,
      );
    }
    return true;
  }

  private callerOf({ actor, ip }: RequestWithActor): { key: string; quota: number } {
    if (!actor) return { key: `address:${ip}`, quota: this.config.RATE_PUBLIC_PER_MINUTE };
    if (actor.kind === 'integration')
      return { key: `key:${actor.id}`, quota: actor.requestsPerMinute ?? this.config.RATE_KEY_PER_MINUTE };
    return { key: `session:${actor.sessionId}`, quota: this.config.RATE_SESSION_PER_MINUTE };
  }
}
