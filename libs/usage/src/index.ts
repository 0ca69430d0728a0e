export * from './snapshot.js';
