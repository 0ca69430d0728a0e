import createClient, { type Client } from 'openapi-fetch';
import type { components, paths } from './schema.js';

export type { paths } from './schema.js';
/** The shapes of the interface by name, e.g. `Shapes['ChargeDocument']`. */
export type Shapes = components['schemas'];

/** The service refused; the document says what happened and what to do (RFC 9457). */
export class Refused extends Error {
  override readonly name = 'Refused';
  constructor(readonly problem: Shapes['Problem']) {
    super(problem.detail);
  }
}

export interface Connection {
  /** Where the service runs, e.g. `https://shop.example`. */
  readonly address: string;
  /** An integration key, or the token of a sign-in. */
  readonly key: string;
  /** Instead of the platform's own, e.g. with a proxy or retries. */
  readonly fetch?: (request: Request) => Promise<Response>;
}

/**
 * A client whose paths, parameters, bodies and answers are typed by the OpenAPI document. Creating calls get an
 * Idempotency-Key of their own unless they bring one: bring your own when you may repeat the call after a crash.
 */
export function connect({ address, key, fetch }: Connection): Client<paths> {
  const client = createClient<paths>({ baseUrl: address, ...(fetch && { fetch }) });
  client.use({
    onRequest({ request }) {
      request.headers.set('authorization', `Bearer ${key}`);
      if (request.method === 'POST' && !request.headers.get('idempotency-key'))
        request.headers.set('idempotency-key', crypto.randomUUID());
      return request;
    },
  });
  return client;
}

/**
 * The answer's data.
 *
 * @throws Refused when the service answered with a problem document
 */
export async function dataOf<T>(answer: Promise<{ data?: T; error?: unknown }>): Promise<T> {
  const { data, error } = await answer;
  if (error !== undefined) throw new Refused(error as Shapes['Problem']);
  return data as T;
}

/** Every item of a list, page after page. `ask` gets the cursor of the page; the first has none. */
export async function* everyItem<T>(
  ask: (cursor: string | undefined) => Promise<{ data?: { items: T[]; next: string | null }; error?: unknown }>,
): AsyncGenerator<T> {
  let cursor: string | undefined;
  do {
    const page = await dataOf(ask(cursor));
    yield* page.items;
    cursor = page.next ?? undefined;
  } while (cursor !== undefined);
}
