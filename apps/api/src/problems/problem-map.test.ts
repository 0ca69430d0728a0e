import { readFileSync } from 'node:fs';
import { describe, expect, it } from '@jest/globals';
import { PROBLEMS, problemType } from './problem-map.js';

const README = readFileSync(new URL('./README.md', import.meta.url), 'utf8');

describe('problems', () => {
  it.each(Object.entries(PROBLEMS))('%s stands in the README with its status, cause and remedy', (code, { status }) => {
    const rows = README.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
    const cells = rows.find((row) => row[1] === `\`${code}\``) ?? [];
    expect(cells[2]).toBe(String(status));
    for (const cell of [cells[3], cells[4], cells[5]]) expect((cell ?? '').length).toBeGreaterThan(3);
  });

  it('have a stable type', () => {
    expect(problemType('not-found')).toBe('urn:deckround:problem:not-found');
  });
});
