import { useSyncExternalStore } from 'react';

const ASK_AGAIN_MS = 2000;

let away = false;
let asking: ReturnType<typeof setInterval> | undefined;
const listeners = new Set<() => void>();
const returned = new Set<() => void>();

function become(next: boolean): void {
  if (away === next) return;
  away = next;
  clearInterval(asking);
  if (away) asking = setInterval(askHealth, ASK_AGAIN_MS);
  else for (const tell of returned) tell();
  for (const tell of listeners) tell();
}

async function askHealth(): Promise<void> {
  try {
    const answer = await fetch('/ready', { cache: 'no-store' });
    if (answer.ok) become(false);
  } catch {
    // still away
  }
}

/** Whether the service answers. It is asked again by itself until it does. */
export const connection = {
  isAway: () => away,
  lost: () => become(true),
  found: () => become(false),
  onReturn(tell: () => void): () => void {
    returned.add(tell);
    return () => returned.delete(tell);
  },
  subscribe(tell: () => void): () => void {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
};

export function useAway(): boolean {
  return useSyncExternalStore(connection.subscribe, connection.isAway);
}
