import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type EmbeddedPostgres, Store, startEmbeddedPostgres } from '@deckround/store';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'deckround-embedded-'));
  chmodSync(folder, 0o711);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function answers(server: EmbeddedPostgres): Promise<boolean> {
  const store = Store.open(server.urlOf('postgres'), 1);
  try {
    return await store.isReady();
  } finally {
    await store.close();
  }
}

describe('the database in a folder', () => {
  it('stays up for the service when a command beside it ends', async () => {
    const service = await startEmbeddedPostgres(folder, { durable: false });
    const command = await startEmbeddedPostgres(folder);
    expect(command.urlOf('postgres')).toBe(service.urlOf('postgres'));
    await command.stop();
    expect(await answers(service)).toBe(true);
    await service.stop();
    expect(await answers(service)).toBe(false);
  });

  it('is taken over, and stopped at the end, when its service was killed', async () => {
    const killed = await startEmbeddedPostgres(folder, { durable: false });
    writeFileSync(join(folder, 'postgres.owner'), '2147483646');
    const next = await startEmbeddedPostgres(folder);
    expect(next.urlOf('postgres')).toBe(killed.urlOf('postgres'));
    await next.stop();
    expect(await answers(next)).toBe(false);
  });
});
