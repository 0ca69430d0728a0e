import type { ComponentLife } from './component-life.js';

/** A life on the axis of a chart: the part's hours when it failed, or up to which it has not. */
export interface LifeMark {
  readonly ageHours: number;
  readonly failed: boolean;
}

/** Places on the axis that can be told apart. Own choice: a chart is drawn some 400 to 800 pixels wide. */
const PLACES = 400;

/** A mark for every life, by age; those that would be drawn upon one another are one mark. */
export function lifeMarks(lives: readonly Pick<ComponentLife, 'ageHours' | 'reason'>[]): LifeMark[] {
  const longest = lives.reduce((most, each) => Math.max(most, each.ageHours), 0);
  const marks = new Map<string, LifeMark>();
  for (const { ageHours, reason } of lives) {
    const failed = reason === 'failed';
    const place = longest === 0 ? 0 : Math.round((ageHours / longest) * PLACES);
    const key = `${place} ${failed}`;
    if (!marks.has(key)) marks.set(key, { ageHours, failed });
  }
  return [...marks.values()].sort((a, b) => a.ageHours - b.ageHours);
}
