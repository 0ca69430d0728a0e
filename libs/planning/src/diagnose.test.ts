import { describe, expect, it } from '@jest/globals';
import { planWeek } from './plan-week.js';
import type { PlanningSnapshot } from './snapshot.js';
import { anItem, aSite, aTechnician, aWeek } from './test-support/a-week.js';
import { datesFrom } from './wall-clock.js';

const DAYS = 5;
const dates = datesFrom('2014-06-16', DAYS);
const must = (changes: Parameters<typeof anItem>[1] = {}) => anItem(DAYS, { mustDo: true, ...changes });

function leftOut(changes: Partial<PlanningSnapshot>) {
  const plan = planWeek(aWeek(changes), { snapshotHash: '', seed: 1, stop: { iterations: 100 } });
  expect(plan.leftOut).toHaveLength(1);
  return plan.leftOut[0]!;
}

// One must-do made impossible in each way; the diagnosis has to name that rule, mildest first.
const CASES: [string, Partial<PlanningSnapshot>, RegExp][] = [
  ['nobody has the skill', { items: [must({ skill: 'hydraulic' })] }, /the skill hydraulic/],
  [
    'its part comes after the last day',
    { items: [must({ releaseDate: '2014-06-25' })] },
    /part, expected on 2014-06-25, comes/,
  ],
  [
    'the site has no window all week',
    { items: [must()], sites: [aSite([])] },
    /North Park can be entered on more days/,
  ],
  [
    'the site is open too short',
    {
      items: [must()],
      sites: [aSite(dates, { windows: dates.map((date) => ({ date, open: '09:00', close: '09:25' })) })],
    },
    /North Park can be entered 15 min earlier and later/,
  ],
  [
    'the shift is too short',
    {
      items: [must({ minutes: 525 })],
      technicians: [aTechnician(dates, { maxOvertimeMinutes: 0, lunch: null })],
    },
    /a shift may end \d+ min later/,
  ],
  [
    'the technician is ill on the only open day',
    {
      items: [must()],
      sites: [aSite(['2014-06-17'])],
      technicians: [aTechnician(dates.filter((date) => date !== '2014-06-17'))],
    },
    /North Park can be entered on more days/,
  ],
  [
    'somebody is barred',
    { items: [must()], barred: [{ siteId: 'S1', technicianId: 'T1', date: null }] },
    /whoever is barred/,
  ],
  [
    'it had to be done before the site opens',
    { items: [must({ latestDate: '2014-06-16' })], sites: [aSite(dates.slice(1))] },
    /need not be done by 2014-06-16/,
  ],
  [
    'lunch is in the way',
    {
      items: [must({ minutes: 300 })],
      sites: [aSite(dates, { windows: dates.map((date) => ({ date, open: '10:30', close: '15:40' })) })],
      technicians: [
        aTechnician(dates, {
          maxOvertimeMinutes: 0,
          lunch: { minutes: 30, earliest: '11:00', latest: '13:00' },
          shifts: dates.map((date) => ({ date, start: '10:00', end: '16:00' })),
        }),
      ],
    },
    /lunch/,
  ],
];

describe('a must-do that cannot be met', () => {
  it.each(CASES)('because %s: the diagnosis says so', (_, changes, words) => {
    expect(leftOut(changes).remedies!.join(' ')).toMatch(words);
  });

  it('needs two rules given up where one is not enough', () => {
    const { remedies } = leftOut({ items: [must({ skill: 'hydraulic', releaseDate: '2014-06-25' })] });
    expect(remedies).toHaveLength(1);
    expect(remedies![0]).toMatch(/part, expected on 2014-06-25.* and .*the skill hydraulic/);
  });

  it('of a week in which nobody works asks for somebody who may be sent and has the skill', () => {
    const technicians = [
      aTechnician([], { name: 'Ana', skills: ['hydraulic'] }),
      aTechnician([], { id: 'T2', name: 'Ben' }),
      aTechnician([], { id: 'T3', name: 'Cleo', skills: ['hydraulic'] }),
    ];
    const barred = [{ siteId: 'S1', technicianId: 'T1', date: null }];
    const items = [must({ skill: 'hydraulic', releaseDate: '2014-06-18' })];
    expect(leftOut({ technicians, barred, items, asOf: '2014-06-17' }).remedies).toEqual([
      'It fits if Cleo works on 2014-06-18.',
    ]);
  });

  it('names the promise that stands in its way', () => {
    const snapshot = aWeek({
      days: 1,
      technicians: [aTechnician(['2014-06-16'], { maxOvertimeMinutes: 0 })],
      sites: [aSite(['2014-06-16']), aSite(['2014-06-16'], { id: 'S2', name: 'South School', latitude: 41.55 })],
      machines: [
        { id: 'M1', siteId: 'S1', label: 'Mower 1', machineClass: 'zero-turn', preparations: [] },
        { id: 'M2', siteId: 'S2', label: 'Mower 2', machineClass: 'zero-turn', preparations: [] },
      ],
      items: [
        anItem(1, { id: 'I1', mustDo: true, minutes: 240 }),
        anItem(1, { id: 'I2', machineId: 'M2', minutes: 300, mustDo: true }),
      ],
      promises: [
        {
          ...{ visitId: 'P', kind: 'frozen', siteId: 'S2', technicianId: 'T1', date: '2014-06-16' },
          ...{ from: '07:30', to: '08:00', itemIds: ['I2'], moveCents: 5000 },
        },
      ],
    });
    const plan = planWeek(snapshot, { snapshotHash: '', seed: 1, stop: { iterations: 200 } });
    expect(plan.leftOut.map((row) => row.itemId)).toEqual(['I1']);
    expect(plan.leftOut[0]!.remedies!.join(' ')).toMatch(/promised visit at South School on 2014-06-16 moves/);
  });
});
