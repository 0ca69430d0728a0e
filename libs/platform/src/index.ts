export * from './clock.js';
export * from './config.js';
export * from './domain-error.js';
export * from './free-port.js';
export * from './is-alive.js';
export * from './logger.js';
export * from './node-warnings.js';
