/** A value kept on this device under one key. A full or forbidden store costs the memory, never the page. */
export function stored<T>(key: string, storage: () => Storage = () => localStorage) {
  return {
    key,
    read(): T | null {
      try {
        const text = storage().getItem(key);
        return text === null ? null : (JSON.parse(text) as T);
      } catch {
        return null;
      }
    },
    write(value: T): void {
      try {
        storage().setItem(key, JSON.stringify(value));
      } catch {
        // kept in memory only
      }
    },
    clear(): void {
      try {
        storage().removeItem(key);
      } catch {
        // nothing was kept
      }
    },
  };
}
