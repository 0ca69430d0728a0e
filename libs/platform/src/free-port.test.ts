import { createServer } from 'node:net';
import { describe, expect, it } from '@jest/globals';
import { freePort, requireFreePort } from './free-port.js';

describe('a port', () => {
  it('is refused while something listens there, and left free for its user otherwise', async () => {
    const port = await freePort();
    const other = createServer();
    await new Promise<void>((done) => other.listen(port, '127.0.0.1', done));
    await expect(requireFreePort(port, '127.0.0.1')).rejects.toThrow(`Port ${port} on 127.0.0.1 is taken: stop`);
    await new Promise((done) => other.close(done));
    await requireFreePort(port, '127.0.0.1');
    await requireFreePort(port, '127.0.0.1');
  });
});
