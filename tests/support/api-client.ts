import { randomUUID } from 'node:crypto';

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  // biome-ignore lint/suspicious/noExplicitAny: tests look into whatever came
  readonly body: any;
}

/** Speaks to the API as one caller. */
export class ApiClient {
  constructor(
    readonly address: string,
    private readonly token: string | null = null,
  ) {}

  async signIn(email: string, password: string): Promise<ApiClient> {
    const answer = await this.post('/v1/session', { email, password });
    if (answer.status !== 201) throw new Error(`sign-in failed: ${JSON.stringify(answer.body)}`);
    return new ApiClient(this.address, answer.body.token);
  }

  get(path: string, headers: Record<string, string> = {}): Promise<Answer> {
    return this.send('GET', path, undefined, headers);
  }

  post(path: string, body: unknown, headers: Record<string, string> = {}): Promise<Answer> {
    return this.send('POST', path, body, { 'idempotency-key': randomUUID(), ...headers });
  }

  patch(path: string, body: unknown, etag: string | null): Promise<Answer> {
    return this.send('PATCH', path, body, etag === null ? {} : { 'if-match': etag });
  }

  delete(path: string): Promise<Answer> {
    return this.send('DELETE', path, undefined, {});
  }

  /** A file as it comes. */
  async bytes(path: string): Promise<{ status: number; type: string | null; bytes: Buffer }> {
    const headers: Record<string, string> = this.token === null ? {} : { authorization: `Bearer ${this.token}` };
    const response = await fetch(`${this.address}${path}`, { headers });
    const bytes = Buffer.from(await response.arrayBuffer());
    return { status: response.status, type: response.headers.get('content-type'), bytes };
  }

  async send(method: string, path: string, body: unknown, headers: Record<string, string>): Promise<Answer> {
    const response = await fetch(`${this.address}${path}`, {
      method,
      headers: {
        ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        ...(this.token === null ? {} : { authorization: `Bearer ${this.token}` }),
        ...headers,
      },
      ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
    });
    const text = await response.text();
    const isJson = /json(;|$)/.test(response.headers.get('content-type') ?? '');
    return {
      status: response.status,
      headers: response.headers,
      body: isJson && text !== '' ? JSON.parse(text) : text,
    };
  }
}

/** Looks again and again until `isThere`, at most `seconds`. */
export async function until<T>(look: () => Promise<T>, isThere: (value: T) => boolean, seconds = 60): Promise<T> {
  const last = Date.now() + seconds * 1000;
  for (;;) {
    const value = await look();
    if (isThere(value)) return value;
    if (Date.now() > last)
      throw new Error(`It did not come about within ${seconds} s: ${JSON.stringify(value).slice(0, 500)}`);
    await new Promise((done) => setTimeout(done, 150));
  }
}
