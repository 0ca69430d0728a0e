import { readFileSync } from 'node:fs';
import { lineNet, shareOut, withTotals } from '@deckround/billing';
import { describe, expect, it } from '@jest/globals';

const vectors = JSON.parse(readFileSync(new URL('../fixtures/charge-vectors.json', import.meta.url), 'utf8'));

// 100 vectors of money, computed apart from this program with Python's decimal (ROUND_HALF_UP) and fractions.
describe('charge vectors', () => {
  it('number a hundred', () => {
    expect(vectors.lines.length + vectors.taxes.length + vectors.shares.length).toBe(100);
  });

  it.each(vectors.lines as [string, string, string, string][])(
    'line: %s for %s × %s = %s',
    (price, base, quantity, net) => {
      expect(lineNet(price, base, quantity, 'USD')).toBe(net);
    },
  );

  it.each(vectors.taxes as [string[], string, string, string][])(
    'tax: %j at %s %% of %s = %s',
    (nets, percent, base, tax) => {
      const mark = {
        category: 'S' as const,
        rates: [{ jurisdiction: 'X', level: 'state' as const, percent }],
        reason: null,
      };
      const charges = nets.map((amount) => ({ kind: 'travel' as const, reason: 'x', amount, tax: mark }));
      expect(withTotals('USD', [], charges).taxes).toMatchObject([{ base, tax }]);
    },
  );

  it.each(vectors.shares as [number, number[], number[]][])('share: %d by %j = %j', (total, weights, shares) => {
    expect(shareOut(total, weights)).toEqual(shares);
  });
});
