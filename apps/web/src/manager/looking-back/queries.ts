import type * as wire from '@deckround/contracts';
import { queryOptions } from '@tanstack/react-query';
import type { z } from 'zod';
import { api, everyPage, queryOf } from '../../data/api.js';

export type LifeFit = z.infer<typeof wire.LifeFit>;
export type PartLife = z.infer<typeof wire.PartLife>;
export type ReplacementAge = z.infer<typeof wire.ReplacementAge>;
export type GradeComparison = z.infer<typeof wire.GradeComparison>;
export type MachineRecord = z.infer<typeof wire.MachineRecord>;
export type BearingLife = z.infer<typeof wire.BearingLifeAnswer>;

/** Re-fitted once a month: looking twice gives the same. */
const SLOW_MS = 10 * 60_000;
type Asked = Readonly<Record<string, string | undefined>>;
const one =
  <T>(path: string) =>
  (asked: Asked) =>
    queryOptions({
      queryKey: ['reliability', path, asked],
      queryFn: ({ signal }) => api.get<T>(`/v1/reliability/${path}${queryOf(asked)}`, signal),
      staleTime: SLOW_MS,
    });

export const lifeFitQuery = one<LifeFit>('life-fit');
export const replacementQuery = one<ReplacementAge>('replacement-age');
export const gradesQuery = one<GradeComparison>('grade-comparison');
export const bearingQuery = one<BearingLife>('bearing-life');
export const livesQuery = (asked: Asked) =>
  queryOptions({
    queryKey: ['reliability', 'lives', asked],
    queryFn: ({ signal }) => everyPage<PartLife>(`/v1/reliability/lives${queryOf(asked)}`, signal),
    staleTime: SLOW_MS,
  });
export const badActorsQuery = queryOptions({
  queryKey: ['reliability', 'machines'],
  queryFn: ({ signal }) => everyPage<MachineRecord>('/v1/reliability/machines', signal),
  staleTime: SLOW_MS,
});
