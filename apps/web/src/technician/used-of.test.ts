import { expect, test } from '@jest/globals';
import type { KeptRecord } from '../offline/field-store.js';
import { isRecorded, usedOf } from './used-of.js';

const BELT = { partId: 'p1', name: 'belt' };

function recorded(state: KeptRecord['state'], quantity: string): KeptRecord {
  return {
    ...{ id: `${state} ${quantity}`, personId: 'a', at: '', visitId: null, machineId: 'm', about: '', state },
    fact: { kind: 'part-used', ...BELT, quantity },
  };
}

test('what the service refused is told apart from what waits to be sent, and is not counted as used', () => {
  const kept = [recorded('sent', '2'), recorded('waiting', '1'), recorded('refused', '4')];
  const { quantity, waiting, refused } = usedOf(BELT, kept);
  expect(quantity).toBe(3);
  expect([waiting, refused].map((records) => records.map(({ id }) => id))).toEqual([['waiting 1'], ['refused 4']]);
  expect(usedOf(BELT, [recorded('refused', '4')])).toMatchObject({ quantity: 0, waiting: [] });
  expect(isRecorded(BELT, [recorded('refused', '4')])).toBe(true);
  expect(isRecorded({ partId: 'p2', name: 'belt' }, kept)).toBe(false);
});

test('what is taken back is used no more, unless the service refused that', () => {
  const sent = recorded('sent', '2');
  const back = (state: KeptRecord['state']): KeptRecord => ({
    ...recorded(state, '2'),
    id: 'back',
    fact: { kind: 'part-taken-back', useId: sent.id, name: 'belt', quantity: '2', because: 'not-used' },
  });
  expect(isRecorded(BELT, [sent, back('waiting')])).toBe(false);
  expect(usedOf(BELT, [sent, recorded('sent', '1'), back('sent')]).quantity).toBe(1);
  expect(usedOf(BELT, [sent, back('refused')]).quantity).toBe(2);
});
