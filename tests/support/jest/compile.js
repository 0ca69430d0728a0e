import { readFileSync } from 'node:fs';
import { transformSync } from '@swc/core';

/**
 * TypeScript with decorators as NestJS wants them; lines may move, so stacks want the map.
 *
 * @returns the JavaScript of a TypeScript file (`code`) and its source map (`map`)
 */
export function compile(path) {
  return transformSync(readFileSync(path, 'utf8'), {
    ...{ filename: path, configFile: false, swcrc: false, sourceMaps: true },
    jsc: {
      target: 'es2022',
      parser: { syntax: 'typescript', decorators: true },
      transform: { legacyDecorator: true, decoratorMetadata: true },
    },
    module: { type: 'es6' },
  });
}
