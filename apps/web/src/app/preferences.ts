import { useSyncExternalStore } from 'react';
import { stored } from '../data/stored.js';
import { firstSpoken, type Language } from '../words/language.js';

export interface Preferences {
  readonly language: Language;
  readonly light: 'auto' | 'light' | 'dark';
}

const kept = stored<Preferences>('deckround.preferences');
let current: Preferences = {
  language: firstSpoken(globalThis.navigator?.languages ?? []),
  light: 'auto',
  ...kept.read(),
};
const listeners = new Set<() => void>();
applyLight();

function applyLight(): void {
  if (globalThis.document) document.documentElement.dataset.light = current.light;
}

/** How this device shows things: not the shop's business. */
export const preferences = {
  current: () => current,
  change(part: Partial<Preferences>): void {
    current = { ...current, ...part };
    kept.write(current);
    applyLight();
    for (const tell of listeners) tell();
  },
  subscribe(tell: () => void): () => void {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
};

export function usePreferences(): Preferences {
  return useSyncExternalStore(preferences.subscribe, preferences.current);
}
