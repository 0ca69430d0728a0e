import { createServer } from 'node:net';

/** A port of this machine that nobody listens on now. */
export function freePort(): Promise<number> {
  return new Promise((done, failed) => {
    const probe = createServer();
    probe.on('error', failed);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as { port: number };
      probe.close(() => done(port));
    });
  });
}

/** What to say when something else listens there. */
export function portTaken(port: number, host: string): Error {
  return new Error(`Port ${port} on ${host} is taken: stop what listens there, or set PORT to another number.`);
}

/** Refuses with `portTaken` when something listens there now; for work that is in vain without the port. */
export async function requireFreePort(port: number, host: string): Promise<void> {
  const probe = createServer();
  await new Promise<void>((done, failed) => {
    probe.once('error', failed).listen(port, host, done);
  }).catch((error: NodeJS.ErrnoException) => {
    throw error.code === 'EADDRINUSE' ? portTaken(port, host) : error;
  });
  await new Promise<void>((done) => {
    probe.close(() => done());
  });
}
