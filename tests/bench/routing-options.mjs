import { benchOptions, numberFrom, oneOf } from './bench-options.mjs';

const USAGE = `bench:routing -- FILES… [--seconds S | --iterations N] [--clock wall|cpu] [--seed N] [--threads 1|2] [--combine]
  [--parameters JSON] [--out results.jsonl] [--solutions DIR]
Reads VRPLIB files (.vrp, one-decimal truncated convention) and week-plan JSON; one JSON line per run. A .sol file
beside the instance gives the best known value and the gap. --combine chooses among the routes met by set partitioning
near the end; --threads 2 adds a second search that meets the first every so many iterations (a trial by the clock
fixes the iterations of both).`;

const DEFAULTS = {
  ...{ seconds: 10, iterations: undefined, clock: 'wall', seed: 1, threads: '1', combine: false },
  ...{ parameters: '{}', out: undefined, solutions: undefined },
};

/** What the routing benchmark was asked for. */
export function routingOptions() {
  return benchOptions(USAGE, DEFAULTS, (values, files) => {
    if (files.length === 0) throw new Error('Name at least one instance.');
    const { iterations } = values;
    return {
      ...values,
      files,
      clock: oneOf('clock', values.clock, ['wall', 'cpu']),
      iterations: iterations === undefined ? null : numberFrom(1, 'iterations', iterations),
      threads: Number(oneOf('threads', values.threads, ['1', '2'])),
      parameters: JSON.parse(values.parameters),
    };
  });
}
