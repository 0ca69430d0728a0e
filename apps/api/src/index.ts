export { hashPassword } from './access/secrets.js';
export { createApi } from './create-api.js';
export { EXAMPLES, SAMPLE_IDS } from './openapi/examples.js';
export * from './rate-limits/rate-limiter.js';
export { type Service, startService } from './start-service.js';
