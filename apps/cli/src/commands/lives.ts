import {
  answerFit,
  compareParts,
  deriveLives,
  type FitAnswer,
  isReplacing,
  type PartsAnswer,
  partsOnRecord,
  selectLives,
  statedPrior,
} from '@deckround/learning';
import type { Register } from '@deckround/register';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';
import { dateOption } from '../options.js';
import { readFolder } from '../read-folder.js';
import { type PlottedSeries, survivalSvg, survivalText } from '../report/survival-plot.js';
import { writeWholeFile } from '../whole-file.js';

interface Options {
  register: string;
  item: string;
  compare?: string;
  asOf?: string;
  json?: string;
  svg?: string;
  timeZone: string;
}

export function addLives(program: Command): void {
  program
    .command('lives')
    .description('how long parts last in this shop, and which of two part grades lasts longer, without any server')
    .requiredOption('--register <folder>', 'folder of CSV files')
    .option('--item <code>', 'service item that replaces the part', 'replace-spindle-bearings')
    .option('--compare <parts>', 'two part ids, first against second: "A,B"; default the two most often fitted')
    .option('--as-of <date>', 'later records are not used; default the newest record', dateOption)
    .option('--json <file>', 'writes the whole answer')
    .option('--svg <file>', 'writes the survival plot as a picture')
    .option('--time-zone <zone>', 'time zone of sites that name none', 'America/Chicago')
    .action(async (options: Options) => {
      const { register } = await readFolder(options.register, { timeZone: options.timeZone });
      const asOf = options.asOf ?? newestRecord(register);
      const lives = selectLives(deriveLives(register, asOf), { itemCode: options.item });
      const item = register.classes.flatMap((each) => each.items).find((each) => each.code === options.item);
      if (!item || !isReplacing(item.code))
        throw new CliError(`"${options.item}" replaces no part: use one of ${replacingItems(register).join(', ')}.`);
      const fit = answerFit(lives, [lives], statedPrior(register, item));
      const parts = chosenParts(options.compare, partsOnRecord(lives, item.code), register);
      const comparison = parts && compareParts(lives, parts, register);
      if (options.json !== undefined)
        writeWholeFile(options.json, [`${JSON.stringify({ asOf, item: item.code, fit, comparison }, null, 2)}\n`]);
      const series = plotted(fit, comparison);
      if (options.svg !== undefined)
        writeWholeFile(options.svg, [survivalSvg(`${item.title}: parts still working`, series)]);
      process.stdout.write(`${report(item.title, asOf, fit, comparison, series)}\n`);
    });
}

function newestRecord(register: Register): string {
  const days = [
    ...register.readings.map((each) => each.readAt.slice(0, 10)),
    ...register.completions.map((each) => each.doneOn),
  ];
  const newest = days.reduce((latest, day) => (day > latest ? day : latest), '');
  if (newest === '')
    throw new CliError('The register holds no readings and no service history: there are no lives to see.');
  return newest;
}

function replacingItems(register: Register): string[] {
  return [...new Set(register.classes.flatMap((each) => each.items.map((item) => item.code)))].filter(isReplacing);
}

function chosenParts(
  asked: string | undefined,
  onRecord: readonly string[],
  register: Register,
): [string, string] | null {
  if (asked === undefined) {
    // The dearer grade first: the question is whether it earns its price.
    const price = (code: string) => register.parts.find((part) => part.code === code)?.unitPriceCents ?? 0;
    const [a, b] = onRecord;
    if (a === undefined || b === undefined) return null;
    return price(a) >= price(b) ? [a, b] : [b, a];
  }
  const [first, second, ...more] = asked.split(',').map((each) => each.trim());
  if (!first || !second || more.length > 0 || first === second)
    throw new CliError('Name two different parts, like --compare BRG-6205-2Z,BRG-6205-PLAIN.');
  for (const part of [first, second])
    if (!register.parts.some((each) => each.code === part)) throw new CliError(`"${part}" is not in parts.csv.`);
  return [first, second];
}

function plotted(fit: FitAnswer, comparison: PartsAnswer | null): PlottedSeries[] {
  if (!comparison) return [{ name: 'all parts', points: fit.points, watchedToHours: fit.points.at(-1)?.ageHours ?? 0 }];
  return comparison.grades.map((grade, i) => ({
    name: `${grade} (${comparison.descriptions[i]}): ${comparison.failures[i]} failures in ${comparison.lives[i]} lives`,
    points: comparison.points[i]!,
    watchedToHours: comparison.watchedToHours[i]!,
  }));
}

function report(
  title: string,
  asOf: string,
  fit: FitAnswer,
  comparison: PartsAnswer | null,
  series: readonly PlottedSeries[],
): string {
  const figure = (value: { value: number; low: number; high: number } | null, digits: number) =>
    value === null
      ? 'cannot be told'
      : `${value.value.toFixed(digits)} (90 % between ${value.low.toFixed(digits)} and ${value.high.toFixed(digits)})`;
  const lines = [
    `${title}, as of ${asOf}`,
    '',
    `All parts: ${fit.failures} failures in ${fit.lives} lives. ${fit.statement}`,
    `  shape ${figure(fit.shape, 2)}`,
    `  scale ${figure(fit.scaleHours, 0)} h, by which 63 % have failed`,
    `  B10   ${figure(fit.b10Hours, 0)} h, by which 10 % have failed`,
    ...(fit.goodness === null ? [] : [`  ${fit.goodness}`]),
    ...fit.leftOut.map((each) => `  ${each}`),
    '',
  ];
  if (comparison) lines.push(comparison.sentence, ...comparison.assumptions.map((each) => `  - ${each}`), '');
  else lines.push('Only one kind of part is on record: there is nothing to compare.', '');
  lines.push(survivalText(series), '', 'Taken for granted:', ...fit.assumptions.map((each) => `  - ${each}`));
  return lines.join('\n');
}
