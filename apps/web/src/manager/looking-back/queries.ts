import type * as wire from '@deckround/contracts';
import { queryOptions } from '@tanstack/react-query';
import type { z } from 'zod';
import { api, everyPage, queryOf } from '../../data/api.js';
import type { Page } from '../../data/types.js';

export type LifeFit = z.infer<typeof wire.LifeFit>;
export type ReplacementAge = z.infer<typeof wire.ReplacementAge>;
export type GradeComparison = z.infer<typeof wire.GradeComparison>;
export type MachineRecord = z.infer<typeof wire.MachineRecord>;
export type MachineAdvice = z.infer<typeof wire.MachineAdvice>;
export type MeanCumulative = z.infer<typeof wire.MeanCumulative>;
export type SpeedCheck = z.infer<typeof wire.SpeedCheck>;
export type LifeRun = z.infer<typeof wire.LifeRun>;
/** What the monthly re-fit writes as evidence (`libs/learning`, `learnItems`). */
export interface Evidence {
  readonly lives: number;
  readonly failures: number;
  readonly basis: 'own' | 'pooled' | 'prior';
  readonly shape: number;
  readonly scaleHours: number;
  readonly lowHours: number | null;
  readonly highHours: number | null;
}
export type Proposal = Omit<z.infer<typeof wire.IntervalProposal>, 'evidence'> & { readonly evidence: Evidence };
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
export const partsOnRecordQuery = one<z.infer<typeof wire.PartsOnRecord>>('parts-on-record');
/** The dearest machines. */
export const badActorsQuery = (limit: number) =>
  queryOptions({
    queryKey: ['reliability', 'machines', limit],
    queryFn: ({ signal }) => api.get<Page<MachineRecord>>(`/v1/reliability/machines${queryOf({ limit })}`, signal),
    staleTime: SLOW_MS,
  });
export const proposalsQuery = queryOptions({
  queryKey: ['reliability', 'proposals'],
  queryFn: ({ signal }) => everyPage<Proposal>('/v1/reliability/interval-proposals', signal),
});
export const refitQuery = (id: string) =>
  queryOptions({
    queryKey: ['reliability', 'refit', id],
    queryFn: ({ signal }) => api.get<LifeRun>(`/v1/reliability/refits/${id}`, signal),
  });
export const cumulativeQuery = one<MeanCumulative>('mean-cumulative');
export const machineAdviceQuery = (id: string, asked: Asked) =>
  queryOptions({
    queryKey: ['reliability', 'machine', id, asked],
    queryFn: ({ signal }) => api.get<MachineAdvice>(`/v1/reliability/machines/${id}${queryOf(asked)}`, signal),
    staleTime: SLOW_MS,
  });
