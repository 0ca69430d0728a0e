import { readFileSync } from 'node:fs';
import type { z } from 'zod';
import { CliError } from './cli-error.js';

/** @throws CliError when the file is not such a document, with the first faults */
export function readDocument<T>(path: string, schema: z.ZodType<T>, what: string): T {
  let json: unknown;
  try {
    json = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT')
      throw new CliError(`${path} is not there: name the file that holds ${what}.`);
    throw new CliError(`${path} cannot be read as ${what}: ${(error as Error).message}`);
  }
  const parsed = schema.safeParse(json);
  if (parsed.success) return parsed.data;
  const faults = parsed.error.issues.slice(0, 10).map((issue) => `  ${issue.path.join('.')}: ${issue.message}`);
  throw new CliError(`${path} is not ${what}:\n${faults.join('\n')}`);
}
