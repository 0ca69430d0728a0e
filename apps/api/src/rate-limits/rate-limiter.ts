import { performance } from 'node:perf_hooks';
import type { Logger } from '@deckround/platform';
import { Redis } from 'ioredis';
import { type FullAt, judge, type RatePolicy, type Taken, takeFrom } from './token-bucket.js';

/** Counts requests by whatever key: a caller, an address, an e-mail address that fails to sign in. */
export interface RateLimiter {
  /** Takes `cost` requests; 0 only looks. */
  take(key: string, policy: RatePolicy, cost?: number): Promise<Taken>;
  forget(key: string): Promise<void>;
  close(): Promise<void>;
}

/** Buckets kept before full ones are thrown out. */
const MANY = 10_000;

/** For one process. */
export class MemoryRateLimiter implements RateLimiter {
  private readonly buckets = new Map<string, FullAt>();

  async take(key: string, policy: RatePolicy, cost = 1): Promise<Taken> {
    const now = performance.now();
    const { fullAt, taken } = takeFrom(this.buckets.get(key) ?? 0, policy, cost, now);
    if (fullAt > now) this.buckets.set(key, fullAt);
    if (this.buckets.size > MANY) this.throwOutFull(now);
    return taken;
  }

  async forget(key: string): Promise<void> {
    this.buckets.delete(key);
  }

  async close(): Promise<void> {}

  private throwOutFull(now: number): void {
    for (const [key, fullAt] of this.buckets) if (fullAt <= now) this.buckets.delete(key);
  }
}

// As takeFrom, in one step and on Redis' own clock. KEYS[1]: the bucket. ARGV: milliseconds of the window, of one request, cost.
const TAKE = `
local time = redis.call('TIME')
local now = time[1] * 1000 + time[2] / 1000
local before = math.max(tonumber(redis.call('GET', KEYS[1]) or '0'), now)
local asked = before + tonumber(ARGV[2]) * math.max(tonumber(ARGV[3]), 1)
local allowed = asked - now <= tonumber(ARGV[1]) + 0.001
if allowed and tonumber(ARGV[3]) > 0 then
  before = asked
  redis.call('SET', KEYS[1], string.format('%.3f', asked), 'PX', math.ceil(asked - now) + 1)
end
return {allowed and 1 or 0, string.format('%.3f', before - now)}`;

/** For any number of processes that share a Redis. When it does not answer, requests are let through. */
export class RedisRateLimiter implements RateLimiter {
  private readonly redis: Redis;
  private readonly prefix: string;

  constructor(
    redisUrl: string,
    prefix: string,
    private readonly logger: Logger,
  ) {
    this.prefix = `${prefix}:rate:`;
    this.redis = new Redis(redisUrl, { maxRetriesPerRequest: 1, enableOfflineQueue: false, commandTimeout: 500 });
    this.redis.on('error', () => {}); // told below, and by readiness; without a listener it would end the process
  }

  async take(key: string, policy: RatePolicy, cost = 1): Promise<Taken> {
    const window = policy.windowSeconds * 1000;
    try {
      const [allowed, owed] = (await this.redis.eval(
        TAKE,
        1,
        this.prefix + key,
        window,
        window / policy.quota,
        cost,
      )) as [number, string];
      return judge(policy, allowed === 1, Number(owed), 0);
    } catch (error) {
      this.logger.warn('rate-limit.not-counted', { reason: String(error) });
      return judge(policy, true, 0, 0);
    }
  }

  async forget(key: string): Promise<void> {
    await this.redis.del(this.prefix + key).catch(() => {});
  }

  async close(): Promise<void> {
    this.redis.disconnect();
  }
}
