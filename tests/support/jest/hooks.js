// Node's loader for tests: the rooms' sources in place of their built files, TypeScript compiled on the way.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compile } from './compile.js';

const ROOT = new URL('../../../', import.meta.url);
const GLOBALS = new URL('./globals.js', import.meta.url).href;

export async function resolve(specifier, context, next) {
  if (specifier === '@jest/globals') return own(GLOBALS);
  const source = roomSource(specifier) ?? besideSource(specifier, context.parentURL ?? '');
  return source === null ? next(specifier, context) : own(source);
}

export async function load(url, context, next) {
  if (!/\.tsx?$/.test(url)) return next(url, context);
  return { format: 'module', source: compile(fileURLToPath(url)).code, shortCircuit: true };
}

const own = (url) => ({ url, format: 'module', shortCircuit: true });

/** `@deckround/planning` is that room's `src/index.ts`, `@deckround/catalogue/spanish` its `src/spanish/index.ts`. */
function roomSource(specifier) {
  const [, room, part] = /^@deckround\/([^/]+)(\/[^/]+)?$/.exec(specifier) ?? [];
  if (!room) return null;
  return firstFile([`libs/${room}/src${part ?? ''}/index.ts`, `apps/${room}/src${part ?? ''}/index.ts`], ROOT);
}

/** Sources name each other as the files that they become. */
function besideSource(specifier, parent) {
  if (!specifier.startsWith('.') || !specifier.endsWith('.js') || !/\.tsx?$/.test(parent)) return null;
  return firstFile([specifier.replace(/js$/, 'ts'), specifier.replace(/js$/, 'tsx')], parent);
}

function firstFile(paths, base) {
  for (const path of paths) {
    const url = new URL(path, base);
    if (existsSync(fileURLToPath(url))) return url.href;
  }
  return null;
}
