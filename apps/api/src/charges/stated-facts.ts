import { DomainError } from '@deckround/platform';
import type { DoneItem, Facts } from './charged-visit.js';

type Done = readonly Pick<DoneItem, 'id' | 'machineId'>[];

/** What was stated before, and what is stated now over it. */
export function withStated(before: Facts, stated: Facts): Facts {
  const work = new Map((before.work ?? []).map((each) => [each.itemId, each]));
  for (const each of stated.work ?? []) work.set(each.itemId, { ...work.get(each.itemId), ...each });
  return { ...before, ...stated, ...(work.size > 0 && { work: [...work.values()] }) };
}

/** What counts of all that was stated: work may have been taken back since, and counts again once it is done after all. */
export function standingFacts({ work, parts, ...facts }: Facts, done: Done): Facts {
  return {
    ...facts,
    ...(work && { work: work.filter((each) => isOf(each, done)) }),
    ...(parts && { parts: parts.filter((each) => isOf(each, done)) }),
  };
}

/** @throws DomainError invalid-input where it is stated of work that was not done, or of a machine on which none was */
export function requireDone({ work = [], parts = [] }: Facts, done: Done): void {
  const errors = [
    ...work.flatMap((each, at) =>
      isOf(each, done) ? [] : [{ pointer: `/work/${at}/itemId`, detail: 'not an item that was done' }],
    ),
    ...parts.flatMap((each, at) => {
      if (isOf(each, done)) return [];
      return each.itemId === null
        ? [{ pointer: `/parts/${at}/machineId`, detail: 'nothing was done on this machine' }]
        : [{ pointer: `/parts/${at}/itemId`, detail: 'not an item that was done' }];
    }),
  ];
  if (errors.length > 0)
    throw new DomainError('invalid-input', 'It names work that was not done on this visit.', errors);
}

interface Stated {
  readonly itemId: string | null;
  readonly machineId?: string | null;
}

function isOf({ itemId, machineId = null }: Stated, done: Done): boolean {
  if (itemId !== null) return done.some(({ id }) => id === itemId);
  return machineId === null || done.some((item) => item.machineId === machineId);
}
