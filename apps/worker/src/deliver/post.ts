import { requestPublic } from './public-address.js';
import { whyUnreached } from './why-unreached.js';

export interface PostAnswer {
  readonly status: number | null;
  /** What went wrong when there was no answer. */
  readonly error: string | null;
  readonly retryAfterSeconds: number | null;
}

const MAX_ANSWER = 64 * 1024;

/** Sends one request and reads the status; 3xx is a failure. */
export async function post(
  address: string,
  body: string,
  headers: Record<string, string>,
  { timeoutSeconds, mayBePrivate }: { timeoutSeconds: number; mayBePrivate: boolean },
): Promise<PostAnswer> {
  const none = (error: string): PostAnswer => ({ status: null, error, retryAfterSeconds: null });
  try {
    const request = await requestPublic(
      address,
      {
        method: 'POST',
        headers: { ...headers, 'content-type': 'application/json', 'content-length': Buffer.byteLength(body) },
        signal: AbortSignal.timeout(timeoutSeconds * 1000),
      },
      mayBePrivate,
    );
    return await new Promise<PostAnswer>((done) => {
      request.on('response', (response) => {
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
      });
      request.on('error', (error) => done(none(whyUnreached(error))));
      request.end(body);
    });
  } catch (error) {
    return none(whyUnreached(error));
  }
}
