import { describe, expect, it } from '@jest/globals';
import { addDays } from '../local-date.js';
import type { Register } from '../register.js';
import {
  aForecast,
  aMachine,
  anItem,
  aPart,
  aPromise,
  aRegister,
  aRoadCall,
  aStopgap,
} from '../test-support/a-register.js';
import { roadCallItemId, stopgapItemId } from './machine-items.js';
import { plannedWork } from './planned-elsewhere.js';
import { planningSnapshot } from './planning-snapshot.js';
import { standingSnapshot } from './standing-snapshot.js';

/** Monday 2014-06-16 to Sunday 2014-06-22, planned on the Thursday before. */
const SPAN = { asOf: '2014-06-12', firstDate: '2014-06-16', days: 7 };
const FRIDAY = '2014-06-13';
const BELT = 'M1/replace-belt';

const planned = (changes: Partial<Register>, due = [aForecast()]) => planningSnapshot(aRegister(changes), due, SPAN);
const idsOf = (changes: Partial<Register>, due = [aForecast()]) => planned(changes, due).items.map((item) => item.id);

const proposed = (date: string, itemIds = [BELT]): Partial<Register> => ({
  previous: [{ visitId: 'V9', siteId: 'S1', technicianId: 'T1', date, start: '08:00', itemIds }],
});
const promised = (date: string): Partial<Register> => ({ promises: [aPromise({ date })] });

describe('work that stands in a visit on another day', () => {
  it.each([
    ['proposed for tomorrow', proposed(FRIDAY), FRIDAY],
    ['proposed for today', proposed(SPAN.asOf), SPAN.asOf],
    ['promised for tomorrow', promised(FRIDAY), FRIDAY],
    [
      'proposed for tomorrow and for the week',
      { previous: [...proposed(FRIDAY).previous!, ...proposed('2014-06-16').previous!] },
      FRIDAY,
    ],
  ])('counts as done there, and the plan takes up the time after: %s', (_name, changes, date) => {
    const register = aRegister(changes);
    expect(plannedWork(register, SPAN)).toEqual([{ machineId: 'M1', code: 'replace-belt', slot: null, on: date }]);
    expect(planned(changes).items).toMatchObject([{ id: BELT, follows: date }]);
    const again = (p10: string) => aForecast({ p10, why: { ...aForecast().why, isPlanned: true } });
    expect(idsOf(changes, [again('2014-06-22')])).toEqual([BELT]);
    // To ride along, it has just been done.
    expect(idsOf(changes, [again('2014-06-23')])).toEqual([]);
  });

  it.each([
    ['proposed for the week after', proposed('2014-06-23')],
    ['promised for the week after', promised('2014-06-23')],
  ])('is not planned once more: %s', (_name, changes) => {
    expect(idsOf(changes)).toEqual([]);
    expect(plannedWork(aRegister(changes), SPAN)).toEqual([]);
  });

  it.each([
    ['proposed for the week itself', proposed('2014-06-16')],
    ['promised for the last of its days', promised('2014-06-22')],
    ['proposed for yesterday, and not done', proposed('2014-06-11')],
    ['promised for yesterday, and not done', promised('2014-06-11')],
    ['promised for the week and proposed for the one after', { ...proposed('2014-06-23'), ...promised('2014-06-17') }],
    ['proposed for both', { previous: [...proposed('2014-06-17').previous!, ...proposed('2014-06-23').previous!] }],
  ])('is planned: %s', (_name, changes) => {
    expect(idsOf(changes)).toEqual([BELT]);
    expect(planned(changes).items[0]).not.toHaveProperty('follows');
  });

  it('is the work of a day under way, where it stands on both', () => {
    const today = { ...SPAN, asOf: SPAN.firstDate, soonest: () => `${SPAN.firstDate}T10:40` };
    const visit = { visitId: 'V9', siteId: 'S1', technicianId: 'T1', start: '08:00', itemIds: [BELT] };
    const previous = [SPAN.firstDate, '2014-06-23'].map((date) => ({ ...visit, date }));
    const { items, promises } = planningSnapshot(aRegister({ previous }), [aForecast()], today);
    expect(items.map((item) => item.id)).toEqual([BELT]);
    expect(promises).toMatchObject([{ visitId: 'V9', date: SPAN.firstDate, kind: 'frozen' }]);
  });

  it('does not come again when it is a road call or the return that a stopgap owes', () => {
    const changes = {
      ...proposed(FRIDAY, [roadCallItemId('R1'), stopgapItemId('G1')]),
      roadCalls: [aRoadCall(), aRoadCall({ id: 'R2' })],
      stopgaps: [aStopgap()],
    };
    expect(idsOf(changes, [aForecast({ itemId: 'G1', kind: 'stopgap' })])).toEqual([roadCallItemId('R2')]);
  });

  it('takes its parts with it, when it comes before', () => {
    const belt = anItem({ parts: [{ code: 'BLT-DECK', quantity: 1, perSpindle: false }] });
    const shelf = {
      machines: [aMachine(), aMachine({ id: 'M2' })],
      parts: [aPart({ onHand: 1, leadDays: 6 })],
      classes: [{ ...aRegister().classes[0]!, items: [belt] }],
    };
    const other = aForecast({ itemId: 'M2/replace-belt', machineId: 'M2' });
    const both = [aForecast(), other];
    const before = planned({ ...shelf, ...proposed(FRIDAY) }, [other]);
    expect(before.items).toMatchObject([{ id: 'M2/replace-belt', releaseDate: '2014-06-18' }]);
    expect(before.parts).toMatchObject([{ onHand: 0 }]);
    const after = planned({ ...shelf, ...proposed('2014-06-24') }, both);
    expect(after.items).toMatchObject([{ id: 'M2/replace-belt', releaseDate: null }]);
    expect(after.parts).toMatchObject([{ onHand: 1 }]);
  });

  it('takes what comes for it in time, when the shelf holds too little', () => {
    const belt = anItem({ parts: [{ code: 'BLT-DECK', quantity: 3, perSpindle: false }] });
    const arrivals = [
      { date: '2014-06-18', quantity: 4 },
      { date: FRIDAY, quantity: 1 },
      { date: '2014-06-12', quantity: 1 },
    ];
    const left = (onHand: number) => {
      const shelf = { parts: [aPart({ onHand, arrivals })], classes: [{ ...aRegister().classes[0]!, items: [belt] }] };
      const { parts } = planned({ ...shelf, ...proposed(FRIDAY) });
      return [parts[0]!.onHand, parts[0]!.arrivals.map(({ quantity }) => quantity)];
    };
    expect(left(4)).toEqual([1, [4, 1, 1]]);
    expect(left(2)).toEqual([0, [4, 1]]);
    expect(left(1)).toEqual([0, [4]]);
    // Of what comes too late nothing is gone: the visit lacks it, and says so.
    expect(left(0)).toEqual([0, [4]]);
  });
});

describe('a planned week as it stands', () => {
  const idsNow = (changes: Partial<Register>, today = '2014-06-17', before: Partial<Register> = {}, days?: string[]) =>
    standingSnapshot(aRegister(changes), planned(before), {
      days: days ?? Array.from({ length: SPAN.days }, (_, day) => addDays(SPAN.firstDate, day)),
      wallClock: () => `${today}T08:00`,
      started: [],
      closedItemIds: new Set(),
      added: [],
    }).items.map((item) => item.id);

  it('has no work left for later that the next week does', () => {
    expect(idsNow({})).toEqual([BELT]);
    expect(idsNow(proposed('2014-06-23'))).toEqual([]);
  });

  it('has what was left for later of the time after a visit before it, but not what such a visit took up since', () => {
    expect(idsNow(proposed(FRIDAY), SPAN.asOf, proposed(FRIDAY))).toEqual([BELT]);
    expect(idsNow(proposed(FRIDAY), SPAN.asOf)).toEqual([]);
  });

  it('leaves to a newer plan the days and the work that it has taken over, but not what stands on its own days too', () => {
    const own = ['2014-06-16', '2014-06-17', '2014-06-18'];
    expect(idsNow({}, SPAN.asOf, {}, own)).toEqual([BELT]);
    expect(idsNow(proposed('2014-06-19'), SPAN.asOf, {}, own)).toEqual([]);
    expect(idsNow({ ...proposed('2014-06-19'), ...promised('2014-06-17') }, SPAN.asOf, {}, own)).toEqual([BELT]);
  });

  it('keeps what stands in it, and all when it is over', () => {
    expect(idsNow({ ...proposed('2014-06-23'), ...promised('2014-06-17') })).toEqual([BELT]);
    expect(idsNow(proposed('2014-06-30'), '2014-06-24')).toEqual([BELT]);
  });
});
