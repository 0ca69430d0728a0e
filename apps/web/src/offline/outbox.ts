import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useSyncExternalStore } from 'react';
import { Away, queryOf, Refused, send } from '../data/api.js';
import { connection } from '../data/connection.js';
import { sessions } from '../data/session.js';
import type { FieldFact } from '../data/types.js';
import { fieldStore, type KeptRecord } from './field-store.js';

const AGAIN_MS = 15_000;

interface Subject {
  readonly visitId: string | null;
  readonly machineId: string | null;
  readonly about: string;
}
export interface OutboxCount {
  readonly waiting: number;
  readonly sent: number;
  readonly refused: number;
}

let count: OutboxCount = { waiting: 0, sent: 0, refused: 0 };
let sending = false;
const listeners = new Set<() => void>();
// Another window of this app records and sends too.
const others = 'BroadcastChannel' in globalThis ? new BroadcastChannel('deckround-outbox') : null;
if (others) others.onmessage = () => void recount();

const me = () => sessions.current().session?.person.id ?? null;

async function recount(): Promise<void> {
  const mine = (records: readonly KeptRecord[]) => records.filter((record) => record.personId === me()).length;
  const [waiting, sent, refused] = await Promise.all([
    fieldStore.withState('waiting'),
    fieldStore.withState('sent'),
    fieldStore.withState('refused'),
  ]);
  count = { waiting: mine(waiting), sent: mine(sent), refused: mine(refused) };
  for (const tell of listeners) tell();
}

async function changed(): Promise<void> {
  others?.postMessage('changed');
  await recount();
}

/** What is recorded here, sent in its order and exactly once when the service can be reached. */
export const outbox = {
  count: () => count,
  recount,
  subscribe(tell: () => void): () => void {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
  async record(subject: Subject, fact: FieldFact): Promise<void> {
    await keep({ ...subject, fact });
  },
  async addPhoto(subject: Subject, photo: Blob): Promise<void> {
    await keep({ ...subject, fact: { kind: 'photo' }, photo });
  },
  /** What has not left yet may be taken back. */
  async takeBack(record: KeptRecord): Promise<void> {
    await exclusively(async () => {
      const still = (await fieldStore.withState(record.state)).some((each) => each.order === record.order);
      if (still && record.state !== 'sent') await fieldStore.remove(record.order!);
    });
    await changed();
  },
  async sendAgain(record: KeptRecord): Promise<void> {
    const { refusal: _refusal, faults: _faults, ...rest } = record;
    await fieldStore.put({ ...rest, state: 'waiting' });
    await changed();
    void sendAll();
  },
  sendAll: () => sendAll(),
};

async function keep(part: Subject & Pick<KeptRecord, 'fact' | 'photo'>): Promise<void> {
  const personId = me();
  if (personId === null) throw new Error('Nobody is signed in.');
  await fieldStore.add({
    ...part,
    id: crypto.randomUUID(),
    personId,
    at: new Date().toISOString(),
    state: 'waiting',
  });
  // Browsers may throw away what a page keeps unless they are asked not to.
  void navigator.storage?.persist?.();
  await changed();
  void sendAll();
}

/** One sender at a time, over all windows. */
async function exclusively(work: () => Promise<void>): Promise<void> {
  if (navigator.locks) await navigator.locks.request('deckround-outbox', work);
  else await work();
}

async function sendAll(): Promise<void> {
  if (sending || me() === null || sessions.current().ended) return;
  sending = true;
  try {
    await exclusively(async () => {
      for (;;) {
        const next = (await fieldStore.withState('waiting')).find((record) => record.personId === me());
        if (!next || !(await sendOne(next))) return;
        await changed();
      }
    });
  } finally {
    sending = false;
    await changed();
  }
}

/** @returns whether to go on with the next: not when the service is away, overburdened, or wants a new sign-in */
async function sendOne(record: KeptRecord): Promise<boolean> {
  try {
    if (record.photo) await putPhoto(record);
    else await postRecord(record);
  } catch (error) {
    if (error instanceof Away || !(error instanceof Refused)) return false;
    const { status } = error.problem;
    if (status === 401 || status === 429 || status >= 500) return false;
    await fieldStore.put({ ...record, state: 'refused', refusal: error.message, faults: error.problem.errors ?? [] });
    return true;
  }
  // The picture itself is on the server now: it need not fill the telephone.
  const { photo: _, ...rest } = record;
  await fieldStore.put({ ...rest, state: 'sent' });
  return true;
}

async function postRecord({ id, at, visitId, machineId, fact }: KeptRecord): Promise<void> {
  const body = { id, deviceAt: at, sentAt: new Date().toISOString(), visitId, machineId, fact };
  await send('POST', '/v1/field-records', { body, key: id });
}

async function putPhoto({ id, at, visitId, machineId, photo }: KeptRecord): Promise<void> {
  await send('PUT', `/v1/photos/${id}${queryOf({ machineId, visitId, takenAt: at })}`, { file: photo! });
}

/** How much is kept here and sent; sends whenever there is hope. */
export function useOutbox(): OutboxCount {
  const client = useQueryClient();
  useEffect(() => {
    const tryNow = () => void sendAll();
    const onSight = () => {
      if (document.visibilityState === 'visible') tryNow();
    };
    void recount().then(tryNow);
    const timer = setInterval(tryNow, AGAIN_MS);
    addEventListener('online', tryNow);
    document.addEventListener('visibilitychange', onSight);
    const stop = connection.onReturn(tryNow);
    return () => {
      clearInterval(timer);
      removeEventListener('online', tryNow);
      document.removeEventListener('visibilitychange', onSight);
      stop();
    };
  }, []);
  useEffect(() => outbox.subscribe(() => void client.invalidateQueries({ queryKey: ['kept'] })), [client]);
  return useSyncExternalStore(outbox.subscribe, outbox.count);
}

/** What was recorded here at a visit, sent or not. */
export function useKeptOf(visitId: string): readonly KeptRecord[] {
  const { data } = useQuery({ queryKey: ['kept', visitId], queryFn: () => fieldStore.ofVisit(visitId), staleTime: 0 });
  return (data ?? []).filter((record) => record.personId === me());
}

export function useNotSent(): readonly KeptRecord[] {
  const { data } = useQuery({
    queryKey: ['kept', 'not-sent'],
    queryFn: async () => [...(await fieldStore.withState('refused')), ...(await fieldStore.withState('waiting'))],
    staleTime: 0,
  });
  return (data ?? []).filter((record) => record.personId === me());
}
