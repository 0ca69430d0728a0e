export { hashPassword } from './access/secrets.js';
export { createApi } from './create-api.js';
export { type Service, startService } from './start-service.js';
