import { UpkeepSnapshot } from '@deckround/upkeep';
import { describe, expect, it } from '@jest/globals';
import type { Register } from '../register.js';
import { aCompletion, aMachine, anItem, aPart, aRegister, aStopgap, aTechnician } from '../test-support/a-register.js';
import { upkeepSnapshot } from './upkeep-snapshot.js';

const SPAN = { asOf: '2014-06-15', costFrom: '2014-06-16', costDays: 7 };

const withItem = (item: ReturnType<typeof anItem>, more: Partial<Register> = {}) =>
  aRegister({ ...more, classes: [{ ...aRegister().classes[0]!, items: [item] }] });
const itemOf = (register: Register) => upkeepSnapshot(register, SPAN).items[0]!;

describe('upkeepSnapshot', () => {
  it('is a document that the forecaster accepts', () => {
    const register = aRegister({ completions: [aCompletion()], stopgaps: [aStopgap()] });
    const snapshot = upkeepSnapshot(register, SPAN);
    expect(UpkeepSnapshot.parse(snapshot)).toEqual(snapshot);
    expect(snapshot.usage).toMatchObject({ asOf: SPAN.asOf, horizonDays: 68 });
  });

  it("replaces the class's interval by the machine's, and hands the severity on unmixed", () => {
    const register = aRegister({
      machines: [aMachine({ severity: 'severe' }), aMachine({ id: 'M2' })],
      overrides: [
        {
          machineId: 'M1',
          itemId: 'replace-belt',
          disabled: false,
          intervalHours: 40,
          intervalDays: 90,
          minutes: null,
        },
      ],
    });
    const [changed, other] = upkeepSnapshot(register, SPAN).items;
    expect(changed).toMatchObject({ severity: 'severe', rule: { hours: 40, days: 90, severeFactor: 0.7 } });
    expect(other).toMatchObject({ severity: 'normal', rule: { hours: 100, days: null } });
  });

  it('prices doing it: labour at the mean wage, and parts at cost', () => {
    const register = aRegister({
      technicians: [aTechnician(), aTechnician({ id: 'T2', wageCentsPerHour: 4000 })],
      parts: [aPart({ unitCostCents: 3300 })],
    });
    expect(itemOf(register).economics.doCents).toBe(35 * 50 + 3300);
  });

  describe('assumes a share of the interval as used up', () => {
    it('when nothing is on record', () => {
      const { assumedShare } = itemOf(aRegister());
      expect(assumedShare).toBeGreaterThanOrEqual(0);
      expect(assumedShare).toBeLessThan(0.9);
    });

    it('the same for the same machine and work whenever it is asked, differing among machines', () => {
      const machines = Array.from({ length: 200 }, (_, i) => aMachine({ id: `M${i}` }));
      const shares = upkeepSnapshot(aRegister({ machines }), SPAN).items.map((item) => item.assumedShare!);
      expect(upkeepSnapshot(aRegister({ machines }), SPAN).items.map((item) => item.assumedShare)).toEqual(shares);
      const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
      expect(Math.abs(mean - 0.45)).toBeLessThan(0.08);
      expect(new Set(shares).size).toBeGreaterThan(190);
    });

    it.each<[string, Register]>([
      ['a completion', aRegister({ completions: [aCompletion()] })],
      [
        'a completion of work that resets it',
        withItem(anItem({ resetBy: ['rebuild-deck'] }), { completions: [aCompletion({ code: 'rebuild-deck' })] }),
      ],
      [
        "a completion in the item's slot",
        withItem(anItem({ scope: 'spindle' }), { completions: [aCompletion({ slot: 'spindle 1' })] }),
      ],
      [
        'a completion on the whole machine',
        withItem(anItem({ scope: 'spindle' }), { completions: [aCompletion({ slot: null })] }),
      ],
      ['a machine new this spring', aRegister({ machines: [aMachine({ inServiceOn: '2014-05-01' })] })],
      [
        'a rule that follows the season',
        withItem(anItem({ rule: { ...anItem().rule, seasonEvent: 'before-storage' } })),
      ],
    ])('but not with %s', (_name, register) => {
      expect(itemOf(register).assumedShare).toBeNull();
    });

    it.each<[string, Register]>([
      ["another machine's completion", aRegister({ completions: [aCompletion({ machineId: 'M2' })] })],
      [
        "another slot's completion",
        withItem(anItem({ scope: 'spindle' }), { completions: [aCompletion({ slot: 'spindle 2' })] }),
      ],
      ['a machine of unknown age', aRegister({ machines: [aMachine({ inServiceOn: null })] })],
    ])('also beside %s', (_name, register) => {
      expect(itemOf(register).assumedShare).not.toBeNull();
    });
  });

  it('keeps the first-service rule only where the machine is known from its beginning', () => {
    const item = anItem({ rule: { ...anItem().rule, firstHours: 8 } });
    expect(itemOf(withItem(item)).rule.firstHours).toBeNull();
    expect(itemOf(withItem(item, { machines: [aMachine({ inServiceOn: '2014-05-20' })] })).rule.firstHours).toBe(8);
  });

  it('leaves out what was done or found after the day of the forecast', () => {
    const finding = {
      machineId: 'M1',
      code: 'replace-belt',
      slot: null,
      intervalFactor: 0.5,
      dueWithinHours: null,
      dueWithinDays: null,
    };
    const snapshot = upkeepSnapshot(
      aRegister({
        completions: [aCompletion({ doneOn: '2014-06-15' }), aCompletion({ doneOn: '2014-06-16' })],
        findings: [
          { ...finding, foundOn: '2014-06-15' },
          { ...finding, foundOn: '2014-06-16' },
        ],
      }),
      SPAN,
    );
    expect(snapshot.completions.map((each) => each.doneOn)).toEqual(['2014-06-15']);
    expect(snapshot.findings.map((each) => each.foundOn)).toEqual(['2014-06-15']);
  });

  it('takes a completion after the day of the forecast for unknown', () => {
    expect(itemOf(aRegister({ completions: [aCompletion({ doneOn: '2014-06-16' })] })).assumedShare).not.toBeNull();
  });
});
