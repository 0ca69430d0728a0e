import type { Store } from '@deckround/store';
import { CliError } from './cli-error.js';

/** The shop of that name; without a name the only one there is; made when there is none yet. */
export async function findShop(
  store: Store,
  name: string | undefined,
  timeZone: string,
): Promise<{ id: string; name: string }> {
  return store.asOwner(async (tx) => {
    const shops = await tx.shop.findMany({ select: { id: true, name: true }, orderBy: { name: 'asc' } });
    const found =
      name === undefined ? (shops.length === 1 ? shops[0] : undefined) : shops.find((shop) => shop.name === name);
    if (found) return found;
    if (name === undefined && shops.length > 1) {
      throw new CliError(
        `There are several shops: say which with --shop (${shops.map((shop) => `"${shop.name}"`).join(', ')}).`,
      );
    }
    return tx.shop.create({ data: { name: name ?? 'Our shop', timeZone }, select: { id: true, name: true } });
  });
}
