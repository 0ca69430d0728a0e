/** Settings of the search; each with the value that measured best, see the room's README. */
export interface SearchParameters {
  /** Strings taken out per iteration: one, and up to so many more by a draw. */
  moreStrings: number;
  /** L: longest string. */
  longestString: number;
  /** α: share of split strings. */
  splitShare: number;
  /** Chance that a split string spares one more visit. */
  splitGrowth: number;
  /** Share of iterations that swap the ends of two routes near each other, and two whole routes, instead. */
  endSwaps: number;
  routeSwaps: number;
  /** γ: chance to pass over the best insertion found so far. */
  blink: number;
  /** What a minute that an insertion pushes the next start back counts for, in drives of a minute; where minutes are scarce. */
  minutePrice: number;
  /** First and last temperature as a multiple of the mean travel cost per placed visit. */
  firstTemperature: number;
  lastTemperature: number;
  /** Iterations per stop that a round of cooling wants, rounds at most, and the share of heat a later round begins with. */
  roundPerStop: number;
  mostRounds: number;
  reheat: number;
  /** Routes remembered for combining. */
  mostPooled: number;
  /** Unserved stops offered per iteration, at most: near the seed, and anywhere. */
  unservedNear: number;
  unservedAnywhere: number;
  /** Chance to take a shorter option than the best that fits. */
  shorterOption: number;
  /** Share of iterations in which a visit may cost something by itself, and how much at most, in mean arc costs. */
  lenientShare: number;
  lenience: number;
  /** Where more routes than this have room, a stop is offered to some of them only: so many near it, and so many drawn. */
  manyRoutes: number;
  nearRoutes: number;
  drawnRoutes: number;
  /** From more routes than this on, two searches divide the plan between them. */
  dividedFrom: number;
  /** Share of the run from which on cyclic transfers are looked for, now and then; 1 = never. */
  transfersFrom: number;
  insertionCache: boolean;
  earlyAbort: boolean;
}

export const DEFAULT_PARAMETERS: SearchParameters = {
  moreStrings: 2.5,
  longestString: 20,
  splitShare: 0.5,
  splitGrowth: 0.01,
  endSwaps: 0.1,
  routeSwaps: 0.6,
  blink: 0.03,
  minutePrice: 0.15,
  firstTemperature: 1,
  lastTemperature: 0.05,
  roundPerStop: 2500,
  mostRounds: 4,
  reheat: 0.3,
  mostPooled: 2500,
  unservedNear: 6,
  unservedAnywhere: 3,
  shorterOption: 0.03,
  lenientShare: 0.2,
  lenience: 4,
  manyRoutes: 20,
  nearRoutes: 4,
  drawnRoutes: 1,
  dividedFrom: 40,
  transfersFrom: 0.4,
  insertionCache: true,
  earlyAbort: true,
};
