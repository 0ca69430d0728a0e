import { setTimeout as sleep } from 'node:timers/promises';
import type { FastifyReply, FastifyRequest } from 'fastify';

const LOOK_MS = 400;
/** Proxies close silent connections: a comment now and then keeps them open. */
const SILENCE_MS = 15_000;

/**
 * Streams a row as server-sent events: `progress` whenever it differs from the last one sent, `end` when it is final.
 * The row in PostgreSQL is what is watched, so it does not matter which process does the work.
 */
export async function sendProgress<V>(
  request: FastifyRequest,
  reply: FastifyReply,
  look: () => Promise<V>,
  isFinal: (view: V) => boolean,
): Promise<void> {
  let view = await look(); // an unknown id is answered as a problem document, before the stream begins
  reply.hijack();
  const { raw } = reply;
  raw.writeHead(200, {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    connection: 'keep-alive',
    'x-accel-buffering': 'no',
  });
  let open = true;
  request.raw.on('close', () => {
    open = false;
  });
  let sent = '';
  let sentAt = Date.now();
  try {
    while (open) {
      const data = JSON.stringify(view);
      if (data !== sent) {
        raw.write(`event: progress\ndata: ${data}\n\n`);
        sent = data;
        sentAt = Date.now();
      } else if (Date.now() - sentAt > SILENCE_MS) {
        raw.write(': still here\n\n');
        sentAt = Date.now();
      }
      if (isFinal(view)) {
        raw.write(`event: end\ndata: ${data}\n\n`);
        break;
      }
      await sleep(LOOK_MS);
      view = await look();
    }
  } catch {
    raw.write('event: error\ndata: {"detail":"The progress cannot be read at the moment: connect again."}\n\n');
  } finally {
    raw.end();
  }
}
