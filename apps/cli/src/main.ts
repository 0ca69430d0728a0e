#!/usr/bin/env node
import { hideDriverNotice } from '@deckround/platform';
import { Command } from 'commander';
import { CliError } from './cli-error.js';
import { addCheck } from './commands/check.js';
import { addDemo } from './commands/demo.js';
import { addForecast } from './commands/forecast.js';
import { addImport } from './commands/import.js';
import { addLives } from './commands/lives.js';
import { addMigrate } from './commands/migrate.js';
import { addOpenShop } from './commands/open-shop.js';
import { addPlan } from './commands/plan.js';
import { addReplay } from './commands/replay.js';
import { addSnapshot } from './commands/snapshot.js';
import { plainWords } from './plain-words.js';

hideDriverNotice();
const program = new Command('deckround').description(
  'Upkeep of other people’s mowers where they stand: import a register, forecast what falls due, plan the week.',
);
for (const add of [
  addDemo,
  addOpenShop,
  addImport,
  addForecast,
  addPlan,
  addSnapshot,
  addReplay,
  addCheck,
  addLives,
  addMigrate,
])
  add(program);

try {
  await program.parseAsync();
} catch (error) {
  if (error instanceof CliError) {
    process.stderr.write(`${error.message}\n`);
    process.exitCode = error.exitCode;
  } else {
    const stack = process.env.LOG_LEVEL === 'debug' && error instanceof Error ? `${error.stack}\n` : '';
    process.stderr.write(`${plainWords(error)}\n${stack}`);
    process.exitCode = 1;
  }
}
