import { useCallback, useEffect, useRef, useState } from 'react';
import { sessions } from './session.js';
import { stored } from './stored.js';

/**
 * What is being typed, kept on this device until it is saved or thrown away: neither a reload nor a session that ends
 * in mid-form loses it. Drafts belong to a person: the next one at the same screen does not see them.
 *
 * @param secrets fields that are never kept on the device
 */
export function useDraft<T extends object>(name: string, start: T, secrets: readonly string[] = []) {
  const person = sessions.current().session?.person.id ?? 'nobody';
  const kept = useRef(stored<T>(`deckround.draft.${person}.${name}`)).current;
  const [found] = useState(() => kept.read());
  const [value, setValue] = useState<T>({ ...start, ...found });
  const without = useRef(secrets).current;
  const [touched, setTouched] = useState(found !== null);

  useEffect(() => {
    if (!touched) return;
    kept.write(Object.fromEntries(Object.entries(value).filter(([field]) => !without.includes(field))) as T);
  }, [kept, touched, value, without]);

  const change = useCallback((part: Partial<T>) => {
    setTouched(true);
    setValue((before) => ({ ...before, ...part }));
  }, []);
  const drop = useCallback(
    (next: T) => {
      kept.clear();
      setTouched(false);
      setValue(next);
    },
    [kept],
  );
  return { value, change, drop, touched, wasFound: found !== null };
}
