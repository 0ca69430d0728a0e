import { useQuery } from '@tanstack/react-query';
import { serviceItemsQuery } from '../data/queries.js';
import { useWords } from '../words/words.js';

/** What work is called of which only the code is on record. */
export function useWorkName(): (code: string, slot: string | null) => string {
  const words = useWords();
  const items = useQuery(serviceItemsQuery).data;
  return (code, slot) => words.work({ code, slot, title: items?.find((item) => item.code === code)?.title ?? code });
}
