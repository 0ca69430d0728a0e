export * from './access.js';
export * from './field-work.js';
export * from './forecast-quality.js';
export * from './planning.js';
export * from './primitives.js';
export * from './register.js';
export * from './shop.js';
export * from './week-changes.js';
