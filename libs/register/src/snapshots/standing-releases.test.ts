import { expect, it } from '@jest/globals';
import type { Part, Register } from '../register.js';
import { aMachine, aPart, aPromise, aRegister, aStopgap } from '../test-support/a-register.js';
import { stopgapItemId } from './machine-items.js';
import { standingReleases } from './standing-releases.js';

const [MONDAY, TUESDAY, WEDNESDAY, NEXT_MONDAY] = ['2014-06-16', '2014-06-17', '2014-06-18', '2014-06-23'] as const;
const DAYS = [MONDAY, TUESDAY, WEDNESDAY];
/** Ordered on Monday, a belt comes after these days. */
const ORDERED = '2014-06-26';
const [ONE, TWO] = ['M1/replace-belt', 'M2/replace-belt'] as const;

const visit = (itemId: string, date: string) => ({
  ...{ visitId: `${itemId} ${date}`, siteId: 'S1', technicianId: 'T1', date, start: '08:00', itemIds: [itemId] },
});
const releases = (part: Partial<Part>, changes: Partial<Register>, today: string = MONDAY) =>
  Object.fromEntries(
    standingReleases(
      aRegister({
        machines: [aMachine(), aMachine({ id: 'M2' })],
        parts: [aPart({ leadDays: 10, ...part })],
        ...changes,
      }),
      DAYS,
      today,
    ),
  );
const both = { previous: [visit(TWO, WEDNESDAY), visit(ONE, TUESDAY)] };
const comes = (date: string) => ({ onHand: 0, arrivals: [{ date, quantity: 1 }] });

it('gives parts to the visits in turn, from the shelf and from what comes', () => {
  expect(releases({ onHand: 2 }, both)).toEqual({ [ONE]: null, [TWO]: null });
  expect(releases({ onHand: 1 }, both)).toEqual({ [ONE]: null, [TWO]: ORDERED });
  expect(releases(comes(WEDNESDAY), both)).toEqual({ [ONE]: WEDNESDAY, [TWO]: ORDERED });
});

it('counts on nothing that should have come before today', () => {
  const one = { previous: [visit(ONE, WEDNESDAY)] };
  expect(releases(comes(MONDAY), one)).toEqual({ [ONE]: MONDAY });
  expect(releases(comes(MONDAY), one, TUESDAY)).toEqual({ [ONE]: '2014-06-27' });
});

it('leaves out visits that are over, and gives those of other weeks their turn', () => {
  const later = { ...aPromise(), ...visit(ONE, NEXT_MONDAY) };
  expect(releases({ onHand: 1 }, { previous: [visit(TWO, WEDNESDAY)], promises: [later] })).toEqual({ [TWO]: null });
  expect(releases({ onHand: 1 }, both, WEDNESDAY)).toEqual({ [TWO]: null });
});

it('takes a stopgap at the day that was told, where the shop knows of no part', () => {
  const id = stopgapItemId('G1');
  const owed = { previous: [visit(id, TUESDAY)], stopgaps: [aStopgap({ partId: 'P1', partExpectedOn: WEDNESDAY })] };
  expect(releases({ onHand: 0 }, owed)).toEqual({ [id]: WEDNESDAY });
  expect(releases({ onHand: 1 }, owed)).toEqual({ [id]: null });
});
