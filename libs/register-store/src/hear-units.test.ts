import { describe, expect, it } from '@jest/globals';
import { matchOf } from './hear-units.js';

const machine = (id: string, code: string, serial: string | null, maker: string | null = null) => ({
  ...{ id, code, serial, maker },
});
const unit = (
  serial: string | null,
  equipmentId: string | null = null,
  maker: string | null = 'Greenline',
  pin = null,
) => ({
  ...{ serial, equipmentId, maker, pin },
});

describe('a unit is matched', () => {
  const fleet = [
    machine('a', 'M1', 'X1', 'Greenline'),
    machine('b', 'M2', 'X1', 'Otherway'),
    machine('c', 'M3', 'X3'),
    machine('d', 'M4', 'X4', 'Otherway'),
    machine('e', 'M5', null),
    machine('f', 'M6', 'X6'),
    machine('g', 'M7', 'X6'),
  ];
  it.each([
    ['by maker and serial number', unit('x1'), { machineId: 'a', by: 'serial' }],
    ['not by a serial number that two makers gave', unit('X1', null, 'Third'), null],
    ['by a serial number that only one has', unit(' X3 '), { machineId: 'c', by: 'serial' }],
    ['… whatever its maker is called', unit('X4'), { machineId: 'd', by: 'serial' }],
    ['not by a serial number that stands twice', unit('X6'), null],
    ['by the shop’s own code', unit('Y5', 'm5'), { machineId: 'e', by: 'label' }],
    ['not by a code against another serial number', unit('Y3', 'M3'), null],
    ['by a code when it has no serial number', unit(null, 'M3'), { machineId: 'c', by: 'label' }],
    ['with nothing when nothing fits', unit('Z', 'Z'), null],
  ])('%s', (_, heard, match) => expect(matchOf(heard, fleet)).toEqual(match));
});
