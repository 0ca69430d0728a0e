import { existsSync, statSync } from 'node:fs';
import {
  DEFAULT_SHOP,
  describeFault,
  folderSource,
  isTimeZone,
  type Register,
  readRegister,
  type ShopSettings,
} from '@deckround/register';
import { CliError } from './cli-error.js';

export interface ReadFolder {
  readonly register: Register;
  readonly counts: Readonly<Record<string, number>>;
}

/** @throws CliError listing every fault, with file, line, column and what to do */
export async function readFolder(folder: string, shop: Partial<ShopSettings> = {}): Promise<ReadFolder> {
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new CliError(`${folder} is not a folder: name the folder that holds the CSV files.`);
  if (shop.timeZone !== undefined && !isTimeZone(shop.timeZone))
    throw new CliError(`"${shop.timeZone}" is not a time zone: write it like America/Chicago.`);
  const { register, faults, faultCount, counts } = await readRegister(folderSource(folder), {
    ...DEFAULT_SHOP,
    ...shop,
  });
  if (register) return { register, counts };
  const more = faultCount > faults.length ? [`… and ${faultCount - faults.length} more`] : [];
  throw new CliError(
    [
      `The register in ${folder} has ${faultCount} ${faultCount === 1 ? 'fault' : 'faults'}. Nothing was changed.`,
      ...faults.map((fault) => `  ${describeFault(fault)}`),
      ...more,
    ].join('\n'),
  );
}
