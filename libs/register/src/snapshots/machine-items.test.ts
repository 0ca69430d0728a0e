import { itemsOfClass } from '@deckround/catalogue';
import { describe, expect, it } from '@jest/globals';
import { starterClasses } from '../shop-defaults.js';
import { aMachine, anItem, aPart, aRegister } from '../test-support/a-register.js';
import { machineItemId, machineItems } from './machine-items.js';

const withItem = (item: ReturnType<typeof anItem>, more: Parameters<typeof aRegister>[0] = {}) =>
  aRegister({ ...more, classes: [{ ...aRegister().classes[0]!, items: [item] }] });

describe('machineItems', () => {
  it('names work by machine, kind and slot', () => {
    expect(machineItemId('M1', 'replace-belt', null)).toBe('M1/replace-belt');
    expect(machineItemId('M1', 'replace-bearings', 'spindle 2')).toBe('M1/replace-bearings/spindle 2');
  });

  it('gives spindle work once for each spindle, none to a machine without', () => {
    const item = anItem({ scope: 'spindle', title: 'Replace bearings' });
    const register = withItem(item, {
      machines: [aMachine({ spindles: 2 }), aMachine({ id: 'M2', spindles: 0 })],
    });
    expect(machineItems(register).map(({ machine, slot, title }) => [machine.id, slot, title])).toEqual([
      ['M1', 'spindle 1', 'Replace bearings, spindle 1'],
      ['M1', 'spindle 2', 'Replace bearings, spindle 2'],
    ]);
  });

  it('multiplies minutes, parts and consumables by the spindles where they count per spindle', () => {
    const item = anItem({
      minutes: 10,
      minutesPerSpindle: 4,
      parts: [
        { code: 'BLT-DECK', quantity: 1, perSpindle: false },
        { code: 'BLADE', quantity: 1, perSpindle: true },
        { code: 'NOT-IN-STOCK-LIST', quantity: 1, perSpindle: false },
      ],
      consumables: [
        { name: 'grease', quantity: 0.1, unit: 'l', perSpindle: true },
        { name: 'rag', quantity: 1, unit: 'each', perSpindle: false },
      ],
    });
    const register = withItem(item, { parts: [aPart(), aPart({ id: 'P2', code: 'BLADE' })] });
    expect(machineItems(register)[0]).toMatchObject({
      minutes: 22,
      parts: [
        { partId: 'P1', quantity: 1 },
        { partId: 'P2', quantity: 3 },
      ],
      consumables: [
        { name: 'grease', quantity: 0.3, unit: 'l' },
        { name: 'rag', quantity: 1, unit: 'each' },
      ],
    });
  });

  it("lets a machine's override change minutes or leave the work out, on that machine only", () => {
    const register = aRegister({
      machines: ['M1', 'M2', 'M3'].map((id) => aMachine({ id })),
      overrides: [
        {
          machineId: 'M1',
          itemId: 'replace-belt',
          disabled: true,
          intervalHours: null,
          intervalDays: null,
          minutes: null,
        },
        {
          machineId: 'M2',
          itemId: 'replace-belt',
          disabled: false,
          intervalHours: null,
          intervalDays: null,
          minutes: 55,
        },
      ],
    });
    expect(machineItems(register).map(({ id, minutes }) => [id, minutes])).toEqual([
      ['M2/replace-belt', 55],
      ['M3/replace-belt', 30],
    ]);
  });

  it('gives a machine of the starter catalogue every item of its class', () => {
    const register = aRegister({ classes: starterClasses() });
    expect(new Set(machineItems(register).map((each) => each.item.code))).toEqual(
      new Set(itemsOfClass('zero-turn').map((item) => item.code)),
    );
  });
});
