import { describe, expect, it } from '@jest/globals';
import * as column from './columns.js';

const hours = column.number({ min: 0, max: 999_999, unit: 'h' });

describe('columns', () => {
  it.each<[string, column.Column<unknown>, string, unknown]>([
    ['text', column.text(), '', ''],
    ['text', column.text({ required: true }), 'Grün, am Tor', 'Grün, am Tor'],
    ['text of several lines', column.text(), 'ring twice\nthen wait', 'ring twice\nthen wait'],
    ['identifier', column.identifier(), 'S-01/b_2.x', 'S-01/b_2.x'],
    ['identifier', column.identifier(), 'Größe7', 'Größe7'],
    ['number', hours, '412.6', 412.6],
    ['number', hours, '+0', 0],
    ['optional number', column.optionalNumber({ min: 0, max: 9, unit: 'h' }), '', null],
    ['optional number', column.optionalNumber({ min: 0, max: 9, unit: 'h' }), '9', 9],
    ['integer', column.integer({ min: 0, max: 365, unit: 'days' }), '30.0', 30],
    ['cents', column.cents(), '14.50', 1450],
    ['cents', column.cents(), '14.5', 1450],
    ['cents', column.cents(), '0.29', 29],
    ['cents', column.cents(), '7', 700],
    ['date', column.date(), '2012-02-29', '2012-02-29'],
    ['optional date', column.optionalDate(), '', null],
    ['date and time', column.localDateTime(), '2014-06-16T07:45:10', '2014-06-16T07:45:10'],
    ['date and time without seconds', column.localDateTime(), '2014-06-16 07:45', '2014-06-16T07:45:00'],
    ['yes or no', column.yesNo(), 'YES', true],
    ['yes or no', column.yesNo(), '', false],
    ['choice', column.oneOf(['done', 'failed'], 'done'), '', 'done'],
    ['choice', column.oneOf(['done', 'failed'], 'done'), 'Failed', 'failed'],
    ['windows', column.weeklyWindows(), 'Mon 07:00-08:00', [{ weekday: 1, startMinute: 420, endMinute: 480 }]],
    ['list', column.list(), ' Mechanical; ;electrical;', ['mechanical', 'electrical']],
    ['time zone', column.timeZone(), 'America/Denver', 'America/Denver'],
    ['column that may be missing', column.mayLack(column.timeZone()), 'America/Denver', 'America/Denver'],
    ['column that may be missing', column.mayLack(column.timeZone()), '', null],
  ])('%s reads its cell', (_name, { read }, cell, value) => {
    expect(read(cell)).toEqual(value);
  });

  it.each<[string, column.Column<unknown>, string, string]>([
    ['required text', column.text({ required: true }), '', 'fill it in'],
    ['text', column.text({ max: 3 }), 'four', 'at most 3 fit'],
    ['text', column.text(), 'bell\u0007', 'retype it as plain text'],
    ['identifier', column.identifier(), '', 'every row needs its identifier'],
    ['identifier', column.identifier(), 'M 1', 'letters, digits and . _ / - only'],
    ['identifier', column.identifier(), 'x'.repeat(65), 'at most 64'],
    ['number', hours, '', 'write it like 412.6 (h)'],
    ['number', hours, 'many', '"many" is not a number'],
    ['number', hours, '1,234.5', 'no thousands mark'],
    ['number', hours, '412,6', 'with a point'],
    ['number', hours, '1e3', 'is not a number'],
    ['number', hours, 'NaN', 'is not a number'],
    ['number', hours, '-5', 'outside 0 to 999999'],
    ['number', column.number({ min: -90, max: 90, unit: 'degrees' }), '412', '412 degrees is outside -90 to 90'],
    ['optional number', column.optionalNumber({ min: 0, max: 9, unit: 'h' }), '10', 'outside 0 to 9'],
    ['integer', column.integer({ min: 0, max: 365, unit: 'days' }), '1.5', 'a whole number of days'],
    ['cents', column.cents(), '$14.50', 'without a currency sign'],
    ['cents', column.cents(), '14.505', 'write it like 14.50'],
    ['cents', column.cents(), '-1', 'is not an amount'],
    ['cents', column.cents(1000), '1000.01', 'is above 1000'],
    ['date', column.date(), '2014-02-30', 'write it like 2014-06-16'],
    ['date', column.date(), '06/16/2014', 'write it like 2014-06-16'],
    ['date with a slipped year', column.date(), '0214-06-16', 'outside 1950 to 2100'],
    ['date with a slipped year', column.optionalDate(), '9014-06-16', 'outside 1950 to 2100'],
    ['date and time', column.localDateTime(), '2014-06-16', "the site's own clock"],
    ['date and time', column.localDateTime(), '2014-06-16T24:00', 'is not a date and time'],
    ['date and time', column.localDateTime(), '2014-02-30T07:45:00', 'is not a date and time'],
    ['date and time', column.localDateTime(), '2014-06-16T07:45:00Z', 'is not a date and time'],
    ['date and time', column.localDateTime(), '0014-06-16T07:45:00', 'outside 1950 to 2100'],
    ['yes or no', column.yesNo(), 'maybe', 'neither yes nor no'],
    ['choice', column.oneOf(['done', 'failed']), '', 'is not one of: done, failed'],
    ['windows', column.weeklyWindows(), 'always', 'write it like Mon-Fri 07:00-15:30'],
    ['time zone', column.timeZone(), 'Iowa', 'write it like America/Chicago'],
    ['time zone as an offset', column.timeZone(), '+05:00', 'write it like America/Chicago'],
  ])('%s refuses "%s"', (_name, { read }, cell, message) => {
    expect(() => read(cell)).toThrow(column.CellFault);
    expect(() => read(cell)).toThrow(message);
  });

  it('quotes only the beginning of a long cell', () => {
    expect(() => hours.read('9'.repeat(5000))).toThrow(/^.{0,200}$/);
  });
});
