import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Service } from '@deckround/api';
import { createDemo, DEMO_TODAY, DEMO_WEEK, type Demo } from '@deckround/demo';
import { PlanningSnapshot, WeekPlan } from '@deckround/planning';
import { createLogger, isAlive, parseConfig, requireFreePort } from '@deckround/platform';
import { dateColumn, loadRegister } from '@deckround/register-store';
import { type Database, openDatabase, PLAN_DOCUMENTS, Store } from '@deckround/store';
import type { Command } from 'commander';
import { CliError } from '../cli-error.js';
import { wholeOption } from '../options.js';
import { count, day, money } from '../report/format.js';
import { Steps } from '../report/steps.js';
import { printWeek, weekNames } from '../report/week-report.js';

interface Options {
  fresh?: boolean;
  seconds: number;
  exit?: boolean;
}

export function addDemo(program: Command): void {
  program
    .command('demo')
    .description('an invented shop: forecast and planned, shown here and served for as long as this runs')
    .option('--fresh', 'start over with new data')
    .option('--seconds <n>', 'how long to search for the week', wholeOption(1, 600), 15)
    .option('--exit', 'end after showing the week')
    .action(runDemo);
}

async function runDemo(options: Options): Promise<void> {
  const config = parseConfig({
    ...process.env,
    DATABASE_URL: undefined,
    REDIS_URL: undefined,
    LOG_LEVEL: process.env.LOG_LEVEL ?? 'warn',
  });
  const folder = resolve(config.DECKROUND_DATA, 'demo');
  const steps = new Steps(process.stdout);
  const ending = new Ending();
  const hold = holdFolder(folder);
  // Before a shop is made that nobody could look at.
  await requireFreePort(config.PORT, config.HOST).catch((error: Error) => {
    hold.release();
    throw error;
  });
  let database: Database | undefined;
  let service: Service | undefined;
  try {
    if (options.fresh) rmSync(join(folder, 'sign-ins.json'), { force: true });
    database = await steps.run('database', async () => {
      if (options.fresh) await emptyFolder(folder);
      return openDatabase({ folder });
    });
    ending.check();
    const demo = await ensureDemo(database, folder, steps);
    ending.check();
    // Loaded here, not above: the service takes a second to load, which no other command should wait for.
    const { startService } = await import('@deckround/api');
    service = await startService(config, { database, logger: createLogger(config.LOG_LEVEL, 'demo') });
    await ensureForecast(service, demo, steps, ending);
    await ensurePlan(service, demo, options.seconds, steps, ending);
    await showWeek(service, demo);
    showAddress(service, demo);
    if (!options.exit) await ending.asked;
  } catch (error) {
    if (!(error instanceof Ended)) throw error;
  } finally {
    process.stdout.write('\nEnding …\n');
    await service?.stop();
    await database?.stop();
    hold.release();
    ending.release();
  }
  process.stdout.write('Ended; the data stays for the next start.\n');
}

class Ended extends Error {}

/** Ctrl-C, or a stop from the system: the work at hand ends cleanly. */
class Ending {
  private wanted = false;
  private readonly listener = () => {
    this.wanted = true;
    this.tell();
  };
  private tell: () => void = () => {};
  readonly asked = new Promise<void>((done) => {
    this.tell = done;
  });

  constructor() {
    process.on('SIGINT', this.listener);
    process.on('SIGTERM', this.listener);
  }

  get isWanted(): boolean {
    return this.wanted;
  }

  check(): void {
    if (this.wanted) throw new Ended();
  }

  release(): void {
    process.off('SIGINT', this.listener);
    process.off('SIGTERM', this.listener);
  }
}

/** Two demos must not share one folder. */
function holdFolder(folder: string): { release(): void } {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'process');
  if (existsSync(file)) {
    const pid = Number(readFileSync(file, 'utf8'));
    if (pid > 0 && pid !== process.pid && isAlive(pid)) {
      throw new CliError(
        `The demo runs already in ${folder} (process ${pid}): stop it first, or set DECKROUND_DATA to another folder.`,
        1,
      );
    }
  }
  writeFileSync(file, String(process.pid));
  return { release: () => rmSync(file, { force: true }) };
}

/** Stops a server that a killed demo left running, and takes its data away. */
async function emptyFolder(folder: string): Promise<void> {
  if (!existsSync(join(folder, 'postgres'))) return;
  const left = await openDatabase({ folder });
  await left.stop();
  rmSync(join(folder, 'postgres'), { recursive: true, force: true });
}

async function ensureDemo(database: Database, folder: string, steps: Steps): Promise<Demo> {
  const file = join(folder, 'sign-ins.json');
  if (existsSync(file)) return JSON.parse(readFileSync(file, 'utf8')) as Demo;
  const store = Store.open(database.url, 2);
  try {
    const demo = await steps.run('invented shop with two seasons of readings', async () => {
      await store.asOwner((tx) => tx.shop.deleteMany({}));
      const { hashPassword } = await import('@deckround/api');
      return createDemo(store, { hashPassword, demoOf: null, now: new Date() });
    });
    writeFileSync(file, JSON.stringify(demo, null, 2), { mode: 0o600 });
    return demo;
  } finally {
    await store.close();
  }
}

async function ensureForecast(
  { store, queue }: Service,
  { shopId }: Demo,
  steps: Steps,
  ending: Ending,
): Promise<void> {
  const done = await store.inShop(shopId, (tx) => tx.forecastRun.count({ where: { status: 'done' } }));
  if (done > 0) return;
  await steps.run('forecast of every service item', async () => {
    const run = await store.inShop(shopId, (tx) =>
      tx.forecastRun.create({
        data: { shopId, asOf: dateColumn(DEMO_TODAY), costFrom: dateColumn(DEMO_WEEK), costDays: 14 },
      }),
    );
    await queue.enqueue('forecast', { shopId, runId: run.id });
    await untilDone(ending, () =>
      store.inShop(shopId, (tx) => tx.forecastRun.findUniqueOrThrow({ where: { id: run.id } })),
    );
  });
}

async function ensurePlan(
  { store, queue }: Service,
  { shopId }: Demo,
  seconds: number,
  steps: Steps,
  ending: Ending,
): Promise<void> {
  const done = await store.inShop(shopId, (tx) => tx.planRun.count({ where: { status: 'done' } }));
  if (done > 0) return;
  await steps.run('the week of visits', async (say) => {
    const run = await store.inShop(shopId, (tx) =>
      tx.planRun.create({ data: { shopId, weekOf: dateColumn(DEMO_WEEK), days: 7, seed: 1, seconds } }),
    );
    await queue.enqueue('plan', { shopId, runId: run.id });
    await untilDone(ending, async () => {
      const row = await store.inShop(shopId, (tx) =>
        tx.planRun.findUniqueOrThrow({ where: { id: run.id }, omit: PLAN_DOCUMENTS }),
      );
      const progress = row.progress as { totalCents: number; visits: number; items: number } | null;
      if (progress)
        say(
          `${money(progress.totalCents, 'USD')}, ${count(progress.visits, 'visit')}, ${count(progress.items, 'item')}`,
        );
      return row;
    });
  });
}

async function untilDone(ending: Ending, look: () => Promise<{ status: string; error: string | null }>): Promise<void> {
  for (;;) {
    const { status, error } = await look();
    if (status === 'done') return;
    if (status !== 'asked' && status !== 'running') throw new Error(`It ${status}: ${error ?? 'no reason given'}`);
    if (ending.isWanted) throw new Ended();
    await new Promise((done) => setTimeout(done, 250));
  }
}

async function showWeek({ store }: Service, { shopId }: Demo): Promise<void> {
  const { run, register } = await store.inShop(shopId, async (tx) => ({
    run: await tx.planRun.findFirstOrThrow({ where: { status: 'done' }, orderBy: { finishedAt: 'desc' } }),
    register: await loadRegister(tx),
  }));
  process.stdout.write('\n');
  printWeek(WeekPlan.parse(run.plan), weekNames(register, PlanningSnapshot.parse(run.snapshot)), process.stdout);
}

function showAddress({ address, database, jobs }: Service, demo: Demo): void {
  const lines = [
    '',
    `${count(demo.machines, 'machine')}, ${count(demo.readings, 'reading')}, ${count(demo.setAside, 'reading')} set aside as doubtful; the calendar stood at ${day(DEMO_TODAY)} 2026 when it was made, and goes on from there.`,
    `Open ${address} in a browser (${database} PostgreSQL, jobs ${jobs}); for programs: ${address}/docs`,
    'Sign-ins, made for this demo:',
    ...demo.signIns.map(({ role, email, password }) => `  ${role.padEnd(11)} ${email.padEnd(24)} ${password}`),
    'Ctrl-C ends it; the next start takes seconds, `npm run demo -- --fresh` starts over.',
    '',
  ];
  process.stdout.write(lines.join('\n'));
}
