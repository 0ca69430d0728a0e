import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { transform, transformSync } from '@swc/core';

/** TypeScript with decorators as NestJS wants them; lines may move, so stacks want the map. */
const OPTIONS = {
  configFile: false,
  swcrc: false,
  jsc: {
    target: 'es2022',
    parser: { syntax: 'typescript', decorators: true },
    transform: { legacyDecorator: true, decoratorMetadata: true },
  },
  module: { type: 'es6' },
};

/** @returns the JavaScript of a TypeScript file */
export async function compile(path) {
  return (await transform(await readFile(path, 'utf8'), { ...OPTIONS, filename: path })).code;
}

/** @returns the JavaScript of a TypeScript file and its source map */
export function compileSync(path) {
  return transformSync(readFileSync(path, 'utf8'), { ...OPTIONS, filename: path, sourceMaps: true });
}
