import { type Exchange, meetingEvery, sharedExchange } from '@deckround/routing';
import type { Beside } from './messages.js';

/** The first thread's side: once it knows the iterations, the second one may begin. */
export function meetBeside({ meeting, planned }: Beside): {
  exchange: Exchange;
  onPlanned: (iterations: number) => void;
} {
  let exchange: Exchange | null = null;
  return {
    exchange: {
      side: 0,
      get every() {
        return exchange!.every;
      },
      meet: (shown, isLast) => exchange!.meet(shown, isLast),
    },
    onPlanned: (iterations) => {
      exchange = sharedExchange(meeting, 0, meetingEvery(iterations));
      new Float64Array(planned, 0, 1)[0] = iterations;
      Atomics.store(new Int32Array(planned), 2, 1);
      Atomics.notify(new Int32Array(planned), 2);
    },
  };
}

/** The second thread's side: waits until the first one knows. */
export function plannedIterations({ planned }: Beside): number {
  const state = new Int32Array(planned);
  while (Atomics.load(state, 2) === 0) Atomics.wait(state, 2, 0, 1000);
  return new Float64Array(planned, 0, 1)[0]!;
}
