import { stored } from './stored.js';
import type { Shop } from './types.js';

/** The shop as this device last heard of it. */
export const keptShop = stored<Shop>('deckround.shop');
