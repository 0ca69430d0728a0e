import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Validator } from '@seriousme/openapi-schema-validator';
import { freshDatabase, type TestDatabase } from '../support/database.js';
import { runningApi } from '../support/running-api.js';

const SPECTRAL = fileURLToPath(new URL('../../node_modules/@stoplight/spectral-cli/dist/index.js', import.meta.url));
const RULES = fileURLToPath(new URL('../support/openapi-rules.yaml', import.meta.url));

let database: TestDatabase;
let api: Awaited<ReturnType<typeof runningApi>>;
// biome-ignore lint/suspicious/noExplicitAny: a document of any shape
let document: any;

beforeAll(async () => {
  database = await freshDatabase();
  api = await runningApi(database);
  document = (await api.client.get('/openapi.json')).body;
});
afterAll(async () => {
  await api.service.stop();
  await database.drop();
});

describe('the OpenAPI document', () => {
  it('is valid OpenAPI 3.1', async () => {
    const validator = new Validator();
    const result = await validator.validate(document);
    expect(result.errors ?? []).toEqual([]);
    expect(result.valid).toBe(true);
    expect(validator.version).toBe('3.1');
  });

  it('refers only to shapes that it holds', () => {
    const wanted = new Set(
      [...JSON.stringify(document).matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map((match) => match[1]!),
    );
    expect([...wanted].filter((name) => !(name in document.components.schemas))).toEqual([]);
    expect(wanted.size).toBeGreaterThan(30);
    const empty = Object.entries<object>(document.components.schemas).filter(
      ([name, schema]) => '$ref' in schema && schema.$ref === `#/components/schemas/${name}`,
    );
    expect(empty).toEqual([]);
  });

  it('asks for a sign-in everywhere but at the doors, and tells how each operation can fail', () => {
    const open: string[] = [];
    for (const [path, operations] of Object.entries<Record<string, { security?: object[]; responses: object }>>(
      document.paths,
    )) {
      for (const [method, operation] of Object.entries(operations)) {
        if (!operation.security?.length) open.push(`${method} ${path}`);
        else expect(Object.keys(operation.responses)).toEqual(expect.arrayContaining(['401', '403', '429', '500']));
      }
    }
    expect(open.sort()).toEqual([
      'get /health',
      'get /ready',
      'get /v1/calendars/{file}',
      'get /v1/labels/{id}',
      'post /v1/labels/{id}/readings',
      'post /v1/session',
    ]);
  });

  it('gives every operation a name of its own', () => {
    const names = Object.values<Record<string, { operationId: string }>>(document.paths).flatMap((operations) =>
      Object.values(operations).map((each) => each.operationId),
    );
    expect(new Set(names).size).toBe(names.length);
  });

  it('keeps the rules of Spectral and of its OWASP set', () => {
    const folder = mkdtempSync(join(tmpdir(), 'deckround-openapi-'));
    const file = join(folder, 'openapi.json');
    writeFileSync(file, JSON.stringify(document));
    const { stdout, stderr } = spawnSync(
      process.execPath,
      [SPECTRAL, 'lint', '--ruleset', RULES, '--format', 'json', '--quiet', '--fail-severity', 'error', file],
      { encoding: 'utf8', maxBuffer: 2 ** 28 },
    );
    rmSync(folder, { recursive: true });
    expect(stderr).toBe('');
    const found = JSON.parse(stdout) as { code: string; severity: number; path: string[] }[];
    const errors = found.filter((each) => each.severity === 0).map((each) => `${each.code} ${each.path.join('/')}`);
    expect(errors).toEqual([]);
    // The rules were at work: they always warn of the open doors.
    expect(found.some((each) => each.code === 'owasp:api2:2023-read-restricted')).toBe(true);
  });

  it('can be read by a person, without a script', async () => {
    const page = await api.client.get('/docs');
    expect(page.body).toContain('/v1/plan-runs/{id}/progress');
    expect(page.body).not.toMatch(/<script/i);
  });
});
