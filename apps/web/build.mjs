// Builds the screens into dist/site when something they are made of is newer; compresses what is worth it.
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

const home = dirname(fileURLToPath(import.meta.url));
const site = join(home, 'dist/site');
const index = join(site, 'index.html');
const SOURCES = [
  ...['src', 'public', 'index.html', 'vite.config.js', 'county-outlines.js', 'package.json', 'build.mjs'],
  '../../libs/catalogue/src/spanish',
  '../../libs/upkeep/src/chance-overdue.ts',
  '../../libs/billing/src/charged-time.ts',
];
const COMPRESSED = new Set(['.js', '.css', '.html', '.svg', '.json', '.webmanifest']);

if (!existsSync(index) || newest(SOURCES.map((name) => join(home, name))) > statSync(index).mtimeMs) {
  const { build } = await import('vite');
  process.env.NODE_ENV = 'production';
  await build({ configFile: join(home, 'vite.config.js'), logLevel: 'warn' });
  for (const path of filesUnder(site)) {
    if (!COMPRESSED.has(extname(path))) continue;
    const bytes = readFileSync(path);
    writeFileSync(`${path}.br`, brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
    writeFileSync(`${path}.gz`, gzipSync(bytes, { level: 9 }));
  }
}

function newest(paths) {
  return Math.max(
    ...paths.flatMap((path) => (existsSync(path) ? filesUnder(path) : [])).map((path) => statSync(path).mtimeMs),
  );
}

function filesUnder(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).flatMap((name) => filesUnder(join(path, name)));
}
