import { describe, expect, it } from '@jest/globals';
import { CLASSES, itemsOfClass, PARTS, SERVICE_ITEMS } from './index.js';

describe('starter catalogue', () => {
  it('names only what exists', () => {
    const codes = new Set(SERVICE_ITEMS.map((item) => item.code));
    const classes = new Set(CLASSES.map((each) => each.code));
    const parts = new Set(PARTS.map((part) => part.code));
    for (const item of SERVICE_ITEMS) {
      if (item.classes !== 'all') for (const name of item.classes) expect(classes).toContain(name);
      for (const name of item.resetBy) expect(codes).toContain(name);
      for (const part of item.parts) expect(parts).toContain(part.code);
      for (const each of CLASSES) {
        const states = new Set(each.preparations.map((state) => state.code));
        for (const name of item.preparations) expect(states).toContain(name);
      }
    }
    expect(codes.size).toBe(SERVICE_ITEMS.length);
  });

  it('makes preparations a forest whose parents come first', () => {
    for (const each of CLASSES) {
      const seen = new Set<string>();
      for (const state of each.preparations) {
        if (state.parent) expect(seen).toContain(state.parent);
        seen.add(state.code);
      }
    }
  });

  it('gives every value its source and every blade job its cautions', () => {
    for (const item of SERVICE_ITEMS) {
      for (const source of Object.values(item.sources)) expect(source.length).toBeGreaterThan(5);
      if (item.preparations.includes('blades-off')) {
        expect(item.cautions.join(' ')).toMatch(/spark plug lead off/);
        expect(item.cautions.join(' ')).toMatch(/never work under a deck held only by a jack/);
      }
    }
  });

  it('covers every class with the usual work', () => {
    const usual = [
      'sharpen-blades',
      'grease-spindles',
      'replace-spindle-bearings',
      'inspect-belts',
      'change-engine-oil',
      'test-interlock',
    ];
    for (const each of CLASSES) {
      const codes = itemsOfClass(each.code).map((item) => item.code);
      for (const code of usual) expect(codes).toContain(code);
    }
    expect(itemsOfClass('walk-behind').map((item) => item.code)).not.toContain('change-hydraulic-oil');
  });
});
