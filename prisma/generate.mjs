// Generates the Prisma client when the schema is newer than it. `prisma generate` only checks that a schema engine
// exists and never runs it, so any executable stands in where none can be downloaded.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));
const schema = path('./schema.prisma');
const client = path('../libs/store/src/generated/client.ts');

if (!existsSync(client) || statSync(client).mtimeMs < statSync(schema).mtimeMs) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path('../node_modules/prisma/build/index.js'), 'generate', '--schema', schema],
    {
      cwd: path('..'),
      encoding: 'utf8',
      env: {
        PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
        PRISMA_HIDE_UPDATE_MESSAGE: '1',
        CHECKPOINT_DISABLE: '1',
        ...process.env,
      },
    },
  );
  if (status !== 0) {
    process.stderr.write(`The database client could not be generated.\n${stdout}${stderr}\n`);
    process.exit(1);
  }
}
