import type { IncomingMessage } from 'node:http';
import type { SnapshotFormat } from '@deckround/telematics';
import { requestPublic } from '../deliver/public-address.js';

/** A page that did not come; `retryAfterSeconds` when the sender said how long to wait. */
export class PageNotGiven extends Error {
  override readonly name = 'PageNotGiven';

  constructor(
    message: string,
    readonly status: number | null,
    readonly retryAfterSeconds: number | null = null,
  ) {
    super(message);
  }
}

/** Seconds for one page, from the first byte asked to the last one read. */
const TIMEOUT_SECONDS = 120;

/** Asks for one page and hands its bytes out as they come. @throws PageNotGiven for any status but 200 */
export async function fetchPage(
  address: string,
  authorization: string | null,
  mayBePrivate: boolean,
  now: Date,
): Promise<{ body: AsyncIterable<Uint8Array>; format: SnapshotFormat }> {
  const request = await requestPublic(
    address,
    {
      method: 'GET',
      headers: {
        accept: 'application/xml, application/json;q=0.9',
        ...(authorization !== null && { authorization }),
      },
      signal: AbortSignal.timeout(TIMEOUT_SECONDS * 1000),
    },
    mayBePrivate,
  );
  const response = await new Promise<IncomingMessage>((done, fail) => {
    request.on('response', done);
    request.on('error', fail);
    request.end();
  });
  if (response.statusCode !== 200) {
    response.destroy();
    const status = response.statusCode ?? null;
    throw new PageNotGiven(`The sender answered ${status}.`, status, secondsOf(response.headers['retry-after'], now));
  }
  const type = response.headers['content-type'] ?? '';
  return { body: response, format: /\bjson\b/i.test(type) ? 'json' : 'xml' };
}

/** Retry-After (RFC 9110, 10.2.3): seconds, or a date. */
export function secondsOf(retryAfter: string | undefined, now: Date): number | null {
  if (retryAfter === undefined) return null;
  if (/^\d{1,9}$/.test(retryAfter.trim())) return Number(retryAfter);
  const until = Date.parse(retryAfter);
  return Number.isNaN(until) ? null : Math.max(0, Math.ceil((until - now.getTime()) / 1000));
}
