import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRef } from 'react';
import { api, Refused } from './api.js';

/** Sends a form that creates or decides something: sent again for want of an answer, it happens once. */
export function usePost<T>(path: string, onDone: (answer: T) => void) {
  const client = useQueryClient();
  const key = useRef(crypto.randomUUID());
  return useMutation({
    mutationFn: (body: object) => api.post<T>(path, body, key.current),
    onSuccess: async (answer) => {
      key.current = crypto.randomUUID();
      onDone(answer);
      await client.invalidateQueries();
    },
    onError: (error) => {
      // Another body under the same key would be refused; the same body was not taken.
      if (error instanceof Refused) key.current = crypto.randomUUID();
    },
  });
}
