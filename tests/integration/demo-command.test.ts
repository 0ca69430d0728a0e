import { execFile } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from '@jest/globals';

const PROGRAM = fileURLToPath(new URL('../../apps/cli/dist/main.js', import.meta.url));

it('the demo says that its port is taken before it makes anything', async () => {
  const other = createServer();
  await new Promise<void>((done) => other.listen(0, '127.0.0.1', done));
  const { port } = other.address() as { port: number };
  const folder = mkdtempSync(join(tmpdir(), 'deckround-demo-'));
  chmodSync(folder, 0o711); // the database server may run as another user
  const { NODE_OPTIONS: _options, ...rest } = process.env;
  const env = { ...rest, PORT: String(port), HOST: '127.0.0.1', DECKROUND_DATA: folder };
  const { code, said } = await new Promise<{ code: number; said: string }>((done) => {
    execFile(process.execPath, [PROGRAM, 'demo', '--exit'], { env, timeout: 60_000 }, (error, out, err) =>
      done({ code: Number(error?.code ?? 0), said: out + err }),
    );
  });
  other.close();
  const made = readdirSync(join(folder, 'demo'));
  rmSync(folder, { recursive: true });
  expect(said).toBe(`Port ${port} on 127.0.0.1 is taken: stop what listens there, or set PORT to another number.\n`);
  expect(code).toBe(1);
  expect(made).toEqual([]);
});
