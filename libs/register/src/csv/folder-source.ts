import { createReadStream, existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { RegisterSource } from './read-register.js';

/** A register in a folder of this machine. */
export function folderSource(folder: string): RegisterSource {
  return {
    open: (file) => {
      const path = join(folder, file);
      if (!existsSync(path)) return null;
      const kind = statSync(path);
      // Reading a folder of that name says so; devices and pipes might never end.
      return kind.isFile() || kind.isDirectory() ? createReadStream(path) : null;
    },
  };
}
