import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { expect, test } from '@jest/globals';
import { post } from './post.js';
import { whyUnreached } from './why-unreached.js';

const OPEN = { timeoutSeconds: 0.2, mayBePrivate: true };

/** A server on a free port, which does this with every connection. */
async function serverThat(act: Parameters<typeof createServer>[1]) {
  const server = createServer(act as never);
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const end = () =>
    new Promise((done) => {
      server.closeAllConnections();
      server.close(done);
    });
  return { address, end };
}

test('says in words why nothing came of a request', async () => {
  const silent = await serverThat((() => {}) as never);
  const rude = await serverThat(((request: { socket: { destroy(): void } }) => request.socket.destroy()) as never);
  expect((await post(silent.address, '{}', {}, OPEN)).error).toBe('It did not answer in time.');
  expect((await post(rude.address, '{}', {}, OPEN)).error).toBe('The connection broke off.');
  await Promise.all([silent.end(), rude.end()]);
  expect((await post(silent.address, '{}', {}, OPEN)).error).toBe('Nothing answers at this address.');
  expect((await post('http://nowhere.invalid/', '{}', {}, OPEN)).error).toBe('The name in this address is not known.');
  expect(whyUnreached(Object.assign(new Error('x'), { code: 'DEPTH_ZERO_SELF_SIGNED_CERT' }))).toMatch(/certificate/);
  expect(whyUnreached(new Error('The sender answered 429.'))).toBe('The sender answered 429.');
});
