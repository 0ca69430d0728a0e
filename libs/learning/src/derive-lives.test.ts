import { describe, expect, it } from '@jest/globals';
import { starterClasses } from '../../register/src/shop-defaults.js';
import { aMachine, aPart, aRegister } from '../../register/src/test-support/a-register.js';
import { findingsOf } from './component-life.js';
import { completionKey, deriveLives } from './derive-lives.js';
import { learnItems } from './learn-items.js';
import { selectLives, toGraded, toSample } from './life-group.js';
import { machineRecords } from './machine-records.js';

const BEARINGS = 'replace-spindle-bearings';

/** A machine read on the first of each month, 10 h a month from 800 h on. */
function register(
  changes: { date: string; hours: number; outcome?: 'done' | 'failed'; part?: string; slot?: string }[],
  more: Parameters<typeof aRegister>[0] = {},
) {
  return aRegister({
    classes: starterClasses(),
    machines: [aMachine({ spindles: 2 })],
    parts: [aPart({ id: 'A', code: 'A' }), aPart({ id: 'B', code: 'B' })],
    readings: Array.from({ length: 12 }, (_, i) => ({
      id: `r${i}`,
      machineId: 'M1',
      readAt: `2025-${String(i + 1).padStart(2, '0')}-01T12:00:00`,
      hours: 800 + 10 * i,
      source: 'technician' as const,
    })),
    completions: changes.map((each) => ({
      machineId: 'M1',
      code: BEARINGS,
      slot: each.slot ?? 'spindle 1',
      doneOn: each.date,
      meterHours: each.hours,
      outcome: each.outcome ?? 'failed',
      part: each.part ?? 'A',
    })),
    ...more,
  });
}

const ofFirstSpindle = (lives: ReturnType<typeof deriveLives>) =>
  selectLives(lives, { itemCode: BEARINGS, slot: 'spindle 1' });

describe('component lives', () => {
  it('a machine taken on at 800 h: its first part is as old as it, watched from 800 h, and of no known grade', () => {
    const lives = deriveLives(register([{ date: '2025-04-01', hours: 830 }]), '2025-12-31');
    const [first, second] = ofFirstSpindle(lives);
    expect(first).toMatchObject({ part: null, entryHours: 800, ageHours: 830, reason: 'failed', fittingKnown: false });
    expect(second).toMatchObject({ part: 'A', entryHours: 0, ageHours: 80, reason: null, fittedOn: '2025-04-01' });
    const other = selectLives(lives, { itemCode: BEARINGS, slot: 'spindle 2' });
    expect(other).toHaveLength(1);
    expect(other[0]).toMatchObject({ entryHours: 800, ageHours: 910, reason: null });
    expect(toGraded(lives).map((each) => each.grade)).toEqual(['A']);
  });

  it('planned work ends a life without failure; another part is an upgrade', () => {
    const lives = ofFirstSpindle(
      deriveLives(
        register([
          { date: '2025-03-01', hours: 820 },
          { date: '2025-06-01', hours: 850, outcome: 'done' },
          { date: '2025-09-01', hours: 880, outcome: 'done', part: 'B' },
        ]),
        '2025-12-31',
      ),
    );
    expect(lives.map((each) => each.reason)).toEqual(['failed', 'preventive', 'upgrade', null]);
    expect(lives.map((each) => each.ageHours)).toEqual([820, 30, 30, 30]);
  });

  it('hours run on across a meter change', () => {
    const changed = register([{ date: '2025-10-01', hours: 20 }], {
      readings: [
        ...Array.from({ length: 6 }, (_, i) => ({ at: `2025-0${i + 1}-01`, hours: 800 + 10 * i })),
        ...Array.from({ length: 6 }, (_, i) => ({ at: `2025-${String(i + 7).padStart(2, '0')}-02`, hours: 10 * i })),
      ].map((each, i) => ({
        id: `r${i}`,
        machineId: 'M1',
        readAt: `${each.at}T12:00:00`,
        hours: each.hours,
        source: 'technician' as const,
      })),
      meterChanges: [{ machineId: 'M1', changedAt: '2025-07-01', oldHours: 860, newHours: 0 }],
    });
    const [first, second] = ofFirstSpindle(deriveLives(changed, '2025-12-31'));
    expect(first!.ageHours).toBeCloseTo(880, 6);
    expect(second!.ageHours).toBeCloseTo(30, 6);
  });

  it('a shared cause counts as one failure; the other part was taken out whole', () => {
    const history = {
      causes: new Map([
        [completionKey('M1', BEARINGS, 'spindle 1', '2025-04-01'), 'wire'],
        [completionKey('M1', BEARINGS, 'spindle 2', '2025-04-01'), 'wire'],
      ]),
    };
    const two = register([
      { date: '2025-04-01', hours: 830 },
      { date: '2025-04-01', hours: 830, slot: 'spindle 2' },
    ]);
    const alone = toSample(selectLives(deriveLives(two, '2025-12-31'), { itemCode: BEARINGS }));
    const shared = toSample(selectLives(deriveLives(two, '2025-12-31', history), { itemCode: BEARINGS }));
    expect([alone.failures, shared.failures]).toEqual([2, 1]);
    expect(shared.lives).toBe(alone.lives);
  });

  it('findings of the day tell how the part looked', () => {
    const lives = ofFirstSpindle(
      deriveLives(register([{ date: '2025-04-01', hours: 830 }]), '2025-12-31', {
        findings: [
          {
            machineId: 'M1',
            itemCode: BEARINGS,
            slot: 'spindle 1',
            foundOn: '2025-04-01',
            findings: findingsOf({ 'bearing-feel': 'rough', 'debris-cup-missing': 'yes', 'grease-look': 'purple' }),
            rootCause: 'debris cup left off',
          },
        ],
      }),
    );
    expect(lives[0]).toMatchObject({
      findings: { bearingFeel: 'rough', debrisCupMissing: true, greaseLook: null },
      rootCause: 'debris cup left off',
    });
  });

  it('a part that needed a temporary repair failed then, whatever its replacement is recorded as', () => {
    const belt = { machineId: 'M1', code: 'make-good', part: 'BLT-DECK', madeOn: '2025-05-01' };
    const withBelt = (more: object[]) =>
      selectLives(
        deriveLives(
          register([], {
            completions: more.map((each) => ({
              machineId: 'M1',
              code: 'replace-deck-belt',
              slot: null,
              outcome: 'done' as const,
              part: 'BLT-DECK',
              doneOn: '',
              meterHours: null,
              ...each,
            })),
          }),
          '2025-12-31',
          { stopgaps: [belt] },
        ),
        { itemCode: 'replace-deck-belt' },
      );
    expect(withBelt([]).map((each) => [each.reason, each.ageHours])).toEqual([['failed', 840]]);
    const made = withBelt([
      { doneOn: '2025-02-01', meterHours: 810 },
      { doneOn: '2025-06-01', meterHours: 850 },
    ]);
    expect(made.map((each) => each.reason)).toEqual(['preventive', 'failed', null]);
    expect(made.map((each) => Math.round(each.ageHours))).toEqual([810, 30, 60]);
  });

  it('a machine out of use ends its lives whole', () => {
    const lives = ofFirstSpindle(
      deriveLives(
        register([{ date: '2025-04-01', hours: 830 }], {
          machines: [aMachine({ spindles: 2, retiredOn: '2025-11-01' })],
        }),
        '2025-12-31',
      ),
    );
    expect(lives.at(-1)).toMatchObject({ reason: 'machine-retired', removedOn: '2025-11-01', ageHours: 70 });
  });

  it('lives entered by hand take the place of derived ones', () => {
    const recorded = {
      machineId: 'M1',
      slot: 'spindle 1',
      itemCode: BEARINGS,
      part: 'B',
      fittedOn: '2025-02-01',
      fittedHours: 810,
      removedOn: '2025-05-01',
      removedHours: 840,
      reason: 'failed' as const,
      findings: findingsOf({}),
      rootCause: null,
      causeId: null,
    };
    const lives = ofFirstSpindle(
      deriveLives(register([{ date: '2025-04-01', hours: 830 }]), '2025-12-31', { recorded: [recorded] }),
    );
    expect(lives).toHaveLength(1);
    expect(lives[0]).toMatchObject({ part: 'B', ageHours: 30, reason: 'failed', fittingKnown: true });
  });

  it('nothing after the day asked about counts; a machine without readings has no lives', () => {
    const early = ofFirstSpindle(deriveLives(register([{ date: '2025-04-01', hours: 830 }]), '2025-03-15'));
    expect(early).toHaveLength(1);
    expect(early[0]).toMatchObject({ reason: null, ageHours: 820 });
    expect(deriveLives(register([], { readings: [] }), '2025-12-31')).toEqual([]);
  });
});

describe('what is learned from little', () => {
  it('without a failure the stated prior speaks and says so, and nothing is proposed', () => {
    const quiet = register([]);
    const { learned, proposals } = learnItems(quiet, deriveLives(quiet, '2025-12-31'));
    expect(proposals).toEqual([]);
    expect(learned.length).toBeGreaterThan(0);
    for (const each of learned) {
      expect(each.basis).toBe('prior');
      expect(each.words).toMatch(/assumed before/);
      expect(Number.isFinite(each.shape) && Number.isFinite(each.scaleHours)).toBe(true);
    }
  });

  it('a machine with few repairs has no trend, and says so', () => {
    const [record] = machineRecords(register([{ date: '2025-04-01', hours: 830 }]), '2025-12-31');
    expect(record).toMatchObject({ fromHours: 800, toHours: 910 });
    expect(record!.repairs).toHaveLength(1);
    expect(record!.trend.words).toBe('1 repair is too few to see a trend.');
  });
});
