// `npm test`: finds or starts what the tests need, runs every test, and closes with one line `N passed, N failed`.
import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { freePort } from '@deckround/platform';
import { createDatabase, dropDatabase, migrate, startEmbeddedPostgres } from '@deckround/store';
import { Redis } from 'ioredis';

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'deckround-test-'));
chmodSync(folder, 0o711); // the database server may run as another user
const endings = [];
const say = (line) => process.stdout.write(`${line}\n`);

let passed = 0;
let failed = 0;
// Beside the tests, which wait for other things now and then.
const checks = step('lint and format', [
  'node_modules/@biomejs/biome/bin/biome',
  'check',
  '.',
  '--reporter=summary',
]).then(() => step('types of the tests', ['node_modules/typescript-7/bin/tsc', '-p', 'tsconfig.tests.json']));
try {
  const postgres = await findPostgres();
  const redis = await findRedis();
  await jest({ ...postgres, ...redis, ...findBrowser() });
} catch (error) {
  failed += 1;
  say(error instanceof Error ? error.message : String(error));
} finally {
  await checks;
  for (const end of endings.reverse()) await end();
  rmSync(folder, { recursive: true, force: true });
}
say(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/** Runs a program that says nothing but what is wrong; it counts as one test. */
function step(name, args) {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (text) => (said += text));
    child.on('error', (error) => (said += error.message));
    child.on('close', (status) => {
      if (status === 0) passed += 1;
      else {
        failed += 1;
        say(`${name}: failed\n${said}`);
      }
      done();
    });
  });
}

/** The server named by DATABASE_URL, else the PostgreSQL that comes from npm. One migrated template for all files. */
async function findPostgres() {
  let admin = process.env.DATABASE_URL;
  if (admin) say('PostgreSQL: the server named by DATABASE_URL');
  else {
    const server = await startEmbeddedPostgres(folder, { durable: false });
    endings.push(() => server.stop());
    admin = server.urlOf('postgres');
    say('PostgreSQL: the one that comes from npm, in a temporary folder');
  }
  const template = `deckround_test_${process.pid}`;
  await createDatabase(admin, template);
  endings.push(() => dropDatabase(admin, template));
  const url = new URL(admin);
  url.pathname = `/${template}`;
  await migrate(url.toString());
  return { DECKROUND_TEST_POSTGRES: admin, DECKROUND_TEST_TEMPLATE: template };
}

/** A server named by REDIS_URL, a local binary, Docker, or Debian's package when root: in that order. */
async function findRedis() {
  if (process.env.REDIS_URL) {
    say('Redis: the server named by REDIS_URL');
    return { DECKROUND_TEST_REDIS: process.env.REDIS_URL };
  }
  const isThere = () => spawnSync('redis-server', ['--version']).status === 0;
  if (!isThere() && spawnSync('docker', ['info']).status === 0) return redisInDocker();
  if (!isThere() && process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    say('Redis: not found; installing redis-server with apt-get');
    spawnSync('apt-get', ['update', '-qq']);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['install', '-y', '-qq', 'redis-server'], { env });
  }
  if (!isThere()) {
    throw new Error(
      'Redis: none found. Set REDIS_URL to a running server, or install redis-server (Debian: apt-get install redis-server), or start Docker.',
    );
  }
  const port = await freePort();
  const child = spawn('redis-server', ['--port', String(port), '--bind', '127.0.0.1', '--save', '', '--dir', folder], {
    stdio: 'ignore',
  });
  endings.push(() => {
    child.kill();
  });
  const url = `redis://127.0.0.1:${port}`;
  await untilRedisAnswers(url);
  say(`Redis: the local redis-server, on port ${port}`);
  return { DECKROUND_TEST_REDIS: url };
}

async function redisInDocker() {
  const port = await freePort();
  const { status, stdout, stderr } = spawnSync(
    'docker',
    ['run', '--rm', '-d', '-p', `127.0.0.1:${port}:6379`, 'redis:8-alpine'],
    { encoding: 'utf8' },
  );
  if (status !== 0)
    throw new Error(
      `Redis: Docker could not start it. ${stderr.trim()} Set REDIS_URL to a running server, or install redis-server.`,
    );
  endings.push(() => {
    spawnSync('docker', ['stop', stdout.trim()]);
  });
  const url = `redis://127.0.0.1:${port}`;
  await untilRedisAnswers(url);
  say(`Redis: in Docker, on port ${port}`);
  return { DECKROUND_TEST_REDIS: url };
}

async function untilRedisAnswers(url) {
  const redis = new Redis(url, { lazyConnect: true, retryStrategy: () => 100 });
  redis.on('error', () => {});
  try {
    for (let tries = 0; tries < 100; tries += 1) {
      const answer = await redis.ping().catch(() => null);
      if (answer === 'PONG') return;
      await new Promise((done) => setTimeout(done, 100));
    }
  } finally {
    redis.disconnect();
  }
  throw new Error(`Redis was started at ${url} but does not answer.`);
}

/**
 * A Chromium named by CHROMIUM_PATH, a local one, or Debian's package when root; without one the browser tests are left out.
 * First the one without windows of its own, which draws no more than the pages: with it they take a fifth less time.
 */
function findBrowser() {
  const places = [
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
  ];
  const find = () => [process.env.CHROMIUM_PATH, ...places].find((path) => path && existsSync(path));
  if (!find() && process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0) {
    say('Chromium: not found; installing it with apt-get');
    spawnSync('apt-get', ['update', '-qq']);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    for (const each of ['chromium-headless-shell', 'chromium']) {
      if (!find()) spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', each], { env });
    }
  }
  const path = find();
  if (path) {
    say(`Chromium: ${path}`);
    return { DECKROUND_TEST_BROWSER: path };
  }
  say('Chromium: none found, so the browser tests are SKIPPED. Install it, or set CHROMIUM_PATH.');
  return { DECKROUND_TEST_BROWSER: '' };
}

function jest(env) {
  const results = join(folder, 'results.json');
  const args = [
    // Some files make much that is soon gone: with the usual 16 MB that is collected all the time.
    '--max-semi-space-size=64',
    ...['--import', new URL('support/jest/register.js', import.meta.url).href],
    'node_modules/jest/bin/jest.js',
    '--json',
    `--outputFile=${results}`,
    '--silent=false',
    ...process.argv.slice(2),
  ];
  return new Promise((done, refuse) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      stdio: ['ignore', 'ignore', 'inherit'],
      env: {
        ...process.env,
        ...{ NODE_NO_WARNINGS: '1', DATABASE_URL: '', REDIS_URL: '', DECKROUND_TEST_FOLDER: folder },
        ...env,
      },
    });
    child.on('error', refuse);
    child.on('exit', () => {
      try {
        const result = JSON.parse(readFileSync(results, 'utf8'));
        passed += result.numPassedTests;
        failed += result.numFailedTests + result.numRuntimeErrorTestSuites;
        if (result.numPassedTests === 0) throw new Error('No test ran.');
        done();
      } catch (error) {
        refuse(error);
      }
    });
  });
}
