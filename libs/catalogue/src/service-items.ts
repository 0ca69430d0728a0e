import type { CatalogueItem } from './catalogue-item.js';
import { MACHINE_ITEMS } from './machine-items.js';
import { SPINDLE_ITEMS } from './spindle-items.js';

/** What a shop starts with; from then on its own, edited copy counts. */
export const SERVICE_ITEMS: readonly CatalogueItem[] = [...SPINDLE_ITEMS, ...MACHINE_ITEMS];

export function itemsOfClass(classCode: string): readonly CatalogueItem[] {
  return SERVICE_ITEMS.filter((item) => item.classes === 'all' || item.classes.includes(classCode));
}
