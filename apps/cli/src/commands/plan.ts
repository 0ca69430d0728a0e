import { baselinePlan, checkPlan } from '@deckround/planning';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';
import { dateOption, wholeOption } from '../options.js';
import { searchPlan, snapshotOfFolder } from '../plan-from-folder.js';
import { readFolder } from '../read-folder.js';
import { money } from '../report/format.js';
import { printWeek, type WeekNames, weekNames } from '../report/week-report.js';
import { writeWholeFile } from '../whole-file.js';

interface Options {
  register: string;
  week: string;
  seconds: number;
  iterations?: number;
  seed: number;
  threads: number;
  combine: boolean;
  days: number;
  out: string;
  asOf?: string;
  baseline?: boolean;
  print?: boolean;
  timeZone: string;
}

export function addPlan(program: Command): void {
  program
    .command('plan')
    .description('plan a week from a register folder, without any server')
    .requiredOption('--register <folder>', 'folder of CSV files')
    .requiredOption('--week <monday>', 'first day of the plan', dateOption)
    .option('--seconds <n>', 'how long to search', wholeOption(1, 3600), 10)
    .option(
      '--iterations <n>',
      'search exactly so many steps instead: the same plan again for the same seed',
      wholeOption(1000, 1_000_000_000),
    )
    .option('--seed <n>', 'seed of the search', wholeOption(1, 2_000_000_000), 1)
    .option('--threads <n>', 'searches side by side, 1 or 2', wholeOption(1, 2), 1)
    .option('--combine', 'combine routes by set partitioning near the end', false)
    .option('--days <n>', 'days planned', wholeOption(1, 28), 7)
    .option('--as-of <date>', 'what is known: readings until then; default the eve of the week', dateOption)
    .option('--time-zone <zone>', 'time zone of sites that name none', 'America/Chicago')
    .option('--baseline', 'also say what the plan costs against each item on its due day, nearest neighbour')
    .option('--print', 'also print the week')
    .requiredOption('--out <file>', 'the plan, as JSON')
    .action(async (options: Options) => {
      const { register } = await readFolder(options.register, { timeZone: options.timeZone });
      const snapshot = snapshotOfFolder(register, options.week, options.days, options.asOf);
      const plan = await searchPlan(snapshot, options);
      const faults = checkPlan(snapshot, plan);
      if (faults.length > 0)
        throw new CliError(
          `The plan failed its own check, and was not written: ${JSON.stringify(faults.slice(0, 5))}`,
          1,
        );
      writeWholeFile(options.out, [`${JSON.stringify(plan, null, 2)}\n`]);
      const names: WeekNames = weekNames(register, snapshot);
      if (options.print) printWeek(plan, names, process.stdout);
      process.stdout.write(
        `${plan.visits.length} visits, ${plan.visits.reduce((sum, visit) => sum + visit.items.length, 0)} items, ` +
          `${plan.leftOut.length} left out, ${money(plan.cost.total, snapshot.currency)}; ${plan.iterations} iterations with seed ${plan.seed}; checked; in ${options.out}\n`,
      );
      if (options.baseline) {
        for (const variant of ['due-day', 'seven-day-merge'] as const) {
          const each = baselinePlan(snapshot, variant);
          const share = (100 * (each.cost.total - plan.cost.total)) / each.cost.total;
          process.stdout.write(
            `baseline, ${variant}: ${money(each.cost.total, snapshot.currency)}; the plan is ${share.toFixed(1)} % cheaper\n`,
          );
        }
      }
    });
}
