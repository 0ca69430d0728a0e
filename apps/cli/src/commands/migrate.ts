import { parseConfig } from '@deckround/platform';
import { migrate } from '@deckround/store';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';

export function addMigrate(program: Command): void {
  program
    .command('migrate')
    .description('bring the database named by DATABASE_URL to the newest schema')
    .action(async () => {
      const { DATABASE_URL } = parseConfig(process.env);
      if (!DATABASE_URL)
        throw new CliError('Set DATABASE_URL to the database. The embedded one is migrated whenever it starts.');
      const done = await migrate(DATABASE_URL);
      process.stdout.write(
        done.length === 0 ? 'The schema is at its newest already.\n' : `Applied: ${done.join(', ')}\n`,
      );
    });
}
