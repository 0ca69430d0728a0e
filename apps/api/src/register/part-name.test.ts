import { expect, test } from '@jest/globals';
import { partName } from './part-name.js';

test('a designation is said once', () => {
  expect(partName({ description: 'deck drive belt, wrapped B section', designation: 'B' })).toBe(
    'deck drive belt, wrapped B section',
  );
  expect(partName({ description: 'deep groove ball bearing', designation: '6205-2Z' })).toBe(
    'deep groove ball bearing 6205-2Z',
  );
  expect(partName({ description: 'blade set', designation: null })).toBe('blade set');
});
