import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { FieldDay, FieldFact, Problem } from '../data/types.js';

/** One thing that was recorded on this device. It is never changed: only what became of it. */
export interface KeptRecord {
  /** Order of recording, and of sending. */
  readonly order?: number;
  /** Made here; the service takes each id once. */
  readonly id: string;
  readonly personId: string;
  readonly at: string;
  readonly visitId: string | null;
  readonly machineId: string | null;
  /** What it is about, in the words of the day it was recorded on: for the list of what is not sent yet. */
  readonly about: string;
  readonly fact: FieldFact | { readonly kind: 'photo' };
  readonly photo?: Blob;
  readonly state: 'waiting' | 'sent' | 'refused';
  /** Why the service refused it, and what is wrong with which of its fields. */
  readonly refusal?: string;
  readonly faults?: Problem['errors'];
}

interface Kept extends DBSchema {
  records: { key: number; value: KeptRecord; indexes: { state: string; visit: string; id: string } };
  /** Days read ahead, by person and date. */
  days: { key: string; value: { readonly key: string; readonly day: FieldDay; readonly readAt: string } };
}

const SENT_KEPT_MS = 14 * 86_400_000;
let opened: Promise<IDBPDatabase<Kept>> | null = null;

function database(): Promise<IDBPDatabase<Kept>> {
  opened ??= openDB<Kept>('deckround', 1, {
    upgrade(db) {
      const records = db.createObjectStore('records', { keyPath: 'order', autoIncrement: true });
      records.createIndex('state', 'state');
      records.createIndex('visit', 'visitId');
      records.createIndex('id', 'id', { unique: true });
      db.createObjectStore('days', { keyPath: 'key' });
    },
    terminated() {
      opened = null;
    },
  });
  return opened;
}

/** What this device keeps: facts recorded, and days read ahead. */
export const fieldStore = {
  async add(record: KeptRecord): Promise<void> {
    await (await database()).add('records', record);
  },
  async put(record: KeptRecord): Promise<void> {
    await (await database()).put('records', record);
  },
  async remove(order: number): Promise<void> {
    await (await database()).delete('records', order);
  },
  async withState(state: KeptRecord['state']): Promise<KeptRecord[]> {
    return (await database()).getAllFromIndex('records', 'state', state);
  },
  async ofVisit(visitId: string): Promise<KeptRecord[]> {
    return (await database()).getAllFromIndex('records', 'visit', visitId);
  },
  async readDay(personId: string, date: string): Promise<FieldDay | undefined> {
    return (await (await database()).get('days', `${personId}/${date}`))?.day;
  },
  /** Keeps a day; days and sent records of long ago make room. */
  async keepDay(personId: string, day: FieldDay, isChosen: boolean): Promise<void> {
    const db = await database();
    const readAt = new Date().toISOString();
    await db.put('days', { key: `${personId}/${day.date}`, day, readAt });
    if (isChosen) await db.put('days', { key: `${personId}/chosen`, day, readAt });
    const old = new Date(Date.now() - SENT_KEPT_MS).toISOString();
    for (const kept of await db.getAll('days')) if (kept.readAt < old) await db.delete('days', kept.key);
    for (const record of await db.getAllFromIndex('records', 'state', 'sent'))
      if (record.at < old) await db.delete('records', record.order!);
  },
  /** The next person at this device sees nothing of it; what is not sent yet stays until its owner is back. */
  async forget(): Promise<void> {
    const db = await database();
    await db.clear('days');
    for (const record of await db.getAllFromIndex('records', 'state', 'sent'))
      await db.delete('records', record.order!);
  },
};
