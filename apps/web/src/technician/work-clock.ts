import { useSyncExternalStore } from 'react';
import { stored } from '../data/stored.js';
import { outbox } from '../offline/outbox.js';

const listeners = new Set<() => void>();
/** Beside what is stored, where the store is full or forbidden. */
const running = new Map<string, string>();
const stopping = new Set<string>();

const keptOf = (visitId: string) => stored<string>(`deckround.work.${visitId}`);
const since = (visitId: string) => running.get(visitId) ?? keptOf(visitId).read();

function changed(): void {
  for (const tell of listeners) tell();
}

function subscribe(tell: () => void): () => void {
  listeners.add(tell);
  return () => listeners.delete(tell);
}

/** Since when the clock of a visit runs on this device; null = it does not. It survives a reload. */
export function useWorkClock(visitId: string): string | null {
  return useSyncExternalStore(subscribe, () => since(visitId));
}

export function startWork(visitId: string): void {
  const now = new Date().toISOString();
  running.set(visitId, now);
  keptOf(visitId).write(now);
  changed();
}

/** The clock of a visit that planning again has replaced runs on at the one in its place. */
export function carryWork(from: string, to: string): void {
  const startedAt = since(from);
  if (startedAt === null) return;
  running.set(to, startedAt);
  keptOf(to).write(startedAt);
  running.delete(from);
  keptOf(from).clear();
  changed();
}

/** Stops the clock of a visit where it runs, and records the time. @param about what the list of records calls it */
export async function stopWork(visitId: string, about: string): Promise<void> {
  const startedAt = since(visitId);
  if (startedAt === null || stopping.has(visitId)) return;
  stopping.add(visitId);
  try {
    const endedAt = new Date().toISOString();
    await outbox.record({ visitId, machineId: null, about }, { kind: 'work-time', startedAt, endedAt });
    running.delete(visitId);
    keptOf(visitId).clear();
  } finally {
    stopping.delete(visitId);
    changed();
  }
}
