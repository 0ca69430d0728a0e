import { describe, expect, it } from '@jest/globals';
import { inUse } from './in-use.js';
import { aMachine, aRegister } from './test-support/a-register.js';

const reading = (machineId: string) => ({
  ...{ id: `r${machineId}`, machineId, readAt: '2014-06-01T08:00:00' },
  ...{ hours: 10, source: 'technician' },
});

describe('inUse', () => {
  it('leaves out machines from the day on which they were retired, with all that hangs on them', () => {
    const register = aRegister({
      machines: [aMachine(), aMachine({ id: 'M2', retiredOn: '2014-06-16' })],
      readings: [reading('M1'), reading('M2')],
    });
    expect(inUse(register, '2014-06-15')).toEqual(register);
    for (const day of ['2014-06-16', '2014-06-17']) {
      const left = inUse(register, day);
      expect(left.machines.map((machine) => machine.id)).toEqual(['M1']);
      expect(left.readings.map((each) => each.machineId)).toEqual(['M1']);
    }
  });
});
