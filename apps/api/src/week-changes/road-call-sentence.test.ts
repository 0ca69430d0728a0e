import type { PlanChange } from '@deckround/planning';
import { expect, it } from '@jest/globals';
import { roadCallSentence } from './road-call-sentence.js';

const names = {
  technician: (id: string) => ({ a: 'Ann', b: 'Ben' })[id]!,
  site: (id: string) => `Site ${id}`,
  time: (instant: string) => instant,
  money: (cents: number) => `$${cents}`,
};

type Taken = PlanChange['visits'][number];

function sentence(taken: Partial<Taken>, visitId: string | null = null): string {
  const from = { technicianId: 'a', date: '2026-06-09', startAt: 'Tuesday 08:00' };
  const visit: Taken = {
    ...{ visitId: 'v1', siteId: '1', what: 'dropped', from, to: null, minutesLater: null, breaksPromise: false },
    ...{ workTo: [], ...taken },
  };
  const change = { cents: { total: 900 }, visits: [visit], leftOut: [] } as unknown as PlanChange;
  return roadCallSentence('re-plan', { visitId, technicianId: 'a', startAt: 'Tuesday 09:00' }, change, names);
}

it('says who does the work of a visit that is taken out', () => {
  const workTo = [{ technicianId: 'b', date: '2026-06-09', startAt: 'Tuesday 10:40' }];
  expect(sentence({ workTo })).toBe(
    'Ann takes it, and the day is arranged anew on Tuesday 09:00. The visit to Site 1 on Tuesday 08:00 is taken out: Ben does its work there on Tuesday 10:40. It costs $900.',
  );
  expect(sentence({ workTo, breaksPromise: true })).toContain(
    'is taken out, which breaks its promise: Ben does its work there on Tuesday 10:40.',
  );
});

it('says that the work of a visit that is taken out waits where nobody else does it', () => {
  expect(sentence({})).toContain('The visit to Site 1 on Tuesday 08:00 is taken out: its work waits.');
});

it('says that the call rides along with a visit that nobody could make', () => {
  const to = { technicianId: 'a', date: '2026-06-09', startAt: 'Tuesday 09:00' };
  expect(sentence({ what: 'moved', from: null, to }, 'v1')).toBe(
    'Ann makes the visit there that nobody could make, and takes it along, on Tuesday 09:00. Nobody else moves. It costs $900.',
  );
  expect(sentence({ what: 'moved', from: null, to, breaksPromise: true }, 'v1')).toContain(
    'takes it along, on Tuesday 09:00, which breaks its promise.',
  );
});
