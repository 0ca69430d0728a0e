import { parseArgs } from 'node:util';

/**
 * What a benchmark was asked for. With an option, a value or a file it cannot do with it says so and how it is used, and
 * ends; with `--help` it only says how it is used.
 *
 * @param usage    how the benchmark is called, and what its options mean
 * @param defaults per option: a number, a text, `false` for a flag, or `undefined` for a text that may be left out
 * @param read     makes of the values, and of what is named besides, what the benchmark works with; throws what to say
 */
export function benchOptions(usage, defaults, read = withoutFiles) {
  const options = { help: { type: 'boolean' } };
  for (const [name, value] of Object.entries(defaults))
    options[name] = { type: value === false ? 'boolean' : 'string' };
  try {
    const { values, positionals } = parseArgs({ options, allowPositionals: true });
    if (values.help) {
      console.log(usage);
      process.exit(0);
    }
    const asked = Object.entries(defaults).map(([name, value]) => [name, given(name, values[name], value)]);
    return read(Object.fromEntries(asked), positionals);
  } catch (error) {
    console.error(`${error.message}\n${usage}`);
    process.exit(2);
  }
}

function given(name, text, value) {
  if (text === undefined) return value;
  return typeof value === 'number' ? numberFrom(0, name, text) : text;
}

function withoutFiles(values, files) {
  if (files.length > 0) throw new Error(`${files[0]}: no files are wanted.`);
  return values;
}

export function numberFrom(least, name, text) {
  const number = Number(text);
  if (text.trim() === '' || !(number >= least))
    throw new Error(`--${name} ${text}: a number from ${least} on is wanted.`);
  return number;
}

export function oneOf(name, text, choices) {
  if (!choices.includes(text)) throw new Error(`--${name} ${text}: use ${choices.join(' or ')}.`);
  return text;
}

/** A list such as 50,100,200. */
export function numbersFrom(least, name, text) {
  return text
    .split(',')
    .filter(Boolean)
    .map((each) => numberFrom(least, name, each));
}
