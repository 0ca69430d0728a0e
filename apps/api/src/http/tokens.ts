/** What Nest hands out under names. */
export const STORE = Symbol('Store');
export const QUEUE = Symbol('JobQueue');
export const CONFIG = Symbol('Config');
export const CLOCK = Symbol('Clock');
export const LOGGER = Symbol('Logger');
export const RATE_LIMITER = Symbol('RateLimiter');
