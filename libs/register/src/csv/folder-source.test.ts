import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from '@jest/globals';
import { aRegisterFolder } from '../test-support/a-register-folder.js';
import { describeFault } from './fault.js';
import { folderSource } from './folder-source.js';
import { readRegister } from './read-register.js';

describe('folderSource', () => {
  let folder: string;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'register-'));
    for (const [file, content] of Object.entries(aRegisterFolder())) writeFileSync(join(folder, file), content);
  });

  afterEach(() => rmSync(folder, { recursive: true }));

  it('reads a folder of files', async () => {
    const { register, faults } = await readRegister(folderSource(folder));
    expect(faults).toEqual([]);
    expect(register!.readings).toHaveLength(1);
  });

  it('says so when a folder stands where a file should be', async () => {
    rmSync(join(folder, 'readings.csv'));
    mkdirSync(join(folder, 'readings.csv'));
    const { faults } = await readRegister(folderSource(folder));
    expect(faults.map(describeFault)).toEqual([
      'readings.csv: is a folder: put the CSV file of this name in its place',
    ]);
  });

  it('opens nothing where there is nothing', () => {
    expect(folderSource(folder).open('blackouts.csv')).toBeNull();
    expect(folderSource(join(folder, 'none')).open('sites.csv')).toBeNull();
  });
});
