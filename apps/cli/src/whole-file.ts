import { randomBytes } from 'node:crypto';
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { CliError } from './cli-error.js';

/** Writes a file whole or not at all: beside its place first, then moved onto it. */
export function writeWholeFile(path: string, chunks: Iterable<string>): void {
  const target = resolve(path);
  const draft = `${target}.${randomBytes(4).toString('hex')}.tmp`;
  try {
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(draft, '');
    for (const chunk of chunks) writeFileSync(draft, chunk, { flag: 'a' });
    renameSync(draft, target);
  } catch (error) {
    rmSync(draft, { force: true });
    throw new CliError(`${path} cannot be written: ${(error as Error).message}`, 1);
  }
}
