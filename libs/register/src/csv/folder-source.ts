import { createReadStream, existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { RegisterSource } from './read-register.js';

/** A register in a folder of this machine. */
export function folderSource(folder: string): RegisterSource {
  return {
    open: (file) => {
      const path = join(folder, file);
      return existsSync(path) && statSync(path).isFile() ? createReadStream(path) : null;
    },
  };
}
