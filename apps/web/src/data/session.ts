import { useSyncExternalStore } from 'react';
import { stored } from './stored.js';
import type { Session } from './types.js';

/** Who is signed in on this device. `ended`: the service no longer takes the token; the page under it stays as it is. */
export interface SessionState {
  readonly session: Session | null;
  readonly ended: boolean;
}

const kept = stored<Session>('deckround.session');
let state: SessionState = { session: kept.read(), ended: false };
const listeners = new Set<() => void>();

function become(next: SessionState): void {
  state = next;
  for (const tell of listeners) tell();
}

export const sessions = {
  current: () => state,
  begin(session: Session): void {
    kept.write(session);
    become({ session, ended: false });
  },
  end(): void {
    kept.clear();
    become({ session: null, ended: false });
  },
  /** The service has refused the token: ask for the password again, over whatever is on the screen. */
  expire(token: string): void {
    if (state.session?.token === token && !state.ended) become({ ...state, ended: true });
  },
  subscribe(tell: () => void): () => void {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
};

// Signing in or out in another window counts here too.
globalThis.addEventListener?.('storage', (event) => {
  if ((event as StorageEvent).key === kept.key) become({ session: kept.read(), ended: false });
});

export function useSession(): SessionState {
  return useSyncExternalStore(sessions.subscribe, sessions.current);
}
