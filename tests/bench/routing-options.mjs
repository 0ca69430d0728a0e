import { parseArgs } from 'node:util';

const USAGE = `bench:routing -- FILES… [--seconds S | --iterations N] [--clock wall|cpu] [--seed N] [--threads 1|2] [--combine]
  [--parameters JSON] [--out results.jsonl] [--solutions DIR]
Reads VRPLIB files (.vrp, one-decimal truncated convention) and week-plan JSON; one JSON line per run. A .sol file
beside the instance gives the best known value and the gap. --combine chooses among the routes met by set partitioning
near the end; --threads 2 adds a second search that meets the first every so many iterations (a trial by the clock
fixes the iterations of both).`;

/** What the benchmark was asked for; without files or with an option it does not know, it says how it is used and ends. */
export function routingOptions() {
  try {
    const { values, positionals: files } = parseArgs({
      allowPositionals: true,
      options: {
        seconds: { type: 'string', default: '10' },
        iterations: { type: 'string' },
        clock: { type: 'string', default: 'wall' },
        seed: { type: 'string', default: '1' },
        out: { type: 'string' },
        solutions: { type: 'string' },
        parameters: { type: 'string', default: '{}' },
        combine: { type: 'boolean', default: false },
        threads: { type: 'string', default: '1' },
        help: { type: 'boolean', default: false },
      },
    });
    if (values.help) {
      console.log(USAGE);
      process.exit(0);
    }
    if (files.length === 0) throw new Error('Name at least one instance.');
    return {
      ...{ files, clock: oneOf('clock', values.clock, ['wall', 'cpu']), combine: values.combine },
      seconds: above(0, 'seconds', values.seconds),
      iterations: values.iterations === undefined ? null : above(0, 'iterations', values.iterations),
      seed: above(-1, 'seed', values.seed),
      threads: Number(oneOf('threads', values.threads, ['1', '2'])),
      parameters: JSON.parse(values.parameters),
      ...{ out: values.out, solutions: values.solutions },
    };
  } catch (error) {
    console.error(`${error.message}\n${USAGE}`);
    process.exit(2);
  }
}

function above(limit, name, text) {
  const number = Number(text);
  if (!(number > limit)) throw new Error(`--${name} ${text}: a number above ${limit} is wanted.`);
  return number;
}

function oneOf(name, text, choices) {
  if (!choices.includes(text)) throw new Error(`--${name} ${text}: use ${choices.join(' or ')}.`);
  return text;
}
