import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { hashPassword } from '@deckround/api';
import { folderSource, type Register, readRegister } from '@deckround/register';
import { importRegister } from '@deckround/register-store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { type ApiClient, until } from '../support/api-client.js';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';
import { PASSWORD, smallRegister } from '../support/small-shop.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const shared = process.env.DECKROUND_SHARED || fileURLToPath(new URL('../../../shared', import.meta.url));
const FLEET_A = join(shared, 'bench', 'fleet-a');
const isThere = existsSync(join(FLEET_A, 'service_history.csv'));
if (!isThere)
  console.info(`fleet-a is not at ${FLEET_A}: skipped. Set DECKROUND_SHARED to the folder that holds bench/.`);

const BEARINGS = 'replace-spindle-bearings';
const CLOCK = { now: () => new Date('2026-06-08T15:00:00Z') };

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;

beforeAll(async () => {
  database = await freshDatabase();
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

/** The small shop with a year of bearing failures: shielded ones at about 150 h, plain ones at about 75 h. */
function shopWithFailures(): Register {
  const register = smallRegister();
  const plain = { ...register.parts[0]!, id: 'BRG-6205-PLAIN', code: 'BRG-6205-PLAIN', designation: '6205-RS' };
  const completions = register.machines.flatMap((machine, index) =>
    Array.from({ length: machine.spindles }, (_, spindle) => {
      const part = (index + spindle) % 2 === 0 ? 'BRG-6205-2Z' : 'BRG-6205-PLAIN';
      const failures = [];
      const perWeek = 6 + index;
      for (let hours = 10, n = 0; ; n++) {
        hours += (part === 'BRG-6205-2Z' ? 150 : 75) * (0.8 + (0.4 * ((n * 7 + index * 3 + spindle * 5) % 10)) / 10);
        const week = Math.floor(hours / perWeek);
        if (week >= 51) return failures;
        failures.push({
          machineId: machine.id,
          code: BEARINGS,
          slot: `spindle ${spindle + 1}`,
          doneOn: new Date(Date.UTC(2025, 5, 9) + week * 7 * 86_400_000).toISOString().slice(0, 10),
          meterHours: Math.round((200 + hours) * 10) / 10,
          outcome: 'failed' as const,
          part,
        });
      }
    }).flat(),
  );
  return { ...register, parts: [...register.parts, plain], completions: [...register.completions, ...completions] };
}

async function openShop(name: string, register: Register): Promise<string> {
  const shop = await database.store.asOwner((tx) =>
    tx.shop.create({ data: { name, timeZone: register.shop.timeZone } }),
  );
  const passwordHash = await hashPassword(PASSWORD);
  await database.store.inShop(shop.id, async (tx) => {
    await importRegister(tx, shop.id, register);
    for (const role of ['manager', 'technician', 'supervisor'])
      await tx.person.create({
        data: { shopId: shop.id, name: role, email: `${role}@${name}.example`, role, passwordHash },
      });
  });
  return shop.id;
}

describe('a shop whose bearings fail long before their interval', () => {
  let shopId: string;
  let manager: ApiClient;
  // biome-ignore lint/suspicious/noExplicitAny: a proposal as it came
  let proposal: any;

  beforeAll(async () => {
    shopId = await openShop('failing', shopWithFailures());
    api = await runningApi(database, undefined, CLOCK);
    manager = await api.signIn('manager', 'failing');
  });

  it('sees its component lives, a page at a time', async () => {
    const first = (await manager.get(`/v1/reliability/lives?itemCode=${BEARINGS}&limit=40`)).body;
    expect(first.items).toHaveLength(40);
    const second = (await manager.get(`/v1/reliability/lives?itemCode=${BEARINGS}&limit=500&cursor=${first.next}`))
      .body;
    const all = [...first.items, ...second.items];
    expect(second.next).toBeNull();
    const perSlot = all.filter((each) => each.reason === null);
    expect(perSlot).toHaveLength(17); // five machines with three spindles, one with two
    expect(all.filter((each) => !each.fittingKnown).every((each) => each.part === null && each.entryHours >= 200)).toBe(
      true,
    );
    expect(all.some((each) => each.reason === 'failed' && each.fittingKnown && each.part !== null)).toBe(true);
  });

  it('learns how long they last, with interval and assumptions', async () => {
    const { status, body } = await manager.get(`/v1/reliability/life-fit?itemCode=${BEARINGS}&knownFittingOnly=true`);
    expect(status).toBe(200);
    expect(body.basis).toBe('own');
    expect(body.shape.low).toBeGreaterThan(1);
    expect(body.scaleHours.low).toBeGreaterThan(60);
    expect(body.scaleHours.high).toBeLessThan(180);
    expect(body.points.length).toBeGreaterThan(10);
    expect(body.assumptions.length).toBeGreaterThan(0);
    expect(body.marks.filter((mark: { failed: boolean }) => mark.failed).length).toBeGreaterThanOrEqual(
      new Set(body.points.map((point: { ageHours: number }) => Math.round(point.ageHours / 10))).size,
    );
  });

  it('says which grade lasts, and refuses to compare one with itself', async () => {
    const path = `/v1/reliability/grade-comparison?itemCode=${BEARINGS}`;
    const { body } = await manager.get(`${path}&first=BRG-6205-2Z&second=BRG-6205-PLAIN`);
    expect(body.verdict).toBe('first-lasts-longer');
    expect(body.marks.map((marks: object[]) => marks.length > 0)).toEqual([true, true]);
    const known = (await manager.get(`/v1/reliability/parts-on-record?itemCode=${BEARINGS}`)).body.parts;
    expect(new Set(known)).toEqual(new Set(['BRG-6205-2Z', 'BRG-6205-PLAIN']));
    expect(body.interval.low).toBeLessThan(2);
    expect(body.interval.high).toBeGreaterThan(1.9);
    expect((await manager.get(`${path}&first=BRG-6205-2Z&second=BRG-6205-2Z`)).status).toBe(422);
    expect((await manager.get(`${path}&first=BRG-6205-2Z&second=BRG-NONE`)).status).toBe(422);
  });

  it('hears when replacing beats waiting', async () => {
    const { body } = await manager.get(`/v1/reliability/replacement-age?itemCode=${BEARINGS}&machineClass=zero-turn`);
    expect(body.currentHours).toBe(1000);
    expect(body.bestHours).toBeLessThan(150);
    expect(body.lowHours).toBeLessThanOrEqual(body.bestHours);
    expect(body.currentExcessCentsPerThousandHours).toBeGreaterThan(0);
    expect(body.centsPerThousandHours).toBeLessThan(body.runToFailureCentsPerThousandHours);
    const block = `/v1/reliability/block-replacement?itemCode=${BEARINGS}&machineClass=zero-turn&plannedCents=9000`;
    const beat = (await manager.get(`${block}&minimalRepairCents=4500`)).body;
    // β = shape, cost per hour (β/(β − 1)) · planned / interval: Barlow & Hunter 1960.
    const { value: shape } = (await manager.get(`/v1/reliability/life-fit?itemCode=${BEARINGS}&machineClass=zero-turn`))
      .body.shape;
    expect(beat.centsPerThousandHours).toBeCloseTo(((shape / (shape - 1)) * 9_000_000) / beat.bestHours, 1);
    expect(Math.min(...beat.curve.map((each: { centsPerThousandHours: number }) => each.centsPerThousandHours))).toBe(
      beat.centsPerThousandHours,
    );
    expect(beat.repairsBetween).toBeGreaterThan(0);
    expect((await manager.get(block)).status).toBe(422);
    const risk = (await manager.get(`/v1/reliability/stopgap-risk?itemCode=${BEARINGS}&hoursAhead=25`)).body;
    expect(risk.low).toBeLessThanOrEqual(risk.chance);
    expect(risk.chance).toBeLessThanOrEqual(risk.high);
    expect(risk.sentence).toMatch(/Chance of failing within 25 h/);
  });

  it('is re-fitted each month by itself, and proposes with evidence', async () => {
    const list = await until(
      async () => (await manager.get('/v1/reliability/interval-proposals?state=proposed')).body.items,
      (items) => items.length > 0,
    );
    proposal = list.find((each: { machineClass: string }) => each.machineClass === 'zero-turn');
    expect(proposal).toMatchObject({ itemCode: BEARINGS, state: 'proposed', currentHours: '1000' });
    expect(Number(proposal.proposedHours)).toBeLessThan(150);
    expect(proposal.evidence.failures).toBeGreaterThan(20);
    expect(proposal.sentence).toMatch(/would cost \d+ % less/);
    const runs = await database.store.inShop(shopId, (tx) => tx.lifeRun.findMany());
    expect(runs).toHaveLength(1);
    expect(runs[0]).toMatchObject({ status: 'done', askedBy: null });
  });

  it('lets a manager accept a proposal and take it back, both dated', async () => {
    const path = `/v1/reliability/interval-proposals/${proposal.id}`;
    const interval = async () =>
      (await manager.get(`/v1/service-items/${proposal.serviceItemId}`)).body.rule?.hours ??
      (
        await database.store.inShop(shopId, (tx) =>
          tx.serviceItem.findUniqueOrThrow({ where: { id: proposal.serviceItemId } }),
        )
      ).intervalHours;
    const technician = await api.signIn('technician', 'failing');
    expect((await technician.post(`${path}/accept`, {}, { 'if-match': '"1"' })).status).toBe(403);
    expect((await manager.post(`${path}/accept`, {})).status).toBe(428);
    const accepted = await manager.post(`${path}/accept`, { note: 'agreed in May' }, { 'if-match': '"1"' });
    expect(accepted.status).toBe(200);
    expect(accepted.body).toMatchObject({
      state: 'accepted',
      decidedAt: '2026-06-08T15:00:00.000Z',
      decisionNote: 'agreed in May',
    });
    expect(Number(await interval())).toBe(Number(proposal.proposedHours));
    expect((await manager.post(`${path}/refuse`, {}, { 'if-match': '"2"' })).status).toBe(409);
    const reversed = await manager.post(`${path}/reverse`, {}, { 'if-match': '"2"' });
    expect(reversed.body).toMatchObject({ state: 'reversed', reversedAt: '2026-06-08T15:00:00.000Z' });
    expect(Number(await interval())).toBe(1000);
    // What a person has taken back is not proposed again.
    const run = await manager.post('/v1/reliability/refits', {});
    expect(run.status).toBe(201);
    await until(
      async () => (await manager.get(`/v1/reliability/refits/${run.body.id}`)).body.status,
      (status) => status === 'done',
    );
    const open = (await manager.get('/v1/reliability/interval-proposals?state=proposed')).body.items;
    expect(open.filter((each: { serviceItemId: string }) => each.serviceItemId === proposal.serviceItemId)).toEqual([]);
  });

  it('feeds the learned hazard into what waiting costs, and says so', async () => {
    const asked = await manager.post('/v1/forecast-runs', {});
    expect(asked.status).toBe(201);
    await until(
      async () => (await manager.get(`/v1/forecast-runs/${asked.body.id}`)).body.status,
      (status) => status === 'done',
    );
    const due = (await manager.get(`/v1/due?code=${BEARINGS}&limit=1`)).body.items[0];
    expect(due.why.hazard).toMatch(
      /^Failure hazard with shape [\d.]+: (From \d+ failures of its own|Only \d+ failures)/,
    );
    const other = (await manager.get('/v1/due?code=sharpen-blades&limit=1')).body.items[0];
    expect(other.why.hazard).toMatch(/as set in the catalogue/);
  });

  it('counts a shared cause once', async () => {
    const before = (await manager.get(`/v1/reliability/life-fit?itemCode=${BEARINGS}`)).body.failures;
    const completions = (await manager.get('/v1/completions?limit=500')).body.items.filter(
      (each: { itemCode: string; outcome: string }) => each.itemCode === BEARINGS && each.outcome === 'failed',
    );
    const machineId = completions[0].machineId;
    const [first, second] = completions.filter(
      (each: { machineId: string; slot: string }) => each.machineId === machineId,
    );
    const cause = { machineId, happenedOn: first.doneOn, rootCause: 'fence wire around two spindles' };
    const stranger = completions.find((each: { machineId: string }) => each.machineId !== machineId);
    const refused = await manager.post('/v1/failure-causes', { ...cause, completionIds: [stranger.id] });
    expect(refused.status).toBe(422);
    const recorded = await manager.post('/v1/failure-causes', { ...cause, completionIds: [first.id, second.id] });
    expect(recorded.status).toBe(201);
    const after = (await manager.get(`/v1/reliability/life-fit?itemCode=${BEARINGS}`)).body;
    expect(after.failures).toBe(before - 1);
    expect(after.assumptions.join(' ')).toMatch(/1 failure shares its cause with another/);
  });

  it('knows its dearest machines, their trend, and whether one is past repairing', async () => {
    const list = (await manager.get('/v1/reliability/machines')).body.items;
    expect(list).toHaveLength(6);
    const rates = list.map((each: { centsPerHour: number }) => each.centsPerHour);
    expect(rates).toEqual([...rates].sort((a, b) => b - a));
    const machine = (await manager.get(`/v1/machines/${list[0].machineId}`)).body;
    const site = (await manager.get(`/v1/sites/${machine.siteId}`)).body;
    expect(list[0]).toMatchObject({ machineCode: machine.code, siteName: site.name });
    const asked = '?newPriceCents=100000&newLifeHours=2000';
    const { body } = await manager.get(`/v1/reliability/machines/${list[0].machineId}${asked}`);
    expect(body.repairs.length).toBe(body.repairCount);
    expect(body.advice.keepLowCentsPerHour).toBeLessThan(body.advice.keepHighCentsPerHour);
    expect((await manager.get(`/v1/reliability/machines/${list[0].machineId}`)).body.advice).toBeNull();
    const curve = (await manager.get('/v1/reliability/mean-cumulative?of=cents')).body;
    expect(curve.points.at(-1).mean).toBeGreaterThan(0);
    expect(curve.machines).toBe(6);
  });

  it('calculates bearing life, and records blade tips that run too fast without blocking anything', async () => {
    const life = (await manager.get('/v1/reliability/bearing-life?designation=6205-2Z')).body;
    expect(life).toMatchObject({ boreMm: 25, outerMm: 52, widthMm: 15, seal: 'two shields', spindleRpm: 3000 });
    expect(life.bothL10Hours).toBeLessThan(Math.min(life.upper.l10Hours, life.lower.l10Hours));
    expect(life.bothAdjustedLowHours).toBeLessThan(life.bothAdjustedHighHours);
    expect((await manager.get('/v1/reliability/bearing-life?designation=9999')).status).toBe(422);
    const { machineId } = (await manager.get('/v1/reliability/machines')).body.items[0];
    const check = await manager.post('/v1/reliability/speed-checks', {
      machineId,
      bladeInches: 25,
      engineRpm: 3200,
    });
    expect(check.status).toBe(201);
    expect(check.body).toMatchObject({ isOver: true, feetPerMinute: 20944, limitFeetPerMinute: 19000 });
    expect(check.body.warning).toMatch(/20,944 ft\/min, above the limit of 19,000/);
    expect((await manager.get(`/v1/reliability/speed-checks?machineId=${machineId}`)).body.items).toEqual([check.body]);
  });

  it('tells how often to look, by the delay-time model', async () => {
    const asked = 'defectsPerThousandHours=4&meanDelayHours=150&failureCents=900&foundCents=180&inspectionCents=40';
    const { body } = await manager.get(`/v1/reliability/inspection-interval?${asked}`);
    expect(body.bestHours).toBeCloseTo(76.176853, 4);
    expect(body.centsPerThousandHours).toBeCloseTo(1866.84, 2);
    const never = await manager.get(
      '/v1/reliability/inspection-interval?defectsPerThousandHours=4&meanDelayHours=150&failureCents=100&foundCents=100&inspectionCents=40',
    );
    expect(never.body.bestHours).toBeNull();
  });

  it('shows none of it to a grounds supervisor', async () => {
    const supervisor = await api.signIn('supervisor', 'failing');
    for (const path of [
      'lives',
      'life-fit',
      'grade-comparison?first=A&second=B',
      'replacement-age?machineClass=zero-turn',
      'block-replacement?machineClass=zero-turn&minimalRepairCents=1',
      'machines',
      'mean-cumulative',
      'interval-proposals',
      'bearing-life?designation=6205',
      'speed-checks',
    ])
      expect([path, (await supervisor.get(`/v1/reliability/${path}`)).status]).toEqual([path, 403]);
  });
});

(isThere ? describe : describe.skip)('do double-shielded bearings outlast the single-sealed ones on fleet-a?', () => {
  it('is answered alike from the command line and, after import, from the API', async () => {
    const { register, faultCount } = await readRegister(folderSource(FLEET_A));
    expect(faultCount).toBe(0);
    await openShop('fleet-a', register!);
    const work = mkdtempSync(join(tmpdir(), 'deckround-lives-'));
    const [json, svg] = [join(work, 'answer.json'), join(work, 'answer.svg')];
    const stdout = await new Promise<string>((done, failed) => {
      const { NODE_OPTIONS: _options, ...env } = process.env;
      const args = [
        'lives',
        '--register',
        FLEET_A,
        '--compare',
        'BRG-6205-2Z,BRG-6205-PLAIN',
        '--json',
        json,
        '--svg',
        svg,
      ];
      execFile(process.execPath, [join(ROOT, 'apps/cli/dist/main.js'), ...args], { env }, (error, out, err) =>
        error ? failed(new Error(err)) : done(out),
      );
    });
    const answer = JSON.parse(readFileSync(json, 'utf8')).comparison;
    expect(stdout).toContain(answer.sentence);
    expect(stdout).toContain('BRG-6205-2Z (deep groove ball bearing, two metal shields)');
    expect(readFileSync(svg, 'utf8')).toMatch(/^<svg [\s\S]*<polyline[\s\S]*<\/svg>\n$/);
    expect(answer.verdict).toBe('first-lasts-longer');
    expect(answer.interval.low).toBeGreaterThan(1);
    expect(answer.failures[0] + answer.failures[1]).toBeGreaterThan(20);
    const manager = await api.signIn('manager', 'fleet-a');
    const { status, body } = await manager.get(
      `/v1/reliability/grade-comparison?itemCode=${BEARINGS}&first=BRG-6205-2Z&second=BRG-6205-PLAIN`,
    );
    expect(status).toBe(200);
    expect(body.sentence).toBe(answer.sentence);
    expect(body.lives).toEqual(answer.lives);
    expect(body.failures).toEqual(answer.failures);
    expect(Math.abs(body.ratio / answer.ratio - 1)).toBeLessThan(1e-9);
    expect(body.points[1]).toHaveLength(answer.points[1].length);
    rmSync(work, { recursive: true, force: true });
  });
});
