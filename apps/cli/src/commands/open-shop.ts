import { randomBytes } from 'node:crypto';
import { parseConfig } from '@deckround/platform';
import { isTimeZone } from '@deckround/register';
import { writeCatalogue } from '@deckround/register-store';
import { openDatabase, Store } from '@deckround/store';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';

interface Options {
  name: string;
  timeZone: string;
  manager: string;
  email: string;
}

export function addOpenShop(program: Command): void {
  program
    .command('open-shop')
    .description('make a shop with the starter catalogue and its first manager, whose password is shown once')
    .requiredOption('--name <name>', 'name of the shop')
    .requiredOption('--time-zone <zone>', 'its time zone, e.g. America/Chicago')
    .requiredOption('--manager <name>', 'name of the manager')
    .requiredOption('--email <address>', 'the manager’s e-mail address, to sign in with')
    .action(async (options: Options) => {
      if (!isTimeZone(options.timeZone))
        throw new CliError(`"${options.timeZone}" is not a time zone: write it like America/Chicago.`);
      if (!/^\S+@\S+\.\S+$/.test(options.email)) throw new CliError(`"${options.email}" is not an e-mail address.`);
      const { hashPassword } = await import('@deckround/api');
      const config = parseConfig(process.env);
      const database = await openDatabase({ url: config.DATABASE_URL, folder: config.DECKROUND_DATA });
      const store = Store.open(database.url, 2);
      try {
        const password = randomBytes(12).toString('base64url');
        const passwordHash = await hashPassword(password);
        await store.asOwner(async (tx) => {
          // One shop of a name: an import may have made it already.
          const found = await tx.shop.findFirst({ where: { name: options.name } });
          const shop = found ?? (await tx.shop.create({ data: { name: options.name, timeZone: options.timeZone } }));
          await tx.person.create({
            data: {
              shopId: shop.id,
              name: options.manager,
              email: options.email.toLowerCase(),
              role: 'manager',
              passwordHash,
            },
          });
        });
        const shop = await store.asOwner((tx) => tx.shop.findFirstOrThrow({ where: { name: options.name } }));
        await store.inShop(shop.id, (tx) => writeCatalogue(tx, shop.id));
        process.stdout.write(
          `The shop "${options.name}" is open. Sign in as ${options.email} with password ${password}\n`,
        );
      } finally {
        await store.close();
        await database.stop();
      }
    });
}
