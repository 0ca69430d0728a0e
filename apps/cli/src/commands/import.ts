import { parseConfig } from '@deckround/platform';
import { type ImportResult, importRegister } from '@deckround/register-store';
import { openDatabase, Store } from '@deckround/store';
import type { Command } from 'commander';
import { findShop } from '../find-shop.js';
import { readFolder } from '../read-folder.js';

interface Options {
  check?: boolean;
  shop?: string;
  timeZone?: string;
}

export function addImport(program: Command): void {
  program
    .command('import')
    .description('import a register: a folder of CSV files')
    .argument('<folder>', 'folder with customers.csv, sites.csv, machines.csv …')
    .option('--check', 'read and check everything, change nothing')
    .option('--shop <name>', 'the shop it belongs to; needed when the database holds several')
    .option(
      '--time-zone <zone>',
      'time zone of a shop made by this import; one that is there keeps its own',
      'America/Chicago',
    )
    .action(async (folder: string, options: Options) => {
      const { register, counts } = await readFolder(folder, { timeZone: options.timeZone! });
      const lines = Object.entries(counts).filter(([, count]) => count > 0);
      for (const [file, count] of lines)
        print(`${file.replace('.csv', '').replace('_', ' ').padEnd(18)}${number(count).padStart(9)}`);
      if (options.check) {
        print('No fault found. Nothing was changed, as asked.');
        return;
      }
      const config = parseConfig(process.env);
      const database = await openDatabase({ url: config.DATABASE_URL, folder: config.DECKROUND_DATA });
      const store = Store.open(database.url, 2);
      try {
        const shop = await findShop(store, options.shop, options.timeZone!);
        const result = await store.inShop(shop.id, (tx) => importRegister(tx, shop.id, register));
        report(result);
      } finally {
        await store.close();
        await database.stop();
      }
    });
}

function report({ counts, readings }: ImportResult): void {
  const all = Object.values(counts);
  const sum = (key: 'added' | 'changed') => all.reduce((total, count) => total + count[key], 0);
  if (sum('added') + sum('changed') === 0) print('Everything was there already: nothing changed.');
  else
    for (const [kind, count] of Object.entries(counts))
      if (count.added + count.changed > 0)
        print(`${kind}: ${number(count.added)} added, ${number(count.changed)} changed`);
  print(`${number(readings.readings)} readings on record, ${number(readings.setAside)} of them set aside as doubtful.`);
  if (readings.foundMeterChanges > 0) print(`${readings.foundMeterChanges} meter changes nobody told of were found.`);
}

function number(value: number): string {
  return value.toLocaleString('en-US');
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
