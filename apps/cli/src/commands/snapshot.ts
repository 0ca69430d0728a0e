import type { Command } from 'commander';
import { dateOption, wholeOption } from '../options.js';
import { snapshotOfFolder } from '../plan-from-folder.js';
import { readFolder } from '../read-folder.js';
import { writeWholeFile } from '../whole-file.js';

interface Options {
  register: string;
  week: string;
  days: number;
  asOf?: string;
  out: string;
  timeZone: string;
}

export function addSnapshot(program: Command): void {
  program
    .command('snapshot')
    .description('write the planning snapshot of a register: everything a plan is made of, in one document')
    .requiredOption('--register <folder>', 'folder of CSV files')
    .requiredOption('--week <monday>', 'first day of the plan', dateOption)
    .option('--days <n>', 'days planned', wholeOption(1, 28), 7)
    .option('--as-of <date>', 'what is known: readings until then; default the eve of the week', dateOption)
    .option('--time-zone <zone>', 'time zone of sites that name none', 'America/Chicago')
    .requiredOption('--out <file>', 'the snapshot, as JSON')
    .action(async (options: Options) => {
      const { register } = await readFolder(options.register, { timeZone: options.timeZone });
      const snapshot = snapshotOfFolder(register, options.week, options.days, options.asOf);
      writeWholeFile(options.out, [`${JSON.stringify(snapshot)}\n`]);
      process.stdout.write(
        `${snapshot.sites.length} sites, ${snapshot.machines.length} machines, ${snapshot.items.length} items in ${options.out}\n`,
      );
    });
}
