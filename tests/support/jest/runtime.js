import { createHash } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { compile } from './compile.js';

const require = createRequire(import.meta.url);

/** What Jest asks of a file's runtime, answered by Node's own modules. */
export default class PlainRuntime {
  /** Each file has a test framework of its own, with its own list of tests and listeners. */
  requireInternalModule(path) {
    delete require.cache[path];
    delete globalThis[Symbol.for('EVENT_HANDLERS')];
    return require(path);
  }

  requireModule = require;

  unstable_shouldLoadAsEsm() {
    return true;
  }

  async unstable_importModule(path) {
    await import(pathToFileURL(path).href);
  }

  /** `globals.js` hands them on: what files share is loaded once, and must find those of the file that runs. */
  setGlobalsForRuntime(globals) {
    globalThis[Symbol.for('deckround.test-globals')] = globals;
  }

  /** A map is made when the first stack names its file. */
  getSourceMaps() {
    return { get: sourceMapOf, [Symbol.iterator]: () => [][Symbol.iterator]() };
  }

  getAllCoverageInfoCopy() {
    return null;
  }

  enterTestCode() {}
  leaveTestCode() {}
  teardown() {}
}

const maps = new Map();
let folder = null;

/** @returns the file with the source map of a file that the loader compiled; undefined for any other */
function sourceMapOf(source) {
  if (!/^file:.*\.tsx?$/.test(source)) return undefined;
  if (!maps.has(source)) {
    if (folder === null) {
      // Jest may kill a worker at the end: what the run clears away goes into its folder.
      folder = mkdtempSync(join(process.env.DECKROUND_TEST_FOLDER ?? tmpdir(), 'deckround-maps-'));
    }
    const path = join(folder, `${createHash('sha256').update(source).digest('hex')}.map`);
    writeFileSync(path, compile(fileURLToPath(source)).map);
    maps.set(source, path);
  }
  return maps.get(source);
}
