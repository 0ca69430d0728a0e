import { describe, expect, it } from '@jest/globals';
import type { OpenStopgap, Part, Register } from '../register.js';
import { aForecast, aMachine, aPart, aPromise, aRegister, aStopgap } from '../test-support/a-register.js';
import { stopgapItemId } from './machine-items.js';
import { planningSnapshot } from './planning-snapshot.js';

const SPAN = { asOf: '2014-06-15', firstDate: '2014-06-16', days: 7 };
const ORDERED = '2014-06-19';

/** When the parts of each are there, by item; ordered today, a part comes on Thursday. */
function releases(part: Partial<Part>, stopgaps: OpenStopgap[], changes: Partial<Register> = {}, due = [] as Due[]) {
  const register = aRegister({ parts: [aPart({ leadDays: 4, ...part })], stopgaps, ...changes });
  const ofStopgaps = stopgaps.map(({ id }) => aForecast({ itemId: id, kind: 'stopgap', p10: '2014-06-21' }));
  const { items } = planningSnapshot(register, [...due, ...ofStopgaps], SPAN);
  return Object.fromEntries(items.map((item) => [item.id, item.releaseDate]));
}
type Due = ReturnType<typeof aForecast>;

const owed = (id: string, changes: Partial<OpenStopgap> = {}) =>
  aStopgap({ id, partId: 'P1', limitHours: null, limitOn: '2014-06-20', ...changes });
const [FIRST, SECOND, THIRD] = ['G1', 'G2', 'G3'].map(stopgapItemId) as [string, string, string];

describe('parts are given out once', () => {
  it('the shelf to the stopgap with the nearest limit, what comes to the next, an order of today to the last', () => {
    const stopgaps = [
      owed('G1', { limitOn: '2014-06-22' }),
      owed('G2', { limitOn: '2014-06-19' }),
      owed('G3', { limitOn: '2014-06-20' }),
    ];
    const part = { onHand: 1, arrivals: [{ date: '2014-06-18', quantity: 1 }] };
    const found = { [SECOND]: null, [THIRD]: '2014-06-18', [FIRST]: ORDERED };
    expect(releases(part, stopgaps)).toEqual(found);
    expect(releases(part, stopgaps.toReversed())).toEqual(found);
  });

  it('what is left on the shelf to whoever needs no more, when the most urgent has to wait for an order', () => {
    const stopgaps = [owed('G1', { partQuantity: 2, limitOn: '2014-06-18' }), owed('G2')];
    expect(releases({ onHand: 1 }, stopgaps)).toEqual({ [FIRST]: ORDERED, [SECOND]: null });
  });

  it('to stopgaps before work that may wait, and of that to what is dearest to leave', () => {
    const machines = [aMachine(), aMachine({ id: 'M2' })];
    const due = [
      aForecast({ deferralCents: 300 }),
      aForecast({ itemId: 'M2/replace-belt', machineId: 'M2', deferralCents: 900 }),
    ];
    const found = releases({ onHand: 2 }, [owed('G1')], { machines }, due);
    expect(found).toEqual({ [FIRST]: null, 'M2/replace-belt': null, 'M1/replace-belt': ORDERED });
  });

  it('to work that a customer was promised before work of which nobody knows', () => {
    const machines = [aMachine(), aMachine({ id: 'M2' })];
    const due = [
      aForecast({ deferralCents: 300 }),
      aForecast({ itemId: 'M2/replace-belt', machineId: 'M2', deferralCents: 900 }),
    ];
    const promises = [aPromise()];
    expect(releases({ onHand: 1 }, [], { machines, promises }, due)).toMatchObject({ 'M1/replace-belt': null });
  });

  describe('set aside for a visit of a later week that a customer was promised', () => {
    const machines = [aMachine(), aMachine({ id: 'M2' })];
    const due = [aForecast({ itemId: 'M2/replace-belt', machineId: 'M2' })];
    const later = (kind: 'confirmed' | 'frozen' = 'confirmed') => [aPromise({ kind, date: '2014-06-24' })];
    const release = (part: Partial<Part>, changes: Partial<Register> = {}) =>
      releases(part, [], { machines, promises: later(), ...changes }, due)['M2/replace-belt'];

    it('before work of this week that may wait', () => {
      expect(release({ onHand: 1 })).toBe(ORDERED);
      expect(release({ onHand: 1 }, { promises: later('frozen') })).toBe(ORDERED);
      expect(release({ onHand: 2 })).toBeNull();
      expect(release({ onHand: 1 }, { promises: [] })).toBeNull();
    });

    it('from what comes before that visit, where it comes in time', () => {
      expect(release({ onHand: 1, arrivals: [{ date: '2014-06-23', quantity: 1 }] })).toBeNull();
      expect(release({ onHand: 1, arrivals: [{ date: '2014-06-25', quantity: 1 }] })).toBe(ORDERED);
    });

    it('after what this week must not leave out', () => {
      expect(releases({ onHand: 1 }, [owed('G1')], { machines, promises: later() })[FIRST]).toBeNull();
    });
  });

  it('to what is held fast in any case, from what comes before its day', () => {
    const promises = [aPromise({ kind: 'frozen', date: '2014-06-18' })];
    const part = { onHand: 1, arrivals: [{ date: '2014-06-17', quantity: 1 }] };
    expect(releases(part, [owed('G1')], { promises }, [aForecast()])).toEqual({
      'M1/replace-belt': '2014-06-17',
      [FIRST]: null,
    });
    expect(releases({ onHand: 1 }, [owed('G1')], { promises }, [aForecast()])).toEqual({
      'M1/replace-belt': null,
      [FIRST]: ORDERED,
    });
  });

  it('to work before an event, by the last day before it', () => {
    const events = [{ id: 'E1', siteId: 'S1', date: '2014-06-18', fromMinute: 0, name: 'final' }];
    const due = [aForecast({ p50: '2014-06-18' })];
    const stopgaps = [owed('G1', { limitOn: '2014-06-21', machineId: 'M2' })];
    const machines = [aMachine(), aMachine({ id: 'M2', siteId: 'S2' })];
    const sites = [...aRegister().sites, { ...aRegister().sites[0]!, id: 'S2' }];
    expect(releases({ onHand: 1 }, stopgaps, { events, machines, sites }, due)).toEqual({
      'M1/replace-belt': null,
      [FIRST]: ORDERED,
    });
  });
});

describe('of a stopgap whose part the register knows', () => {
  const told = (partExpectedOn: string, part: Partial<Part>) => releases(part, [owed('G1', { partExpectedOn })])[FIRST];

  it('the part is there once it has come, whatever was told', () => {
    expect(told('2014-06-20', { onHand: 1 })).toBeNull();
  });

  it('it comes when its order comes, whatever was told', () => {
    const order = (date: string) => ({ onHand: 0, leadDays: 30, arrivals: [{ date, quantity: 1 }] });
    expect(told('2014-06-17', order('2014-06-20'))).toBe('2014-06-20');
    expect(told('2014-06-21', order('2014-06-17'))).toBe('2014-06-17');
  });

  it('the day told counts where nothing is there or on order, unless it is over', () => {
    expect(told('2014-06-17', { onHand: 0 })).toBe('2014-06-17');
    expect(told('2014-06-22', { onHand: 0 })).toBe('2014-06-22');
    expect(told('2014-06-14', { onHand: 0 })).toBe(ORDERED);
  });

  it('the day told gives no part twice', () => {
    const stopgaps = ['G1', 'G2'].map((id) => owed(id, { partExpectedOn: '2014-06-17' }));
    const part = { onHand: 0, arrivals: [{ date: '2014-06-17', quantity: 1 }] };
    expect(releases(part, stopgaps)).toEqual({ [FIRST]: '2014-06-17', [SECOND]: ORDERED });
  });
});

describe('an order that is overdue', () => {
  const part = { onHand: 0, arrivals: [{ date: '2014-06-14', quantity: 1 }] };

  it('is not counted on, neither for work nor for the load', () => {
    const register = aRegister({ parts: [aPart({ leadDays: 4, ...part })], classes: aRegister().classes });
    const { items, parts } = planningSnapshot(register, [aForecast()], SPAN);
    expect(items[0]!.releaseDate).toBe(ORDERED);
    expect(parts[0]!.arrivals).toEqual([]);
  });

  it('leaves the day that was told of a stopgap', () => {
    expect(releases(part, [owed('G1', { partExpectedOn: '2014-06-18' })])[FIRST]).toBe('2014-06-18');
  });

  it('is not overdue on its day', () => {
    const today = { onHand: 0, arrivals: [{ date: SPAN.asOf, quantity: 1 }] };
    expect(releases(today, [owed('G1')])[FIRST]).toBe(SPAN.asOf);
  });
});
