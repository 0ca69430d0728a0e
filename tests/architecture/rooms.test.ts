import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from '@jest/globals';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Which rooms each room may lean on: always downwards. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'libs/contracts': [],
  'libs/billing': [],
  'libs/calendar': [],
  'libs/telematics': [],
  'libs/client': [],
  'libs/usage': [],
  'libs/reliability': [],
  'libs/upkeep': ['usage'],
  'libs/routing': [],
  'libs/partition': ['routing'],
  'libs/planning': ['routing', 'upkeep'],
  'libs/catalogue': ['upkeep'],
  'libs/register': ['catalogue', 'planning', 'upkeep', 'usage'],
  'libs/learning': ['register', 'reliability', 'usage'],
  'libs/platform': [],
  'libs/store': ['platform'],
  'libs/jobs': ['platform'],
  'libs/register-store': [
    'calendar',
    'catalogue',
    'learning',
    'platform',
    'register',
    'store',
    'upkeep',
    'usage',
    'telematics',
  ],
  'libs/demo': ['catalogue', 'register', 'register-store', 'store'],
  'apps/worker': [
    'calendar',
    'catalogue',
    'telematics',
    'contracts',
    'platform',
    'store',
    'jobs',
    'learning',
    'register',
    'reliability',
    'register-store',
    'partition',
    'planning',
    'upkeep',
    'usage',
    'routing',
  ],
  'apps/api': [
    'contracts',
    'billing',
    'calendar',
    'telematics',
    'platform',
    'store',
    'jobs',
    'learning',
    'register',
    'reliability',
    'register-store',
    'demo',
    'catalogue',
    'planning',
    'routing',
    'upkeep',
    'usage',
    'routing',
    'worker',
  ],
  // Types of the wire, the Spanish of what a shop starts with, and small reckonings that the API shares: nothing else is shipped.
  'apps/web': ['contracts', 'catalogue/spanish', 'upkeep/chance-overdue', 'billing/charged-time'],
  'apps/cli': [
    'platform',
    'store',
    'jobs',
    'learning',
    'register',
    'reliability',
    'register-store',
    'demo',
    'catalogue',
    'planning',
    'upkeep',
    'usage',
    'api',
    'worker',
  ],
};

/** Rooms that know no framework, no database, no queue, no clock, no files, and what else they may import. */
const PURE: Readonly<Record<string, readonly string[]>> = {
  'libs/contracts': ['zod'],
  'libs/billing': ['decimal.js', 'fast-xml-parser'],
  'libs/calendar': ['ical-generator'],
  'libs/telematics': ['sax', 'stream-chain/defs.js', 'stream-json/core/parser.js'],
  'libs/client': ['openapi-fetch'],
  'libs/usage': ['zod'],
  'libs/reliability': [],
  'libs/upkeep': ['zod'],
  'libs/routing': ['geographiclib-geodesic'],
  'libs/planning': ['zod', 'luxon'],
  'libs/catalogue': [],
  'libs/learning': [],
};

const FORBIDDEN_IN_PURE = [
  /\bprocess\./,
  /\bDate\.now\(/,
  /\bMath\.random\(/,
  /\bfetch\(/,
  /\bnew Date\(\)/,
  /\bperformance\.now\(/,
  /\bconsole\./,
];

function sourcesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === 'generated' || entry.name === 'test-support' ? [] : sourcesOf(path);
    return /\.tsx?$/.test(entry.name) && !/\.test\.tsx?$/.test(entry.name) ? [path] : [];
  });
}

function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(/(?:from|import)\s+'([^']+)'|import\('([^']+)'\)/g)].map((match) => match[1] ?? match[2]!);
}

const rooms = ['libs', 'apps'].flatMap((floor) =>
  readdirSync(join(ROOT, floor))
    .filter((name) => existsSync(join(ROOT, floor, name, 'package.json')))
    .map((name) => `${floor}/${name}`),
);

describe('the house', () => {
  it('has a rule for every room, and no rule for a room that is gone', () => {
    expect([...rooms].sort()).toEqual(Object.keys(MAY_IMPORT).sort());
  });

  it.each(Object.keys(MAY_IMPORT))('%s leans only on rooms below it', (room) => {
    const allowed = MAY_IMPORT[room]!.map((name) => `@deckround/${name}`);
    const wrong = sourcesOf(join(ROOT, room, 'src')).flatMap((file) =>
      importsOf(file)
        .filter((name) => name.startsWith('@deckround/') && !allowed.includes(name))
        .map((name) => `${file.slice(ROOT.length)} imports ${name}`),
    );
    expect(wrong).toEqual([]);
  });

  it.each(Object.keys(PURE))('%s is pure', (room) => {
    const allowed = PURE[room]!;
    const wrong = sourcesOf(join(ROOT, room, 'src')).flatMap((file) => {
      const outside = importsOf(file).filter(
        (name) => !name.startsWith('.') && !name.startsWith('@deckround/') && !allowed.includes(name),
      );
      const code = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
      const impure = FORBIDDEN_IN_PURE.filter((pattern) => pattern.test(code));
      return [
        ...outside.map((name) => `${file.slice(ROOT.length)} imports ${name}`),
        ...impure.map((pattern) => `${file.slice(ROOT.length)} uses ${pattern}`),
      ];
    });
    expect(wrong).toEqual([]);
  });

  it('reads the environment in one place only', () => {
    const wrong = rooms
      .flatMap((room) => sourcesOf(join(ROOT, room, 'src')))
      .filter(
        (file) =>
          /process\.env/.test(readFileSync(file, 'utf8')) &&
          !/parseConfig\(|LOG_LEVEL === 'debug'/.test(readFileSync(file, 'utf8')),
      );
    expect(wrong).toEqual([]);
  });
});
