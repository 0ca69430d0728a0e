/**
 * How smooth a visit is dragged over a crowded week, and how much script the first look at the demo's week costs. The
 * crowded week is planned by the product itself; the drag goes over its strips with the mouse, and frames are counted from
 * the timestamps of requestAnimationFrame. A profile, where one is wanted, is for the developer tools of Chromium.
 */
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashPassword, startService } from '@deckround/api';
import { createDemo, DEMO_TODAY, DEMO_WEEK } from '@deckround/demo';
import { createLogger, parseConfig } from '@deckround/platform';
import { openDatabase } from '@deckround/store';
import { chromium } from 'playwright-core';
import { benchOptions } from './bench-options.mjs';
import { createCrowdedShop, EVE, SIGN_IN, WEEK } from './screens/crowded-shop.mjs';

const {
  technicians,
  seconds,
  plan: planSeconds,
  profile,
} = benchOptions(
  `bench:screens [-- --technicians 20 --seconds 6 --plan 30 --profile FILE]
--plan: seconds that the product plans the crowded week for. --profile writes what the processor did meanwhile.`,
  { technicians: 20, seconds: 6, plan: 30, profile: undefined },
);
const VISITS = 'button[aria-keyshortcuts="M"]';
/** The map, its worker and the county lines come after the week is shown. */
const OF_THE_MAP = /\/(map-|maplibre|counties)/;

const folder = mkdtempSync(join(tmpdir(), 'deckround-screens-'));
chmodSync(folder, 0o711); // the database server may run as another user
const database = await openDatabase({ folder });
const config = parseConfig({ PORT: '0', LOG_LEVEL: 'silent', RATE_SESSION_PER_MINUTE: '0', DECKROUND_DATA: folder });
const service = await startService(config, { database, logger: createLogger('silent', 'bench') });
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--enable-unsafe-swiftshader', '--disable-background-networking'],
});
try {
  const demo = await createDemo(service.store, { hashPassword, demoOf: null, now: new Date() });
  const { email, password } = demo.signIns.find((each) => each.role === 'manager');
  await plan(await signIn(email, password), DEMO_TODAY, DEMO_WEEK, 5);
  report({ firstLoadOf: 'the demo’s week', ...(await firstLoad(email, password)) });

  await createCrowdedShop(service.store, technicians);
  const token = await signIn(SIGN_IN.email, SIGN_IN.password);
  await plan(token, EVE, WEEK, planSeconds);
  report(await drag());
} finally {
  await browser.close();
  await service.stop();
  await database.stop();
  rmSync(folder, { recursive: true, force: true });
}

function report(figures) {
  process.stdout.write(`${JSON.stringify(figures)}\n`);
}

async function signIn(email, password) {
  const { token } = await call('POST', '/v1/session', { email, password });
  return token;
}

async function call(method, path, body, token) {
  const response = await fetch(service.address + path, {
    method,
    headers: {
      'content-type': 'application/json',
      'idempotency-key': crypto.randomUUID(),
      ...(token && { authorization: `Bearer ${token}` }),
    },
    ...(body && { body: JSON.stringify(body) }),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${await response.text()}`);
  return response.json();
}

async function plan(token, asOf, weekOf, seconds) {
  const asked = [
    ['forecast-runs', { asOf, costFrom: weekOf, costDays: 14 }],
    ['plan-runs', { weekOf, seconds }],
  ];
  for (const [path, body] of asked) {
    let run = await call('POST', `/v1/${path}`, body, token);
    while (run.status === 'asked' || run.status === 'running') {
      await new Promise((done) => setTimeout(done, 500));
      run = await call('GET', `/v1/${path}/${run.id}`, undefined, token);
    }
    if (run.status !== 'done') throw new Error(`${path}: ${run.status} ${run.error}`);
  }
}

/** A window of its own, signed in. */
async function atDesk(email, password) {
  const context = await browser.newContext({ baseURL: service.address, viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  const sent = [];
  page.on('response', (response) => sent.push(response));
  await page.goto('/');
  await page.getByLabel('E-mail address').fill(email);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(/\/week/);
  return { context, page, sent };
}

/** Script from the sign-in page until the week stands there, bytes as sent. */
async function firstLoad(email, password) {
  const { context, page, sent } = await atDesk(email, password);
  await page.goto(`/week?of=${DEMO_WEEK}`);
  await page.locator(VISITS).first().waitFor();
  const scripts = sent.filter((response) => /\.js$/.test(new URL(response.url()).pathname));
  const bytes = new Map();
  for (const response of scripts) {
    const path = new URL(response.url()).pathname;
    if (OF_THE_MAP.test(path) || bytes.has(path)) continue;
    if (response.headers()['content-encoding'] !== 'br') throw new Error(`${path} is not sent compressed.`);
    bytes.set(path, Number(response.headers()['content-length']));
  }
  await context.close();
  return { scripts: bytes.size, kilobytes: Math.round([...bytes.values()].reduce((a, b) => a + b, 0) / 1000) };
}

async function drag() {
  const { page } = await atDesk(SIGN_IN.email, SIGN_IN.password);
  await page.goto(`/week?of=${WEEK}`);
  const visits = page.locator(VISITS);
  await visits.first().waitFor();
  await page.waitForTimeout(4000); // the map is read and drawn meanwhile
  const strips = await page.locator('[data-technician]').count();
  const from = await visits.first().boundingBox();
  const session = await page.context().newCDPSession(page);
  if (profile) {
    await session.send('Profiler.enable');
    await session.send('Profiler.start');
  }
  await page.mouse.move(from.x + 6, from.y + 10);
  await page.mouse.down();
  const lifted = performance.now();
  await page.mouse.move(from.x + 40, from.y + 30, { steps: 3 });
  await page
    .getByText('It stands here')
    .or(page.getByText(/Costs|Saves|cannot go here/))
    .first()
    .waitFor();
  const pricedMs = Math.round(performance.now() - lifted);
  await page.evaluate(`
    globalThis.frames_ = [];
    const count = (at) => { frames_.push(at); globalThis.counting = requestAnimationFrame(count); };
    requestAnimationFrame(count);
  `);
  const until = performance.now() + 1000 * seconds;
  const moves = [];
  while (performance.now() < until) {
    // To and fro over the strips in sight, as a hand does that looks for a place; no move waits for the one before.
    const way = moves.length / 60;
    moves.push(page.mouse.move(700 + 400 * Math.sin(1.3 * way), 500 + 330 * Math.sin(1.9 * way + 1)));
    await new Promise((done) => setTimeout(done, 1000 / 60));
  }
  await Promise.all(moves);
  const frames = await page.evaluate('cancelAnimationFrame(counting), frames_');
  if (profile) writeFileSync(profile, JSON.stringify((await session.send('Profiler.stop')).profile));
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return {
    dragOver: `${technicians} technicians`,
    ...{ strips, visits: await visits.count(), pricedMs, moves: moves.length, ...framesPerSecond(frames) },
  };
}

/** Median over the whole seconds of the drag, and the worst of them. */
function framesPerSecond(frames) {
  const perSecond = [];
  for (let at = frames[0]; at + 1000 <= frames.at(-1); at += 1000)
    perSecond.push(frames.filter((each) => each >= at && each < at + 1000).length);
  const gaps = frames.slice(1).map((each, index) => each - frames[index]);
  const sorted = perSecond.toSorted((a, b) => a - b);
  return {
    framesPerSecond: sorted[sorted.length >> 1],
    worstSecond: sorted[0],
    longestFrameMs: Math.round(Math.max(...gaps)),
  };
}
