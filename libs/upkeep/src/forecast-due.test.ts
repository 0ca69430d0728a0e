import { dateOfDay, dayNumber, fitUsage, forecastUsage } from '@deckround/usage';
import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { forecastDue, forecastDueWith } from './forecast-due.js';
import { ServiceItem, type UpkeepSnapshot } from './snapshot.js';

const AS_OF = '2025-06-13';
const ORIGIN = dayNumber(AS_OF);
const PER_DAY = 3;

/** Lifetime hours of the test machines, which have run three hours a day, every day, for three years. */
const hoursOn = (date: string) => 3000 + PER_DAY * (dayNumber(date) - ORIGIN);

const USAGE = (() => {
  const machines = Array.from({ length: 20 }, (_, m) => ({
    id: `m${m}`,
    siteId: 's',
    machineClass: 'zero-turn',
    latitude: 45,
    longitude: null,
    inServiceOn: '2022-06-13',
  }));
  const readings = machines.flatMap(({ id }) =>
    Array.from({ length: 220 }, (_, k) => {
      const date = dateOfDay(ORIGIN - 5 * k);
      return { id: `${id}-${k}`, machineId: id, readAt: `${date}T18:00:00`, hours: hoursOn(date), source: 'test' };
    }),
  );
  return { version: 1 as const, asOf: AS_OF, horizonDays: 60, machines, readings, meterChanges: [] };
})();
const FORECAST = forecastUsage(fitUsage(USAGE));

type Rule = Partial<ServiceItem['rule']>;
function anItem(rule: Rule, rest: Partial<ServiceItem> = {}): ServiceItem {
  return ServiceItem.parse({
    id: 'i',
    machineId: 'm0',
    code: 'sharpen-blades',
    title: 'Blades',
    rule: { hours: null, days: null, firstHours: null, seasonEvent: null, ...rule },
    economics: { doCents: 3000, failureCents: 20000, hazardShape: 2.5 },
    ...rest,
  });
}

function dueOf(item: ServiceItem, doneOn: string | null, more: Partial<UpkeepSnapshot> = {}) {
  const completions =
    doneOn === null
      ? []
      : [
          {
            machineId: 'm0',
            code: 'sharpen-blades',
            slot: null,
            doneOn,
            meterHours: hoursOn(doneOn),
            outcome: 'done' as const,
          },
        ];
  const snapshot = { items: [item], completions, findings: [], stopgaps: [], costFrom: '2025-06-14', costDays: 28 };
  return forecastDueWith(FORECAST, { ...snapshot, ...more })[0]!;
}

const daysApart = (a: string | null, b: string) => Math.abs(dayNumber(a!) - dayNumber(b));

describe('interval rules, machine at 3 h a day', () => {
  test.each<[string, Rule, Partial<ServiceItem>, string | null, string, string]>([
    ['hours', { hours: 60 }, {}, '2025-06-08', '2025-06-28', 'hours'],
    ['days', { days: 30 }, {}, '2025-06-01', '2025-07-01', 'days'],
    ['whichever first: hours', { hours: 60, days: 365 }, {}, '2025-06-08', '2025-06-28', 'hours'],
    ['whichever first: days', { hours: 600, days: 10 }, {}, '2025-06-08', '2025-06-18', 'days'],
    ['severe duty', { hours: 60, severeFactor: 0.5 }, { severity: 'severe' }, '2025-06-08', '2025-06-18', 'hours'],
    ['light duty', { hours: 60, severeFactor: 0.25 }, { severity: 'light' }, '2025-06-08', '2025-07-18', 'hours'],
    // done at 2994 h, nearest multiple 3000, so next at 3100 h
    ['fixed anchor', { hours: 100, anchor: 'fixed' }, {}, '2025-06-11', '2025-07-16', 'hours'],
    ['assumed share', { hours: 90 }, { assumedShare: 0.5 }, null, '2025-06-28', 'hours'],
  ])('%s', (_, rule, rest, doneOn, due, decidedBy) => {
    const forecast = dueOf(anItem(rule, rest), doneOn);
    expect(daysApart(forecast.p50, due)).toBeLessThanOrEqual(1);
    expect(forecast.why.decidedBy).toBe(decidedBy);
  });

  test('a completion of another item that resets it counts; another slot does not', () => {
    const done = (code: string, slot: string | null) => ({
      machineId: 'm0',
      code,
      slot,
      doneOn: '2025-06-08',
      meterHours: null,
      outcome: 'done' as const,
    });
    const item = anItem({ days: 30 }, { slot: 'left', resetBy: ['replace-spindle'] });
    expect(dueOf(item, null, { completions: [done('replace-spindle', 'left')] }).p50).toBe('2025-07-08');
    expect(dueOf(item, null, { completions: [done('replace-spindle', 'right')] }).why.lastCompletion).toBeNull();
  });

  test('a finding halves what is left, or sets a limit of its own', () => {
    const finding = { machineId: 'm0', code: 'sharpen-blades', slot: null, foundOn: '2025-06-13' };
    const none = { intervalFactor: null, dueWithinHours: null, dueWithinDays: null };
    const item = anItem({ days: 30 });
    const halved = dueOf(item, '2025-06-03', { findings: [{ ...finding, ...none, intervalFactor: 0.5 }] });
    expect([halved.p50, halved.why.decidedBy]).toEqual(['2025-06-23', 'finding']);
    const soon = dueOf(item, '2025-06-03', { findings: [{ ...finding, ...none, dueWithinDays: 3 }] });
    expect(soon.p50).toBe('2025-06-16');
  });

  test('a stopgap is due at its own limit', () => {
    const stopgap = { id: 'g', machineId: 'm0', code: 'weld-deck', title: 'Deck weld', madeOn: '2025-06-13' };
    const limits = { limitHours: 30, limitOn: '2025-12-01', failureCents: 40000 };
    const due = dueOf(anItem({}), null, { items: [], stopgaps: [{ ...stopgap, ...limits }] });
    expect(due.kind).toBe('stopgap');
    expect(daysApart(due.p50, '2025-06-23')).toBeLessThanOrEqual(1);
    expect(due.timingCostCents[0]).toBe(0);
    expect(due.timingCostCents[27]!).toBeGreaterThan(10000);
  });

  test('a renewed stopgap is due at its new limit, counted from its renewal', () => {
    const stopgap = { id: 'g', machineId: 'm0', code: 'weld-deck', title: 'Deck weld', madeOn: '2025-05-13' };
    const limits = { limitHours: 30, limitOn: null, failureCents: 40000 };
    const renewed = { ...stopgap, ...limits, renewedOn: '2025-06-13' };
    const due = dueOf(anItem({}), null, { items: [], stopgaps: [renewed] });
    expect(daysApart(due.p50, '2025-06-23')).toBeLessThanOrEqual(1);
    expect(due.why.sentence).toMatch(/^Deck weld: temporary repair renewed 13 Jun at /);
  });
});

test('one sentence says since when, which rule, and so which day', () => {
  const { sentence } = dueOf(anItem({ hours: 40 }), '2025-06-08').why;
  expect(sentence).toMatch(
    /^Blades: last done 8 Jun at 2985\.0 h, every 40 h: due at 3025\.0 h; at about 21 h a week that is \w{3} 2\d Jun( \(between .*\))?\.$/,
  );
});

describe('work that stands in a visit to come', () => {
  const visit = { machineId: 'm0', code: 'sharpen-blades', slot: null, on: '2025-06-18' };
  const item = anItem({ hours: 40 });

  test('counts as done there, at the hours by then', () => {
    const due = dueOf(item, '2025-06-02', { planned: [visit] });
    const reached = 3000 + PER_DAY * 5;
    expect(due.why.lastCompletion).toMatchObject({ on: visit.on, code: 'sharpen-blades' });
    expect(Math.abs(due.why.dueAtHours! - reached - 40)).toBeLessThan(2);
    expect(daysApart(due.p50, '2025-07-01')).toBeLessThanOrEqual(1);
    expect(due.why.sentence).toMatch(
      /^Blades: to be done 18 Jun at about 301\d\.\d h, every 40 h: due at 305\d\.\d h; /,
    );
    expect(daysApart(dueOf(item, '2025-06-02').p50, '2025-06-15')).toBeLessThanOrEqual(1);
  });

  test('also today, whatever was found before, and when it resets the item by another code', () => {
    const finding = { machineId: 'm0', code: 'sharpen-blades', slot: null, foundOn: '2025-06-12' };
    const found = { ...finding, intervalFactor: null, dueWithinHours: null, dueWithinDays: 3 };
    const more = { findings: [found], planned: [{ ...visit, on: AS_OF, code: 'replace-blades' }] };
    const due = dueOf(anItem({ hours: 40 }, { resetBy: ['replace-blades'] }), '2025-06-02', more);
    expect(due.why).toMatchObject({ isPlanned: true, decidedBy: 'hours' });
    expect(daysApart(due.p50, '2025-06-26')).toBeLessThanOrEqual(1);
  });

  test('is that of the last such visit, and of no other machine or work', () => {
    const planned = [{ ...visit, on: '2025-06-16' }, visit, { ...visit, machineId: 'm1', on: '2025-06-20' }];
    const other = { ...visit, code: 'grease-spindles', on: '2025-06-19' };
    expect(dueOf(item, '2025-06-02', { planned: [...planned, other] }).why.lastCompletion?.on).toBe(visit.on);
  });
});

test('timing cost is least about the due day and rises on both sides', () => {
  const { timingCostCents, probabilityOverdue, p50, deferralCents } = dueOf(anItem({ hours: 60 }), '2025-06-08');
  const best = timingCostCents.indexOf(Math.min(...timingCostCents));
  expect(daysApart(p50, dateOfDay(ORIGIN + 1 + best))).toBeLessThanOrEqual(2);
  expect(timingCostCents[best]!).toBeLessThan(100);
  expect(timingCostCents[0]!).toBeGreaterThan(timingCostCents[best]!);
  expect(timingCostCents[27]!).toBeGreaterThan(timingCostCents[best]!);
  expect(deferralCents).toBeGreaterThanOrEqual(timingCostCents[27]!);
  expect([...probabilityOverdue].sort((a, b) => a - b)).toEqual(probabilityOverdue);
});

test('a machine that was never done is due now, at a finite price', () => {
  const economics = { doCents: 3000, failureCents: 20000, hazardShape: 6, latePenaltyCentsPerDay: 500 };
  const due = dueOf(anItem({ hours: 25, days: 30 }, { economics }), null);
  expect(due.p50! <= AS_OF).toBe(true);
  for (const cents of [...due.timingCostCents, due.deferralCents]) {
    expect(Number.isInteger(cents)).toBe(true);
    expect(cents).toBeLessThanOrEqual(3000 + 20000 + 60 * 500);
  }
  expect(due.why.sentence).toContain('never recorded as done');
});

test('hours added never make an item due later', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 10, max: 300 }), (added, interval) => {
      const last = FORECAST.machines.get('m0')!;
      const mark = last.usage.knownHours - 100 + interval;
      const due = (hours: number) => last.dayReaching(mark - hours, 0.5) ?? Number.POSITIVE_INFINITY;
      expect(due(added)).toBeLessThanOrEqual(due(0));
    }),
    { seed: 3, numRuns: 100 },
  );
});

test('the order of everything in the snapshot does not matter', () => {
  const items = [anItem({ hours: 60 }), anItem({ days: 40 }, { id: 'j', machineId: 'm3' })];
  const completions = ['2025-05-01', '2025-06-08'].map((doneOn) => ({
    machineId: 'm0',
    code: 'sharpen-blades',
    slot: null,
    doneOn,
    meterHours: null,
    outcome: 'done' as const,
  }));
  const snapshot = {
    usage: USAGE,
    items,
    completions,
    findings: [],
    stopgaps: [],
    costFrom: '2025-06-14',
    costDays: 7,
  };
  const turned = {
    ...snapshot,
    usage: { ...USAGE, readings: [...USAGE.readings].reverse() },
    completions: [...completions].reverse(),
  };
  expect(forecastDue(turned)).toEqual(forecastDue(snapshot));
});

test('a machine without readings gets a forecast, an unknown one is left out', () => {
  const usage = { ...USAGE, readings: [] };
  const items = [anItem({ hours: 60, days: 30, seasonEvent: 'before-storage' }), anItem({}, { machineId: 'gone' })];
  const due = forecastDue({
    usage,
    items,
    completions: [],
    findings: [],
    stopgaps: [],
    costFrom: '2025-06-14',
    costDays: 7,
  });
  expect(due).toHaveLength(1);
  for (const value of [...due[0]!.timingCostCents, ...due[0]!.probabilityOverdue, due[0]!.deferralCents]) {
    expect(Number.isFinite(value)).toBe(true);
  }
});
