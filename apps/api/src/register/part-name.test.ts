import { expect, test } from '@jest/globals';
import { partName } from './part-name.js';

test('a designation is said once', () => {
  expect(partName({ description: 'deck drive belt, wrapped B section', designation: 'B' })).toBe(
    'deck drive belt, wrapped B section',
  );
  expect(partName({ description: 'deep groove ball bearing', designation: '6205-2Z' })).toBe(
    'deep groove ball bearing 6205-2Z',
  );
  expect(partName({ description: 'hydraulic hose, 3/8 in, two wire', designation: '3/8 in' })).toBe(
    'hydraulic hose, 3/8 in, two wire',
  );
  expect(partName({ description: 'hydraulic hose, 3/8 in', designation: '8 in' })).toBe('hydraulic hose, 3/8 in 8 in');
  expect(partName({ description: 'blade set', designation: null })).toBe('blade set');
});
