// Lets Node load TypeScript sources. Threads that a test starts run built files and need no loader.
import { register } from 'node:module';
import { isMainThread } from 'node:worker_threads';

if (isMainThread) register('./hooks.js', import.meta.url);
