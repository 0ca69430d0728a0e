import { expect, it } from '@jest/globals';
import { aForecast, aRegister, aTechnician } from '../test-support/a-register.js';
import { planningSnapshot } from './planning-snapshot.js';
import { type StartedDay, standingSnapshot } from './standing-snapshot.js';

const MONDAY = '2014-06-16';
const on = (startMinute: number, endMinute: number) => ({ weekday: 1, startMinute, endMinute });
/** 07:00 to 10:00 and 13:00 to 16:00. */
const register = aRegister({ technicians: [aTechnician({ shifts: [on(420, 600), on(780, 960)] })] });
const planned = planningSnapshot(register, [aForecast()], { asOf: '2014-06-12', firstDate: MONDAY, days: 7 });
const rest = { from: '10:00', to: '13:00' };
const begun = (freeAt: string, lunchTaken = false): StartedDay => ({
  technicianId: 'T1',
  siteId: 'S1',
  ...{ freeAt, lunchTaken },
});
const over = { siteId: null, lunchTaken: true };

it.each<[string, string, StartedDay[], object[]]>([
  ['before work', '06:30', [], [{ start: '07:00', rest }]],
  ['in the morning', '08:15', [], [{ start: '08:15', rest }]],
  [
    'at a visit that ends before the rest',
    '09:00',
    [begun('09:40')],
    [{ start: '09:40', rest, underWay: { siteId: 'S1', lunchTaken: false } }],
  ],
  [
    'at a visit that ends when the rest begins',
    '09:00',
    [begun('10:00')],
    [{ start: '13:00', underWay: { siteId: 'S1', lunchTaken: true } }],
  ],
  ['in the rest', '11:00', [], [{ start: '13:00', underWay: over }]],
  ['in the afternoon', '14:10', [], [{ start: '14:10', underWay: over }]],
  [
    'at a visit in the afternoon',
    '14:10',
    [begun('15:00', true)],
    [{ start: '15:00', underWay: { siteId: 'S1', lunchTaken: true } }],
  ],
  ['in the evening', '16:00', [], []],
])('of a shift with a rest stands what is left of it: %s', (_name, clock, started, expected) => {
  const { technicians } = standingSnapshot(register, planned, {
    days: [MONDAY],
    ...{ wallClock: () => `${MONDAY}T${clock}`, started, closedItemIds: new Set(), added: [] },
  });
  expect(technicians[0]!.shifts).toEqual(expected.map((shift) => ({ date: MONDAY, end: '16:00', ...shift })));
});
