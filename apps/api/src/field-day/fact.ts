import type { FieldFact } from '@deckround/contracts';
import type { z } from 'zod';
import type { VisitRow } from '../planning/visit-view.js';

export type Fact = z.infer<typeof FieldFact>;

/** A fact and where it belongs. Everything about a machine names it; the contract sees to that. */
export interface Place {
  readonly id: string;
  readonly happenedAt: Date;
  /** Another time of the device, put right as that one is. */
  readonly believed: (instant: string) => Date;
  readonly timeZone: string;
  readonly visit: VisitRow | null;
  readonly machineId: string | null;
}
