import type { IntervalRule } from '@deckround/upkeep';

/** Shared preparation of a machine: needed by several items, done once per machine and visit. */
export interface CataloguePreparation {
  readonly code: string;
  readonly name: string;
  readonly minutes: number;
  readonly parent: string | null;
  readonly cautions: readonly string[];
  readonly source: string;
}

export interface CatalogueClass {
  readonly code: string;
  readonly name: string;
  readonly defaultSpindles: number;
  readonly preparations: readonly CataloguePreparation[];
}

export interface CataloguePart {
  readonly code: string;
  readonly description: string;
  /** Standard designation (ISO 15 bearing, belt section, thread …), where one exists. */
  readonly designation: string | null;
  readonly unit: string;
  readonly unitPriceCents: number;
  readonly unitCostCents: number;
  readonly leadDays: number;
}

export interface CatalogueTorque {
  readonly what: string;
  /** Foot-pounds, low and high; null = only the machine's manual can say. */
  readonly ftLb: readonly [low: number, high: number] | null;
  readonly note: string;
}

/** One kind of work on the machines of some classes, as a shop starts with it and then edits it. */
export interface CatalogueItem {
  readonly code: string;
  readonly title: string;
  /** Machine class codes, or every class. */
  readonly classes: 'all' | readonly string[];
  /** spindle: one item for each spindle's slot, e.g. `spindle 1`. */
  readonly scope: 'machine' | 'spindle';
  readonly rule: IntervalRule;
  readonly minutes: number;
  readonly minutesPerSpindle: number;
  readonly skill: 'mechanical' | 'hydraulic' | 'electrical';
  readonly preparations: readonly string[];
  readonly resetBy: readonly string[];
  readonly parts: readonly { readonly code: string; readonly quantity: number; readonly perSpindle: boolean }[];
  readonly consumables: readonly {
    readonly name: string;
    readonly quantity: number;
    readonly unit: string;
    readonly perSpindle: boolean;
  }[];
  readonly steps: readonly string[];
  readonly torques: readonly CatalogueTorque[];
  readonly cautions: readonly string[];
  readonly failureCents: number;
  readonly hazardShape: number;
  /** Where each value comes from: a publication, or `common practice, no source`. */
  readonly sources: {
    readonly interval: string;
    readonly minutes: string;
    readonly steps: string;
    readonly economics: string;
  };
}
