import { once } from 'node:events';
import { expect, it } from '@jest/globals';
import { giveBack, takeThread } from '../../apps/worker/src/compute/waiting-thread.js';

it('a thread that was soon done does the next task; two tasks at once have one each, and what took long ends', async () => {
  const first = takeThread();
  giveBack(first, 10);
  const again = takeThread();
  expect(again).toBe(first);
  const beside = takeThread();
  expect(beside).not.toBe(first);
  giveBack(again, 10);
  // One waits already.
  giveBack(beside, 10);
  await once(beside, 'exit');
  const last = takeThread();
  expect(last).toBe(first);
  giveBack(last, 60_000);
  await once(last, 'exit');
  const fresh = takeThread();
  expect(fresh).not.toBe(first);
  giveBack(fresh, 10);
});

it('a task that fails says so, and its thread does no other', async () => {
  const thread = takeThread();
  const failed = once(thread, 'error');
  thread.postMessage({ kind: 'forecast', snapshot: null });
  expect(String((await failed)[0])).toMatch(/TypeError/);
});
