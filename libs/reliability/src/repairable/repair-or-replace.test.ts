import { expect, it } from '@jest/globals';
import { type RepairOrReplaceCase, repairOrReplace } from './repair-or-replace.js';

function aCase(changes: Partial<RepairOrReplaceCase> = {}): RepairOrReplaceCase {
  return {
    hours: 2000,
    hoursNextYear: 250,
    repairs: 10,
    repairCost: 5000,
    watchedHours: 1000,
    usualRepairCost: 500,
    wearExponent: 1,
    newPrice: 12_000,
    resaleNow: 2000,
    resaleInAYear: 1500,
    newLifeHours: 3000,
    newRepairCostPerHour: 1,
    newResaleShare: 0,
    ...changes,
  };
}

it('keeping costs repairs and the drop in resale; without wear-out repairs go on at their rate', () => {
  const advice = repairOrReplace(aCase())!;
  // 10 repairs of 500 in 1,000 h: 2.5 in 250 h, 1,250; drop 500; 1,750 in 250 h.
  expect(advice.expectedRepairsNextYear).toBeCloseTo(1250, 9);
  expect(advice.keepPerHour).toBeCloseTo(7, 9);
  expect(advice.replacePerHour).toBeCloseTo(5, 9);
  expect(advice.breakEvenRepairsNextYear).toBeCloseTo(750, 9);
});

it('at the break-even the two cost the same', () => {
  const { breakEvenRepairsNextYear } = repairOrReplace(aCase())!;
  const at = repairOrReplace(aCase({ repairCost: (breakEvenRepairsNextYear * 1000) / 250 }))!;
  expect(at.keepPerHour).toBeCloseTo(at.replacePerHour, 9);
  expect(at.verdict).toBe('cannot-tell');
});

it('is sure only where the whole interval lies on one side', () => {
  expect(repairOrReplace(aCase({ repairCost: 40_000 }))!.verdict).toBe('replace');
  expect(repairOrReplace(aCase({ repairCost: 200 }))!.verdict).toBe('keep');
  expect(repairOrReplace(aCase({ repairs: 1, repairCost: 500 }))!.verdict).toBe('keep');
});

it('wear-out raises what is to come: β = 2 from 1,000 to 2,000 h gives 2.125/3 of the past in the next 250 h', () => {
  const steady = repairOrReplace(aCase())!;
  const worn = repairOrReplace(aCase({ wearExponent: 2 }))!;
  expect(worn.expectedRepairsNextYear).toBeCloseTo(5000 * ((2250 ** 2 - 2000 ** 2) / (2000 ** 2 - 1000 ** 2)), 6);
  expect(worn.expectedRepairsNextYear).toBeGreaterThan(steady.expectedRepairsNextYear);
});

it('says nothing of a machine never watched, and knows zero repairs', () => {
  expect(repairOrReplace(aCase({ watchedHours: 0 }))).toBeNull();
  const none = repairOrReplace(aCase({ repairs: 0, repairCost: 0 }))!;
  expect(none.expectedRepairsNextYear).toBe(0);
  // No repair so far does not mean none to come.
  expect(none.keepHigh).toBeGreaterThan(none.keepPerHour);
});
