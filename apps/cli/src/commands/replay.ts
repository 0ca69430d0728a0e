import { checkPlan, PlanningSnapshot } from '@deckround/planning';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';
import { wholeOption } from '../options.js';
import { searchPlan } from '../plan-from-folder.js';
import { readDocument } from '../read-document.js';
import { writeWholeFile } from '../whole-file.js';

interface Options {
  seconds: number;
  iterations?: number;
  seed: number;
  threads: number;
  combine: boolean;
  out: string;
}

export function addReplay(program: Command): void {
  program
    .command('replay')
    .description('plan again from a planning snapshot; with a run’s seed and iterations it gives that run’s plan')
    .argument('<snapshot>', 'planning snapshot, as JSON')
    .option('--seconds <n>', 'how long to search', wholeOption(1, 3600), 10)
    .option('--iterations <n>', 'search exactly so many steps', wholeOption(1000, 1_000_000_000))
    .option('--seed <n>', 'seed of the search', wholeOption(1, 2_000_000_000), 1)
    .option('--threads <n>', 'searches side by side, 1 or 2', wholeOption(1, 2), 1)
    .option('--combine', 'combine routes by set partitioning near the end', false)
    .requiredOption('--out <file>', 'the plan, as JSON')
    .action(async (file: string, options: Options) => {
      const snapshot = readDocument(file, PlanningSnapshot, 'a planning snapshot');
      const plan = await searchPlan(snapshot, options);
      const faults = checkPlan(snapshot, plan);
      if (faults.length > 0)
        throw new CliError(
          `The plan failed its own check, and was not written: ${JSON.stringify(faults.slice(0, 5))}`,
          1,
        );
      writeWholeFile(options.out, [`${JSON.stringify(plan, null, 2)}\n`]);
      process.stdout.write(
        `${plan.visits.length} visits, total ${plan.cost.total} cents, ${plan.iterations} iterations; in ${options.out}\n`,
      );
    });
}
