import { Refused } from '../data/api.js';
import { faultSaid } from './said.js';
import type { Words } from './words.js';

/** What is wrong with the fields of a form that was refused, by their names. */
export function faultsOf(error: unknown, words: Words): ReadonlyMap<string, string> {
  const errors = error instanceof Refused ? (error.problem.errors ?? []) : [];
  return new Map(errors.map((fault) => [fault.pointer.split('/')[1] ?? '', faultSaid(fault, words)]));
}
