import { DomainError } from '@deckround/platform';
import type { FastifyInstance, FastifyRequest } from 'fastify';

export const SNAPSHOTS_PATH = '/v1/telematics/snapshots';
const STREAMED_JSON = 'application/vnd.deckround.snapshot+json';

const isSnapshot = (request: FastifyRequest) =>
  request.method === 'POST' && request.url.split('?')[0] === SNAPSHOTS_PATH;

/**
 * Bodies of snapshots are handed on as streams, however large; every other body stays within its limit. Fastify chooses a
 * reader by content type alone, so JSON that is sent there goes by another name from here on.
 */
export function streamSnapshots(fastify: FastifyInstance): void {
  fastify.addHook('onRequest', async (request) => {
    if (isSnapshot(request) && /^application\/json\b/i.test(request.headers['content-type'] ?? ''))
      request.headers['content-type'] = STREAMED_JSON;
  });
  fastify.addContentTypeParser(
    ['application/xml', 'text/xml', STREAMED_JSON],
    (request: FastifyRequest, payload: unknown, done: (error: Error | null, body?: unknown) => void) => {
      if (isSnapshot(request)) done(null, payload);
      else
        done(
          new DomainError(
            'invalid-input',
            'XML is read by the telematics interface only: send JSON here, as /docs says.',
          ),
        );
    },
  );
}
