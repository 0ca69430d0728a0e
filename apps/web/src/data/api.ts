import { connection } from './connection.js';
import { sessions } from './session.js';
import type { Page, Problem } from './types.js';

/** The service refused: its problem document says what happened and what to do. */
export class Refused extends Error {
  override readonly name = 'Refused';
  constructor(readonly problem: Problem) {
    super(problem.detail);
  }
  get code(): string {
    return this.problem.type.split(':').at(-1) ?? '';
  }
}

/** The service did not answer. Nothing is known about the call: the same call may be sent again with its key. */
export class Away extends Error {
  override readonly name = 'Away';
}

interface CallOptions {
  readonly body?: unknown;
  /** A file instead of a body. */
  readonly file?: Blob;
  readonly version?: number;
  /** Sent with creating calls: the same key again has no second effect. */
  readonly key?: string;
  readonly signal?: AbortSignal;
}

export async function call<T>(method: string, path: string, options: CallOptions = {}): Promise<T> {
  const response = await send(method, path, options);
  const text = await response.text();
  return (text === '' ? undefined : JSON.parse(text)) as T;
}

/** The same call with the answer as it comes: for streams and files. */
export async function send(method: string, path: string, options: CallOptions = {}): Promise<Response> {
  const { body, file, version, key, signal } = options;
  const token = sessions.current().session?.token;
  const headers: Record<string, string> = {};
  if (token !== undefined) headers.authorization = `Bearer ${token}`;
  if (body !== undefined) headers['content-type'] = 'application/json';
  if (file !== undefined) headers['content-type'] = file.type;
  if (version !== undefined) headers['if-match'] = `"${version}"`;
  if (method === 'POST') headers['idempotency-key'] = key ?? crypto.randomUUID();
  let response: Response;
  try {
    response = await fetch(path, {
      method,
      headers,
      cache: 'no-store',
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      ...(file === undefined ? {} : { body: file }),
      ...(signal === undefined ? {} : { signal }),
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') throw error;
    connection.lost();
    throw new Away();
  }
  if (response.status === 502 || response.status === 503 || response.status === 504) {
    connection.lost();
    throw new Away();
  }
  connection.found();
  if (response.ok) return response;
  const problem = await problemOf(response);
  if (response.status === 401 && token !== undefined && path !== '/v1/session') sessions.expire(token);
  throw new Refused(problem);
}

async function problemOf(response: Response): Promise<Problem> {
  try {
    return (await response.json()) as Problem;
  } catch {
    // Not the service's own word, but that of something in between.
    const { status } = response;
    return { type: 'not-understood', title: '', status, detail: '', instance: '', correlationId: '' };
  }
}

export const api = {
  get: <T>(path: string, signal?: AbortSignal) => call<T>('GET', path, signal ? { signal } : {}),
  post: <T>(path: string, body: unknown, key?: string) => call<T>('POST', path, { body, ...(key ? { key } : {}) }),
  patch: <T>(path: string, body: unknown, version: number) => call<T>('PATCH', path, { body, version }),
  remove: (path: string) => call<void>('DELETE', path),
};

/** Every page of a list, one after the other. */
export async function everyPage<T>(path: string, signal?: AbortSignal): Promise<T[]> {
  const items: T[] = [];
  const joint = path.includes('?') ? '&' : '?';
  let cursor: string | null = null;
  do {
    const next: string = cursor === null ? '' : `&cursor=${encodeURIComponent(cursor)}`;
    const page: Page<T> = await api.get<Page<T>>(`${path}${joint}limit=500${next}`, signal);
    items.push(...page.items);
    cursor = page.next;
  } while (cursor !== null);
  return items;
}

/** Query string of what is given. */
export function queryOf(values: Readonly<Record<string, string | number | boolean | null | undefined>>): string {
  const given = Object.entries(values).filter(([, value]) => value !== undefined && value !== null && value !== '');
  return given.length === 0 ? '' : `?${new URLSearchParams(given.map(([name, value]) => [name, String(value)]))}`;
}
