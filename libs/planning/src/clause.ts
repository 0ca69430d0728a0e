import { z } from 'zod';

/**
 * A sentence as its key and what it speaks of, for those who word it in another language. A value's name says how it is
 * written: `…Cents` money, `…Date` a local date, `…Minutes` a span of time.
 */
export const Clause = z.object({ key: z.string(), values: z.record(z.string(), z.union([z.string(), z.number()])) });
export type Clause = z.infer<typeof Clause>;

export function clause(key: string, values: Clause['values'] = {}): Clause {
  return { key, values };
}
