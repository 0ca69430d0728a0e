import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { orderList, type PartNeed } from './order-list.js';
import type { PlanningPart } from './snapshot.js';

const bearing: PlanningPart = {
  id: 'bearing',
  description: 'bearing',
  designation: '6205-2RS',
  unit: 'each',
  onHand: 2,
  arrivals: [{ date: '2026-06-10', quantity: 4 }],
  leadDays: 3,
};
const need = (date: string, quantity: number, certainty: PartNeed['certainty'] = 'planned'): PartNeed => ({
  ...{ partId: 'bearing', quantity, date, certainty },
  use: { code: 'belts', slot: null, title: `work of ${date}`, siteName: 'North School' },
});

describe('the order list', () => {
  it('is empty while stock and arrivals suffice', () => {
    expect(orderList([bearing], [need('2026-06-09', 2), need('2026-06-10', 4)], '2026-06-05')).toEqual([]);
  });

  it('orders what runs short, by the lead time before the first work that lacks it', () => {
    const needs = [need('2026-06-12', 3), need('2026-06-09', 2), need('2026-06-15', 4, 'forecast')];
    expect(orderList([bearing], needs, '2026-06-05')).toEqual([
      {
        partId: 'bearing',
        quantity: 3,
        orderBy: '2026-06-12',
        firstNeededOn: '2026-06-15',
        isLate: false,
        certainty: 'forecast',
        uses: [{ code: 'belts', slot: null, title: 'work of 2026-06-15', siteName: 'North School' }],
      },
    ]);
  });

  it('says when it is too late, and counts a later arrival only for later work', () => {
    const [line] = orderList([bearing], [need('2026-06-08', 6)], '2026-06-06');
    expect(line).toMatchObject({ quantity: 4, orderBy: '2026-06-05', isLate: true, certainty: 'planned' });
  });

  it('does not count on an order that should have come before today', () => {
    const late = { ...bearing, onHand: 0, arrivals: [{ date: '2026-06-04', quantity: 4 }] };
    const [line] = orderList([late], [need('2026-06-09', 1)], '2026-06-05');
    expect(line).toMatchObject({ quantity: 1, orderBy: '2026-06-06', isLate: false });
    expect(orderList([late], [need('2026-06-09', 1)], '2026-06-04')).toEqual([]);
  });

  it('always ends in enough, and never more than is needed', () => {
    const days = fc.integer({ min: 1, max: 28 }).map((day) => `2026-06-${String(day).padStart(2, '0')}`);
    const needs = fc.array(fc.record({ date: days, quantity: fc.integer({ min: 1, max: 5 }) }), { maxLength: 20 });
    fc.assert(
      fc.property(needs, fc.integer({ min: 0, max: 20 }), (rows, onHand) => {
        const part = { ...bearing, onHand, arrivals: [] };
        const total = rows.reduce((sum, row) => sum + row.quantity, 0);
        const [line] = orderList(
          [part],
          rows.map((row) => need(row.date, row.quantity)),
          '2026-06-01',
        );
        expect(line?.quantity ?? 0).toBe(Math.max(0, total - onHand));
      }),
      { seed: 7 },
    );
  });
});
