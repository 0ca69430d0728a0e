import { describe, expect, it } from '@jest/globals';
import { piecesOf } from '../test-support/a-register-folder.js';
import * as column from './columns.js';
import { describeFault, FaultList } from './fault.js';
import { readTable } from './read-table.js';

const COLUMNS = {
  part_id: column.identifier(),
  description: column.text(),
  on_hand: column.number({ min: 0, max: 99, unit: 'pieces' }),
  time_zone: column.mayLack(column.timeZone()),
};

async function read(content: string | Uint8Array, pieceBytes?: number) {
  const faults = new FaultList();
  const rows: [number, string, string, number][] = [];
  const isWhole = await readTable('parts.csv', piecesOf(content, pieceBytes), COLUMNS, faults, (row, line) =>
    rows.push([line, row.part_id, row.description, row.on_hand]),
  );
  return { rows, faults: faults.kept.map(describeFault), isWhole };
}

const TWO_ROWS = [
  [2, 'P1', 'belt', 2],
  [3, 'P2', 'blade', 4],
];

describe('readTable', () => {
  it.each([
    ['plain', 'part_id,description,on_hand\nP1,belt,2\nP2,blade,4\n'],
    ['without a last line end', 'part_id,description,on_hand\nP1,belt,2\nP2,blade,4'],
    ['CRLF', 'part_id,description,on_hand\r\nP1,belt,2\r\nP2,blade,4\r\n'],
    ['CR', 'part_id,description,on_hand\rP1,belt,2\rP2,blade,4\r'],
    ['mixed line ends', 'part_id,description,on_hand\r\nP1,belt,2\nP2,blade,4\r\n'],
    ['byte order mark', '\ufeffpart_id,description,on_hand\nP1,belt,2\nP2,blade,4\n'],
    ['byte order mark and CRLF', '\ufeffpart_id,description,on_hand\r\nP1,belt,2\r\nP2,blade,4\r\n'],
    ['other column order', 'on_hand,part_id,description\n2,P1,belt\n4,P2,blade\n'],
    ['blanks around cells', 'part_id , description,on_hand\n P1,belt ,2\nP2, blade, 4 \n'],
    ['optional column', 'part_id,time_zone,description,on_hand\nP1,,belt,2\nP2,America/Denver,blade,4\n'],
  ])('reads a table: %s', async (_name, content) => {
    for (const pieceBytes of [1, 7, 65_536]) {
      expect(await read(content, pieceBytes)).toEqual({ rows: TWO_ROWS, faults: [], isWhole: true });
    }
  });

  it('reads quoted cells with commas, quotes and line ends; a row is named by its last line', async () => {
    const { rows, faults } = await read('part_id,description,on_hand\nP1,"belt, ""B"" section",2\nP2,"two\nlines",4\n');
    expect(faults).toEqual([]);
    expect(rows).toEqual([
      [2, 'P1', 'belt, "B" section', 2],
      [4, 'P2', 'two\nlines', 4],
    ]);
  });

  it('counts empty lines but skips them', async () => {
    const { rows } = await read('part_id,description,on_hand\n\nP1,belt,2\n\n\nP2,blade,4\n');
    expect(rows.map(([line]) => line)).toEqual([3, 6]);
  });

  it('goes on after a faulty row and names every faulty cell', async () => {
    const { rows, faults, isWhole } = await read(
      'part_id,description,on_hand\nP 1,belt,many\nP2,blade,4\nP3,oil\nP4,oil,1,2\n',
    );
    expect(rows).toEqual([[3, 'P2', 'blade', 4]]);
    expect(faults).toEqual([
      'parts.csv, line 2, column part_id: "P 1" is not an identifier: letters, digits and . _ / - only, at most 64',
      'parts.csv, line 2, column on_hand: "many" is not a number: write it like 412.6 (pieces), with a point and no thousands mark',
      'parts.csv, line 4: has 2 cells where the header has 3: look for a missing comma or quote',
      'parts.csv, line 5: has 4 cells where the header has 3: look for a missing comma or quote',
    ]);
    expect(isWhole).toBe(true);
  });

  it('hands out what can be read of a faulty row', async () => {
    const seen: string[] = [];
    await readTable(
      'parts.csv',
      piecesOf('description,part_id,on_hand\nbelt,P1,many\nblade,P2,4\noil,P3\n'),
      COLUMNS,
      new FaultList(),
      () => {},
      (cell) => seen.push(cell('part_id')),
    );
    expect(seen).toEqual(['P1', 'P3']);
  });

  it.each<[string, string | Uint8Array, string[]]>([
    ['empty', '', ['parts.csv: is empty: its first line must be part_id,description,on_hand']],
    ['only a byte order mark', '\ufeff', ['parts.csv: is empty: its first line must be part_id,description,on_hand']],
    [
      'no such column',
      'part_id,on_hand\nP1,2\n',
      [
        'parts.csv, line 1, column description: the header lacks it; the first line must be part_id,description,on_hand',
      ],
    ],
    [
      'unknown column',
      'part_id,description,on_hand,colour\n',
      [
        'parts.csv, line 1, column colour: is not known; the columns are part_id, description, on_hand, time_zone: rename or remove it',
      ],
    ],
    [
      'column twice',
      'part_id,description,on_hand,description\n',
      ['parts.csv, line 1, column description: stands twice in the header: remove one'],
    ],
    [
      'quote never closed',
      'part_id,description,on_hand\n"P1,belt,2\nP2,blade,4\nP3,oil,1\n',
      ['parts.csv, line 2: a quoted cell is never closed: add the missing quote'],
    ],
    [
      'quote inside a cell',
      'part_id,description,on_hand\nP1,belt 5",2\n',
      ['parts.csv, line 2: a quote stands inside a cell: double it ("") or remove it'],
    ],
    [
      'text after a closing quote',
      'part_id,description,on_hand\nP1,"belt"5,2\n',
      ['parts.csv, line 2: a quote stands inside a cell: double it ("") or remove it'],
    ],
    [
      'endless row',
      `part_id,description,on_hand\nP1,${'x'.repeat(300_000)},2\n`,
      ['parts.csv, line 2: is longer than 65536 characters: look for a quote that is never closed'],
    ],
    [
      'NUL bytes',
      'part_id,description,on_hand\nP1,be\0lt,2\n',
      ['parts.csv, line 2: is not a text file (it holds NUL bytes): save it as CSV, encoded in UTF-8'],
    ],
    [
      'Latin-1',
      Uint8Array.from([...new TextEncoder().encode('part_id,description,on_hand\nP1,gr'), 0xfc, 0x6e, 0x2c, 0x32, 10]),
      ['parts.csv, line 2: is not UTF-8: save the file again as CSV with encoding UTF-8'],
    ],
  ])('cannot use a file: %s', async (_name, content, expected) => {
    const { rows, faults, isWhole } = await read(content);
    expect(faults).toEqual(expected);
    expect(rows).toEqual([]);
    expect(isWhole).toBe(false);
  });

  it('keeps 200 faults and counts the rest', async () => {
    const faults = new FaultList();
    const content = `part_id,description,on_hand\n${'P1,belt,many\n'.repeat(5000)}`;
    await readTable('parts.csv', piecesOf(content), COLUMNS, faults, () => {});
    expect([faults.kept.length, faults.total]).toEqual([200, 5000]);
  });
});
