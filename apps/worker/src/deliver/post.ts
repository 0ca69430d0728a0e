import { request as httpRequest } from 'node:http';
import { request as httpsRequest } from 'node:https';
import { ForbiddenAddress, resolvePublic } from './public-address.js';

export interface PostAnswer {
  readonly status: number | null;
  /** What went wrong when there was no answer. */
  readonly error: string | null;
  readonly retryAfterSeconds: number | null;
}

const MAX_ANSWER = 64 * 1024;

/** Sends one request and reads the status. Redirects are not followed: Node's own client does not, and 3xx is a failure. */
export async function post(
  address: string,
  body: string,
  headers: Record<string, string>,
  { timeoutSeconds, mayBePrivate }: { timeoutSeconds: number; mayBePrivate: boolean },
): Promise<PostAnswer> {
  const none = (error: string): PostAnswer => ({ status: null, error, retryAfterSeconds: null });
  try {
    const url = new URL(address);
    if (url.protocol !== 'https:' && !(mayBePrivate && url.protocol === 'http:'))
      throw new ForbiddenAddress('only https addresses are told');
    const resolved = await resolvePublic(url.hostname, mayBePrivate);
    const [first] = resolved;
    return await new Promise<PostAnswer>((done) => {
      const send = url.protocol === 'https:' ? httpsRequest : httpRequest;
      const request = send(
        url,
        {
          method: 'POST',
          headers: { ...headers, 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) },
          signal: AbortSignal.timeout(timeoutSeconds * 1000),
          lookup: (_host, options, answer) =>
            options.all ? answer(null, resolved) : answer(null, first!.address, first!.family),
        },
        (response) => {
          let read = 0;
          response.on('data', (chunk: Buffer) => {
            read += chunk.length;
            if (read > MAX_ANSWER) response.destroy();
          });
          const status = response.statusCode ?? null;
          const after = Number(response.headers['retry-after']);
          response.on('close', () =>
            done({ status, error: null, retryAfterSeconds: Number.isFinite(after) && after > 0 ? after : null }),
          );
          response.on('error', () => {});
        },
      );
      request.on('error', (error) => done(none(error.name === 'TimeoutError' ? 'no answer in time' : error.message)));
      request.end(body);
    });
  } catch (error) {
    return none(error instanceof Error ? error.message : String(error));
  }
}
