import { execFile } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createDatabase, migrate, startEmbeddedPostgres } from '@deckround/store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { CliError } from '../../apps/cli/src/cli-error.js';
import { readFolder } from '../../apps/cli/src/read-folder.js';
import { aRegisterFolder, lines } from '../../libs/register/src/test-support/a-register-folder.js';
import { freshDatabase } from '../support/database.js';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** Milliseconds that a step may take on a machine that is busy with other things. */
const BUSY = 180_000;
const COMMAND = join(ROOT, 'apps/cli/dist/main.js');

interface Outcome {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

let work: string;

beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), 'deckround-import-'));
  chmodSync(work, 0o711); // the embedded server may run as another user
});

afterAll(() => rmSync(work, { recursive: true, force: true }));

/** `deckround import …`, as built. */
function runImport(args: readonly string[], settings: Readonly<Record<string, string>>): Promise<Outcome> {
  const { DATABASE_URL: _url, REDIS_URL: _redis, NODE_OPTIONS: _options, ...env } = process.env;
  return new Promise((done) => {
    execFile(
      process.execPath,
      [COMMAND, 'import', ...args],
      { cwd: ROOT, env: { ...env, LOG_LEVEL: 'info', ...settings }, maxBuffer: 16 * 1024 * 1024 },
      (error, stdout, stderr) => done({ code: error ? Number(error.code) : 0, stdout, stderr }),
    );
  });
}

/** A folder with these files; a value of 'folder' makes a folder of that name. */
function writeFolder(name: string, files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = join(work, name.replaceAll(/[^a-z0-9]+/gi, '-'));
  mkdirSync(folder);
  for (const [file, content] of Object.entries(files)) {
    if (content === 'folder') mkdirSync(join(folder, file));
    else writeFileSync(join(folder, file), content);
  }
  return folder;
}

/** The smallest register with one text in one of its files replaced. */
function changed(file: string, from: string, to: string): Record<string, string> {
  const content = aRegisterFolder()[file] as string;
  if (!content.includes(from)) throw new Error(`${file} of the smallest register does not hold "${from}"`);
  return { [file]: content.replace(from, to) };
}

function bytes(...parts: (string | number[])[]): Uint8Array {
  return Uint8Array.from(
    parts.flatMap((part) => (typeof part === 'string' ? [...new TextEncoder().encode(part)] : part)),
  );
}

const CUSTOMERS = 'customer_id,name,billing_email,terms_days,tax_exempt';
const READINGS = 'machine_id,read_at,hours,source';
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d, 0x49, 0x48, 0x44, 0x52];

/** What is wrong, the files that make it so, and what the message has to say: where, and what to do. */
const MALFORMED: [what: string, changes: Record<string, string | Uint8Array | null>, said: string[]][] = [
  [
    'a file is missing',
    { 'machines.csv': null },
    ['machines.csv: is missing: put it into the folder, with the first line machine_id,site_id,class'],
  ],
  [
    'a file is empty',
    { 'sites.csv': '' },
    ['sites.csv: is empty: its first line must be site_id,customer_id,name,latitude,longitude'],
  ],
  [
    'a header lacks a column and has one too many',
    changed('readings.csv', 'hours', 'hour_meter'),
    [
      `readings.csv, line 1, column hours: the header lacks it; the first line must be ${READINGS}`,
      'readings.csv, line 1, column hour_meter: is not known',
      'rename or remove it',
    ],
  ],
  [
    'a header names a column twice',
    { 'customers.csv': lines(`${CUSTOMERS},name`, 'C1,Dapple Parks,,30,no,Dapple') },
    ['customers.csv, line 1, column name: stands twice in the header: remove one'],
  ],
  [
    'a number is not one',
    changed('readings.csv', '350.2', 'about 350'),
    ['readings.csv, line 2, column hours: "about 350" is not a number: write it like 412.6'],
  ],
  [
    'a number has a thousands comma',
    changed('readings.csv', '350.2', '"1,350.2"'),
    ['readings.csv, line 2, column hours: "1,350.2" is not a number', 'no thousands mark'],
  ],
  [
    'hours are negative',
    changed('readings.csv', '350.2', '-350.2'),
    ['readings.csv, line 2, column hours: -350.2 h is outside 0 to 999999: correct it'],
  ],
  [
    'a site is unknown',
    changed('machines.csv', 'M1,S1', 'M1,S7'),
    ['machines.csv, line 2, column site_id: "S7" is not in sites.csv: add the site or correct it'],
  ],
  [
    'a customer is unknown',
    changed('sites.csv', 'S1,C1', 'S1,C7'),
    ['sites.csv, line 2, column customer_id: "C7" is not in customers.csv: add the customer or correct it'],
  ],
  [
    'a machine is unknown',
    changed('readings.csv', 'M1', 'M7'),
    ['readings.csv, line 2, column machine_id: "M7" is not in machines.csv: add the machine or correct it'],
  ],
  [
    'a machine class is unknown',
    changed('machines.csv', 'zero-turn', 'hovercraft'),
    ['machines.csv, line 2, column class: "hovercraft" is not a machine class: use one of zero-turn, stand-on'],
  ],
  [
    'a service item is unknown',
    changed('service_history.csv', 'sharpen-blades', 'polish-chrome'),
    ['service_history.csv, line 2, column item: "polish-chrome" is not a service item of zero-turn: use one of'],
  ],
  [
    'a part is unknown',
    changed('service_history.csv', 'done,', 'done,BLT-7'),
    ['service_history.csv, line 2, column part: "BLT-7" is not in parts.csv: add the part or leave it empty'],
  ],
  [
    'a window is impossible',
    changed('sites.csv', '07:00-15:30', '15:30-07:00'),
    [
      'sites.csv, line 2, column access: "Mon-Fri 15:30-07:00" ends before it begins; write it like Mon-Fri 07:00-15:30',
    ],
  ],
  [
    'windows overlap',
    changed('technicians.csv', '07:00-16:00', '07:00-16:00; Fri 15:00-18:00'),
    ['technicians.csv, line 2, column shifts: two windows overlap on Fri; write it like'],
  ],
  [
    'a latitude is 412',
    changed('sites.csv', '41.6', '412'),
    ['sites.csv, line 2, column latitude: 412 degrees is outside -90 to 90: correct it'],
  ],
  [
    'a day does not exist',
    changed('machines.csv', '2012-04-01', '2014-02-30'),
    ['machines.csv, line 2, column in_service_on: "2014-02-30" is not a date: write it like 2014-06-16'],
  ],
  [
    'a reading lies in the year 214',
    changed('readings.csv', '2013-06-03', '0214-06-03'),
    ['readings.csv, line 2, column read_at: "0214-06-03T07:45:00" is outside 1950 to 2100: correct the year'],
  ],
  [
    'a line is 10 MB long',
    { 'readings.csv': lines(READINGS, 'M1,2013-06-03T07:45:00,350.2,technician', 'x'.repeat(10 * 1024 * 1024)) },
    ['readings.csv, line 3: is longer than 65536 characters: look for a quote that is never closed'],
  ],
  [
    'a quote is never closed',
    changed('sites.csv', 'gate at the rear', '"gate at the rear'),
    ['sites.csv, line 2: a quoted cell is never closed: add the missing quote'],
  ],
  [
    'a row lacks cells',
    changed('customers.csv', ',,30,no', ',no'),
    ['customers.csv, line 2: has 3 cells where the header has 5: look for a missing comma or quote'],
  ],
  [
    'a file is a picture',
    { 'parts.csv': bytes(PNG) },
    ['parts.csv, line 3: is not a text file (it holds NUL bytes): save it as CSV, encoded in UTF-8'],
  ],
  [
    'a name is written in Latin-1',
    { 'customers.csv': bytes(`${CUSTOMERS}\nC1,Gr`, [0xfc], 'ne Parks,,30,no\n') },
    ['customers.csv, line 2: is not UTF-8: save the file again as CSV with encoding UTF-8'],
  ],
  [
    'an identifier is given twice',
    { 'customers.csv': lines(CUSTOMERS, 'C1,Dapple Parks,,30,no', 'C1,Sorrel Facilities,,15,no') },
    ['customers.csv, line 3, column customer_id: "C1" stands already in line 2: remove or renumber one of them'],
  ],
  [
    'a blackout ends before it begins',
    { 'blackouts.csv': lines('site_id,from,to,reason', 'S1,2014-06-20,2014-06-18,ceremony') },
    ['blackouts.csv, line 2, column to: 2014-06-18 lies before 2014-06-20: the first day comes first'],
  ],
  [
    'a folder stands where a file should be',
    { 'readings.csv': 'folder' },
    ['readings.csv: is a folder: put the CSV file of this name in its place'],
  ],
  [
    'several things are wrong at once',
    { ...changed('sites.csv', '41.6', '412'), ...changed('parts.csv', '61.00', '$61'), 'technicians.csv': null },
    [
      'has 3 faults',
      'sites.csv, line 2, column latitude',
      'parts.csv, line 2, column unit_price: "$61" is not an amount: write it like 14.50',
      'technicians.csv: is missing',
    ],
  ],
];

describe('a malformed register is refused, said clearly, and leaves nothing behind:', () => {
  const dataOf = (what: string) => join(work, `data of ${what}`);
  /** What the command says of it; starting the command anew for each takes most of a minute. */
  const saidOf = async (folder: string): Promise<string> => {
    const refused: unknown = await readFolder(folder).catch((error: unknown) => error);
    if (!(refused instanceof CliError)) throw new Error(`${folder} is not refused: ${refused}`);
    expect(refused.exitCode).toBe(2);
    return refused.message;
  };

  it.each(MALFORMED)('%s', async (what, changes, wanted) => {
    const said = await saidOf(writeFolder(what, aRegisterFolder(changes)));
    for (const each of wanted) expect(said).toContain(each);
    expect(said).toContain('Nothing was changed.');
    expectPlainWords(said);
    // One line for the folder, one for each fault: nothing else is drawn into it.
    const faults = Number(/has (\d+) faults?\./.exec(said)![1]);
    expect(said.split('\n')).toHaveLength(1 + faults);
  });

  it.each([MALFORMED[0]!, MALFORMED.at(-1)!])('by the command itself: %s', async (what, changes) => {
    const folder = writeFolder(`command ${what}`, aRegisterFolder(changes));
    const { code, stdout, stderr } = await runImport([folder], { DECKROUND_DATA: dataOf(what) });
    expect({ code, stdout, stderr }).toEqual({ code: 2, stdout: '', stderr: `${await saidOf(folder)}\n` });
    expect(existsSync(dataOf(what))).toBe(false);
  });

  it.each([
    ['the folder does not exist', 'none'],
    ['the folder is a file', 'file'],
  ])('%s', async (what, name) => {
    writeFileSync(join(work, 'file'), '');
    const { code, stderr } = await runImport([join(work, name)], { DECKROUND_DATA: dataOf(what) });
    expect(code).toBe(2);
    expect(stderr).toContain(`${join(work, name)} is not a folder: name the folder that holds the CSV files.`);
    expectPlainWords(stderr);
    expect(existsSync(dataOf(what))).toBe(false);
  });

  it('yet one with CRLF line ends and byte order marks is sound', async () => {
    const { code, stdout, stderr } = await runImport([writeFolder('crlf', withCrlfAndMarks()), '--check'], {
      DECKROUND_DATA: dataOf('crlf'),
    });
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('No fault found. Nothing was changed, as asked.');
    expect(existsSync(dataOf('crlf'))).toBe(false);
  });
});

describe('an import into a database', () => {
  let end: () => Promise<void>;
  let client: pg.Client;
  let settings: Record<string, string>;

  beforeAll(async () => {
    const { url, drop } = await database();
    end = drop;
    client = new pg.Client({ connectionString: url });
    await client.connect();
    settings = { DATABASE_URL: url, DECKROUND_DATA: join(work, 'unused') };
  });

  afterAll(async () => {
    await client?.end();
    await end?.();
  });

  /** Of the server that `npm test` has started, else of one of its own. */
  async function database(): Promise<{ url: string; drop(): Promise<void> }> {
    if (process.env.DECKROUND_TEST_POSTGRES) return freshDatabase();
    const server = await startEmbeddedPostgres(join(work, 'data'), { durable: false });
    const url = server.urlOf('malformed_registers');
    await createDatabase(server.urlOf('postgres'), 'malformed_registers');
    await migrate(url);
    return { url, drop: () => server.stop() };
  }

  /** Rows and a digest of their content, table by table. */
  async function state(): Promise<Record<string, string>> {
    const { rows } = await client.query<{ name: string }>(
      "select table_name as name from information_schema.tables where table_schema = 'public' and table_type = 'BASE TABLE'",
    );
    const tables: Record<string, string> = {};
    for (const { name } of rows) {
      // Weekly hours and skills are replaced by those of the folder: equal rows may have new ids.
      const isReplaced = ['site_access_window', 'technician_shift', 'technician_skill'].includes(name);
      const row = isReplaced ? "to_jsonb(each) - 'id'" : 'to_jsonb(each)';
      const { rows: found } = await client.query<{ state: string }>(
        `select count(*) || ' rows, ' || coalesce(md5(string_agg(md5((${row})::text), '' order by md5((${row})::text))), '') as state
         from ${client.escapeIdentifier(name)} each`,
      );
      tables[name] = found[0]!.state;
    }
    return tables;
  }

  it(
    'adds what is new, changes nothing when repeated, and nothing when the folder is faulty',
    async () => {
      const good = writeFolder(
        'good',
        aRegisterFolder({ 'blackouts.csv': lines('site_id,from,to,reason', 'S1,2014-06-18,2014-06-19,ceremony') }),
      );
      const empty = await state();
      const first = await runImport([good], settings);
      expect(first.stderr).toBe('');
      expect(first.stdout).toContain('machines: 1 added, 0 changed');
      const before = await state();
      for (const table of ['customer', 'site', 'site_blackout', 'machine', 'meter_change', 'reading', 'completion'])
        expect([table, before[table]!.split(' ')[0], empty[table]!.split(' ')[0]]).toEqual([table, '1', '0']);

      const again = await runImport([good], settings);
      expect(again.code).toBe(0);
      expect(again.stdout).toContain('Everything was there already: nothing changed.');
      expect(await state()).toEqual(before);

      const faulty = writeFolder(
        'faulty',
        aRegisterFolder({
          ...changed('customers.csv', 'Dapple Parks', 'Another name'),
          'readings.csv': lines(
            READINGS,
            'M1,2013-06-10T07:45:00,360.2,technician',
            'M1,2013-06-11T07:45:00,many,manager',
          ),
        }),
      );
      const refused = await runImport([faulty], settings);
      expect(refused.code).toBe(2);
      expect(refused.stderr).toContain('readings.csv, line 3, column hours');
      expect(await state()).toEqual(before);
    },
    BUSY,
  );

  it(
    'changes what differs in a later folder, and says so',
    async () => {
      const before = await state();
      const later = writeFolder(
        'later',
        aRegisterFolder({
          ...changed('customers.csv', 'Dapple Parks', 'Dapple Parks & Gardens'),
          'readings.csv': lines(READINGS, 'M1,2013-06-10T07:45:00,360.2,technician'),
        }),
      );
      const { code, stdout } = await runImport([later], settings);
      expect(code).toBe(0);
      expect(stdout).toContain('customers: 0 added, 1 changed');
      expect(stdout).toContain('readings: 1 added, 0 changed');
      const after = await state();
      expect(Object.keys(after).filter((table) => after[table] !== before[table])).toEqual(
        expect.arrayContaining(['customer', 'reading']),
      );
      expect(after['machine']).toBe(before['machine']);
    },
    BUSY,
  );

  const shared = resolve(ROOT, process.env.DECKROUND_SHARED ?? '../shared', 'bench/fleet-a');
  const isThere = existsSync(shared);
  if (!isThere)
    process.stderr.write(`Skipped: no ${shared}. Set DECKROUND_SHARED to the folder that holds bench/fleet-a.\n`);

  (isThere ? it : it.skip)(
    'takes fleet A in and sets aside what is corrupted',
    async () => {
      const { code, stdout, stderr } = await runImport([shared, '--shop', 'Fleet A'], settings);
      expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
      for (const count of [/^sites +48$/m, /^machines +359$/m, /^readings +24,440$/m]) expect(stdout).toMatch(count);
      expect(stdout).toContain('sites: 48 added, 0 changed');

      const { rows } = await client.query<{ key: string; is_set_aside: boolean }>(
        `select machine.code || ',' || to_char(reading.read_at at time zone site.time_zone, 'YYYY-MM-DD"T"HH24:MI:SS') as key,
         reading.status = 'set-aside' as is_set_aside
       from reading join machine on machine.id = reading.machine_id join site on site.id = machine.site_id
         join shop on shop.id = reading.shop_id where shop.name = 'Fleet A'`,
      );
      const errors = readFileSync(join(shared, 'errors.csv'), 'utf8')
        .trim()
        .split(/\r?\n/)
        .slice(1)
        .map((line) => line.split(',') as [string, string, string])
        .map(([machine, readAt, kind]) => ({ key: `${machine},${readAt}`, kind }));
      const setAside = new Set(rows.filter((row) => row.is_set_aside).map((row) => row.key));
      const corrupted = errors.filter(({ kind }) => ['slipped decimal', 'digit swap', 'backwards'].includes(kind));
      expect(corrupted.length).toBeGreaterThan(100);
      const found = corrupted.filter(({ key }) => setAside.has(key)).length / corrupted.length;
      expect(found).toBeGreaterThanOrEqual(0.85);

      const doubtful = new Set(errors.map(({ key }) => key));
      const good = rows.filter((row) => !doubtful.has(row.key));
      const wronged = good.filter((row) => row.is_set_aside).length / good.length;
      expect(wronged).toBeLessThanOrEqual(0.003);
    },
    BUSY,
  );
});

/** No stack, no error class, no leftover of a template. */
function expectPlainWords(said: string): void {
  expect(said).not.toMatch(/^\s+at /m);
  expect(said).not.toMatch(/Error:|node:internal|undefined|\[object/);
}

function withCrlfAndMarks(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(aRegisterFolder()).map(([file, content]) => [
      file,
      `\ufeff${(content as string).replaceAll('\n', '\r\n')}`,
    ]),
  );
}
