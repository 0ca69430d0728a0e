import { PlanningSnapshot } from '@deckround/planning';
import { describe, expect, it } from '@jest/globals';
import type { OpenStopgap, Part, Register } from '../register.js';
import {
  aForecast,
  aMachine,
  anItem,
  aPart,
  aPromise,
  aRegister,
  aSite,
  aStopgap,
  aTechnician,
} from '../test-support/a-register.js';
import { stopgapItemId } from './machine-items.js';
import { isDayUnderWay, planningSnapshot } from './planning-snapshot.js';

/** Monday 2014-06-16 to Sunday 2014-06-22, seen from the Sunday before. */
const SPAN = { asOf: '2014-06-15', firstDate: '2014-06-16', days: 7 };
const LAST_DATE = '2014-06-22';

const snapshotOf = (changes: Partial<Register> = {}, due = [aForecast()]) =>
  planningSnapshot(aRegister(changes), due, SPAN);

describe('planningSnapshot', () => {
  it('is a document that the planner accepts, and names only what it holds', () => {
    const snapshot = snapshotOf({ promises: [aPromise()] });
    expect(PlanningSnapshot.parse(snapshot)).toEqual(snapshot);
    expect(snapshot.items[0]).toMatchObject({
      id: 'M1/replace-belt',
      machineId: 'M1',
      minutes: 30,
      parts: [{ partId: 'P1', quantity: 1 }],
      preparations: ['belt-off'],
      because: 'Every 100 h: due about 18 June.',
    });
    expect(snapshot.machines[0]!.preparations).toEqual([
      { state: 'covers-off', minutes: 3, parent: null },
      { state: 'belt-off', minutes: 5, parent: 'covers-off' },
    ]);
  });

  it('leaves out sites and machines without work', () => {
    const snapshot = snapshotOf({
      sites: [aSite(), aSite({ id: 'S2' })],
      machines: [aMachine(), aMachine({ id: 'M2', siteId: 'S2' })],
    });
    expect(snapshot.sites.map((site) => site.id)).toEqual(['S1']);
    expect(snapshot.machines.map((machine) => machine.id)).toEqual(['M1']);
  });

  it('lays weekly access hours on the dates, without blackout days, both ends included', () => {
    const { sites } = snapshotOf({
      sites: [
        aSite({
          access: [
            { weekday: 1, startMinute: 420, endMinute: 930 },
            { weekday: 3, startMinute: 420, endMinute: 720 },
            { weekday: 3, startMinute: 780, endMinute: 930 },
            { weekday: 4, startMinute: 420, endMinute: 930 },
            { weekday: 5, startMinute: 420, endMinute: 930 },
            { weekday: 7, startMinute: 0, endMinute: 1440 },
          ],
          blackouts: [
            { from: '2014-06-19', to: '2014-06-20', reason: 'ceremony' },
            { from: '2014-05-01', to: '2014-06-15', reason: 'term' },
          ],
        }),
      ],
    });
    expect(sites[0]!.windows).toEqual([
      { date: '2014-06-16', open: '07:00', close: '15:30' },
      { date: '2014-06-18', open: '07:00', close: '12:00' },
      { date: '2014-06-18', open: '13:00', close: '15:30' },
      { date: '2014-06-22', open: '00:00', close: '24:00' },
    ]);
  });

  it("lays shifts on the dates, without the technician's absences", () => {
    const { technicians } = snapshotOf({
      technicians: [aTechnician({ absences: [{ from: '2014-06-17', to: '2014-06-19', reason: 'leave' }] })],
    });
    expect(technicians[0]!.shifts).toEqual([
      { date: '2014-06-16', start: '07:00', end: '16:00' },
      { date: '2014-06-20', start: '07:00', end: '16:00' },
    ]);
    expect(technicians[0]!.lunch).toEqual({ minutes: 30, earliest: '11:00', latest: '13:30' });
  });

  it('makes one shift with a rest of two stretches, and none of a rest where they meet', () => {
    const on = (weekday: number, startMinute: number, endMinute: number) => ({ weekday, startMinute, endMinute });
    const shifts = [on(1, 780, 960), on(1, 420, 600), on(2, 420, 720), on(2, 720, 960)];
    expect(snapshotOf({ technicians: [aTechnician({ shifts })] }).technicians[0]!.shifts).toEqual([
      { date: '2014-06-16', start: '07:00', end: '16:00', rest: { from: '10:00', to: '13:00' } },
      { date: '2014-06-17', start: '07:00', end: '16:00' },
    ]);
  });

  it.each<[string, Partial<Part>, number, string | null]>([
    ['on the shelf', { onHand: 3 }, 3, null],
    ['not on the shelf: ordered today', { onHand: 2 }, 3, '2014-06-22'],
    [
      'on order, sooner than a new order',
      { onHand: 0, arrivals: [{ date: '2014-06-18', quantity: 3 }] },
      3,
      '2014-06-18',
    ],
    [
      'on order in two lots, in any order, shelf counted',
      {
        onHand: 1,
        arrivals: [
          { date: '2014-06-19', quantity: 1 },
          { date: '2014-06-17', quantity: 1 },
        ],
      },
      3,
      '2014-06-19',
    ],
    [
      'on order, later than a new order',
      { onHand: 0, arrivals: [{ date: '2014-07-30', quantity: 9 }] },
      1,
      '2014-06-22',
    ],
    ['on order, but too few', { onHand: 0, arrivals: [{ date: '2014-06-17', quantity: 1 }] }, 2, '2014-06-22'],
  ])('releases work when its part is there: %s', (_name, part, quantity, release) => {
    const item = anItem({ parts: [{ code: 'BLT-DECK', quantity, perSpindle: false }] });
    const { items } = snapshotOf({
      parts: [aPart(part)],
      classes: [{ ...aRegister().classes[0]!, items: [item] }],
    });
    expect(items[0]!.releaseDate).toBe(release);
  });

  it('waits for the last of several parts', () => {
    const item = anItem({
      parts: ['BLT-DECK', 'IDLER', 'BLADE'].map((code) => ({ code, quantity: 1, perSpindle: false })),
    });
    const { items } = snapshotOf({
      parts: [
        aPart({ onHand: 0, leadDays: 2 }),
        aPart({ id: 'P2', code: 'IDLER', onHand: 0, leadDays: 4 }),
        aPart({ id: 'P3', code: 'BLADE', onHand: 1, leadDays: 9 }),
      ],
      classes: [{ ...aRegister().classes[0]!, items: [item] }],
    });
    expect(items[0]!.releaseDate).toBe('2014-06-19');
  });

  it.each([
    ['overdue for long: the best choice left is today', [500, 600, 700, 800, 900, 1000, 1100], 2000],
    ['best in mid-week', [30, 20, 10, 0, 10, 20, 30], 200],
    ['best after the week', [90, 80, 70, 60, 50, 40, 30], 5],
  ])('takes sunk cost out, keeping differences: %s', (_name, timingCostCents, deferralCents) => {
    const [item] = snapshotOf({}, [aForecast({ timingCostCents, deferralCents })]).items;
    expect(Math.min(...item!.timingCostCents, item!.deferralCents)).toBe(0);
    const before = [...timingCostCents, deferralCents];
    const after = [...item!.timingCostCents, item!.deferralCents];
    expect(after.map((cents) => cents - after[0]!)).toEqual(before.map((cents) => cents - before[0]!));
  });

  it('takes as many days of cost as it plans, when the forecast knows more', () => {
    const longer = aForecast({ timingCostCents: [9, 9, 9, 9, 9, 9, 9, 0, 0, 0], deferralCents: 50 });
    expect(snapshotOf({}, [longer]).items[0]).toMatchObject({
      timingCostCents: [0, 0, 0, 0, 0, 0, 0],
      deferralCents: 41,
    });
  });

  it('takes work along that may fall due within ten days after the week, and leaves later work', () => {
    const ids = (p10: string | null) => snapshotOf({}, [aForecast({ p10 })]).items.map((item) => item.id);
    expect(ids('2014-07-02')).toEqual(['M1/replace-belt']);
    expect(ids('2014-07-03')).toEqual([]);
    expect(ids(null)).toEqual([]);
  });

  it('takes promised work along however late it falls due', () => {
    const due = [aForecast({ p10: null, p50: null, p90: null })];
    expect(snapshotOf({ promises: [aPromise()] }, due).items.map((item) => item.id)).toEqual(['M1/replace-belt']);
  });

  it('makes an item that must be done a must-do once it is more likely overdue than not', () => {
    const classes = [{ ...aRegister().classes[0]!, items: [anItem({ mustDo: true })] }];
    const mustDo = (atTheEnd: number, changes: Partial<Register>) =>
      snapshotOf(changes, [aForecast({ probabilityOverdue: [0, 0, 0, 0, 0, 0, atTheEnd] })]).items[0]!.mustDo;
    expect(mustDo(0.5, { classes })).toBe(true);
    expect(mustDo(0.49, { classes })).toBe(false);
    expect(mustDo(1, {})).toBe(false);
  });

  describe('the return that a stopgap owes', () => {
    const owed = (stopgap: Partial<OpenStopgap>, forecast: Parameters<typeof aForecast>[0] = {}, parts = [aPart()]) => {
      const due = aForecast({ itemId: 'G1', kind: 'stopgap', ...forecast });
      return snapshotOf({ stopgaps: [aStopgap(stopgap)], parts }, [due]).items[0]!;
    };
    const FAR = { p10: '2014-08-01', probabilityOverdue: [0, 0, 0, 0, 0, 0, 0.09] };

    it('is work of its own, with its part', () => {
      expect(owed({ partId: 'P1', partQuantity: 2 })).toMatchObject({
        id: stopgapItemId('G1'),
        machineId: 'M1',
        title: 'Replace the spliced idler bracket',
        minutes: 40,
        parts: [{ partId: 'P1', quantity: 2 }],
        releaseDate: null,
      });
    });

    it('must be done when its limit comes within the week', () => {
      expect(owed({}).mustDo).toBe(true);
      expect(owed({}, { ...FAR, p10: LAST_DATE }).mustDo).toBe(true);
      expect(owed({}, { ...FAR, probabilityOverdue: [0, 0, 0, 0, 0, 0, 0.1] }).mustDo).toBe(true);
    });

    it('may wait while its limit is far', () => {
      expect(owed({}, FAR).mustDo).toBe(false);
    });

    it('is released when its part is expected, and must be done only if that is in time', () => {
      expect(owed({ partExpectedOn: '2014-06-17' })).toMatchObject({ releaseDate: '2014-06-17', mustDo: true });
      expect(owed({ partExpectedOn: LAST_DATE })).toMatchObject({ mustDo: true });
      expect(owed({ partExpectedOn: '2014-06-23' })).toMatchObject({ releaseDate: '2014-06-23', mustDo: false });
      const missing = [aPart({ onHand: 0, leadDays: 30 })];
      expect(owed({ partId: 'P1' }, {}, missing)).toMatchObject({ releaseDate: '2014-07-15', mustDo: false });
    });

    it('is gone when the stopgap is made good', () => {
      expect(snapshotOf({}, [aForecast({ itemId: 'G1', kind: 'stopgap' })]).items).toEqual([]);
    });
  });
});

describe('a day under way', () => {
  const now = (clock: string) => (zone: string) => (zone === 'America/Chicago' ? clock : `${SPAN.firstDate}T23:00`);
  const today = SPAN.firstDate;
  const span = { asOf: today, firstDate: today, days: 7, soonest: now(`${today}T10:40`) };

  it('is one on which somebody who works has begun', () => {
    const register = aRegister();
    expect(isDayUnderWay(register, today, now(`${today}T07:00`))).toBe(false);
    expect(isDayUnderWay(register, today, now(`${today}T07:01`))).toBe(true);
    expect(isDayUnderWay(register, '2014-06-15', now('2014-06-15T12:00'))).toBe(false);
    const absences = [{ from: today, to: today, reason: 'ill' }];
    const ill = aRegister({ technicians: [aTechnician({ absences })] });
    expect(isDayUnderWay(ill, today, now(`${today}T12:00`))).toBe(false);
  });

  it('has its visits at their very time, and others where somebody can still come', () => {
    const visit = { visitId: 'V9', siteId: 'S1', technicianId: 'T1', date: today, start: '09:15', itemIds: ['M1/oil'] };
    const register = aRegister({
      promises: [aPromise({ date: today }), aPromise({ visitId: 'V2' })],
      previous: [visit],
    });
    const { promises, sites, technicians } = planningSnapshot(register, [aForecast()], span);
    expect(promises).toMatchObject([
      { visitId: 'V1', kind: 'frozen', from: '08:30', to: '08:30', moveCents: 5000 },
      { visitId: 'V2', kind: 'confirmed', from: '08:00', to: '10:00' },
      { visitId: 'V9', kind: 'frozen', from: '09:15', to: '09:15', moveCents: 0, itemIds: ['M1/oil'] },
    ]);
    expect(technicians[0]!.shifts[0]!.date).toBe(today);
    expect(sites[0]!.windows.slice(0, 2)).toEqual([
      { date: today, open: '10:40', close: '15:30' },
      { date: '2014-06-17', open: '07:00', close: '15:30' },
    ]);
    const late = planningSnapshot(register, [aForecast()], { ...span, soonest: now(`${today}T15:30`) });
    expect(late.sites[0]!.windows[0]!.date).toBe('2014-06-17');
    const early = planningSnapshot(register, [aForecast()], { ...span, soonest: now(`${today}T06:30`) });
    expect(early.sites[0]!.windows[0]!.open).toBe('07:00');
  });
});

describe('parts past their opportunity threshold', () => {
  const learned = { shape: 2, scaleHours: 900, opportunityHours: 200, bestHours: 400, words: 'From 30 failures.' };
  const bearings = anItem({ id: 'bearings', code: 'replace-bearings', title: 'Replace bearings', learned });
  const belt = anItem();
  const notDue = { itemId: 'M1/replace-bearings', code: 'replace-bearings', p10: '2014-11-01', p50: null, p90: null };
  const aged = (hours: number) => {
    const { why } = aForecast();
    const lastCompletion = { on: '2013-05-01', lifetimeHours: 1000 - hours, code: 'replace-bearings' };
    return aForecast({ ...notDue, why: { ...why, lifetimeHoursNow: 1000, lastCompletion } });
  };
  const classes = [{ ...aRegister().classes[0]!, items: [belt, bearings] }];
  const itemsWith = (...due: ReturnType<typeof aForecast>[]) => snapshotOf({ classes }, due).items;

  it('may ride along where due work opens the same place, for what doing it now gains and no more', () => {
    const [, ride] = itemsWith(aForecast(), aged(300));
    expect(ride).toMatchObject({ id: 'M1/replace-bearings', mustDo: false, timingCostCents: [0, 0, 0, 0, 0, 0, 0] });
    expect(ride!.because).toBe(
      'Replace bearings: 300 h old, worth replacing from 200 h on while the place is open anyway.',
    );
    // Half way between threshold and best age: half of what its preparation costs in wages.
    const [, full] = itemsWith(aForecast(), aged(600));
    expect(ride!.deferralCents).toBeGreaterThan(0);
    expect(full!.deferralCents).toBe(2 * ride!.deferralCents);
  });

  it('stay away when too young, when nothing opens the machine, or when nothing was learned', () => {
    expect(itemsWith(aForecast(), aged(150))).toHaveLength(1);
    expect(itemsWith(aged(300))).toEqual([]);
    const plain = [{ ...classes[0]!, items: [belt, { ...bearings, learned: null }] }];
    expect(snapshotOf({ classes: plain }, [aForecast(), aged(300)]).items).toHaveLength(1);
  });
});
