import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { HeardUnit, SnapshotLink } from './heard-unit.js';
import { readSnapshot, type SnapshotFormat } from './read-snapshot.js';

async function* pieces(text: string | Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  const bytes = Buffer.from(text as string);
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
}

async function read(text: string | Uint8Array, format: SnapshotFormat, size = 65_536) {
  const units: HeardUnit[] = [];
  const links: SnapshotLink[] = [];
  let fault: string | null = null;
  try {
    for await (const item of readSnapshot(pieces(text, size), format)) {
      if (item.kind === 'unit') units.push(item.unit);
      else links.push(item.link);
    }
  } catch (error) {
    fault = (error as Error).message;
  }
  return { units, links, fault };
}

const fleet = (inside: string) => `<Fleet xmlns="http://standards.iso.org/iso/15143/-3">${inside}</Fleet>`;
const machine = (hours: string, header = '<SerialNumber>S1</SerialNumber>') =>
  `<Equipment><EquipmentHeader>${header}</EquipmentHeader>${hours}</Equipment>`;
const meter = (hour: string, at = '2026-04-07T11:58:00Z') =>
  `<CumulativeOperatingHours datetime="${at}"><Hour>${hour}</Hour></CumulativeOperatingHours>`;

// Names as in public implementations of ISO/TS 15143-3 (the text itself is priced); figures ours.
const XML = fleet(
  '<Links><rel>self</rel><href>https://telematics.example/Fleet/1</href></Links>' +
    '<Links><rel>next</rel><href>https://telematics.example/Fleet/2</href></Links>' +
    '<Equipment><EquipmentHeader><UnitInstallDateTime>2025-03-01T00:00:00Z</UnitInstallDateTime><OEMName>ACME</OEMName>' +
    '<Model>ZT-60</Model><EquipmentID>MOWER-007</EquipmentID><SerialNumber>00123E45</SerialNumber><PIN>1AB00000000001234</PIN>' +
    '</EquipmentHeader><Location datetime="2026-04-07T11:58:00Z"><Latitude>30.2672</Latitude><Longitude>-97.7431</Longitude></Location>' +
    '<CumulativeOperatingHours datetime="2026-04-07T11:58:00Z"><Hour>412.35</Hour></CumulativeOperatingHours></Equipment>',
);
const JSON_TEXT = JSON.stringify({
  Fleet: {
    version: '1',
    snapshotTime: '2026-04-07T12:00:00Z',
    Links: [{ rel: 'next', href: 'https://telematics.example/Fleet/2' }],
    Equipment: [
      {
        EquipmentHeader: { OEMName: 'ACME', Model: 'ZT-60', EquipmentID: 'MOWER-007', SerialNumber: '00123E45' },
        CumulativeOperatingHours: { datetime: '2026-04-07T11:58:00Z', Hour: 412.35 },
      },
    ],
  },
});
const UNIT = {
  ...{ maker: 'ACME', model: 'ZT-60', equipmentId: 'MOWER-007', serial: '00123E45', pin: '1AB00000000001234' },
  ...{ hours: { at: '2026-04-07T11:58:00.000Z', hours: '412.35' }, fault: null },
};

describe('a snapshot', () => {
  it.each([1, 7, 65_536])('is read exactly from XML in pieces of %i bytes', async (size) => {
    expect(await read(XML, 'xml', size)).toEqual({
      units: [UNIT],
      links: [
        { rel: 'self', href: 'https://telematics.example/Fleet/1' },
        { rel: 'next', href: 'https://telematics.example/Fleet/2' },
      ],
      fault: null,
    });
  });

  it.each([1, 7, 65_536])('is read exactly from JSON in pieces of %i bytes', async (size) => {
    expect(await read(JSON_TEXT, 'json', size)).toEqual({
      units: [{ ...UNIT, pin: null }],
      links: [{ rel: 'next', href: 'https://telematics.example/Fleet/2' }],
      fault: null,
    });
  });

  it('keeps numbers of JSON as they are written, and takes pages in a list', async () => {
    const text =
      '[{"Fleet":{"Equipment":[{"EquipmentHeader":{"SerialNumber":123456789012345678901},"CumulativeOperatingHours":{"datetime":"2026-04-07T11:58:00Z","Hour":412.10}}]}},{"Fleet":{"Equipment":{"EquipmentHeader":{"PIN":"P2"},"CumulativeOperatingHours":null}}}]';
    const { units, fault } = await read(text, 'json');
    expect(fault).toBeNull();
    expect(units).toMatchObject([
      { serial: '123456789012345678901', hours: { hours: '412.10' } },
      { pin: 'P2', hours: null, fault: null },
    ]);
  });

  it.each([
    [
      'another namespace, with prefix',
      `<a:Fleet xmlns:a="http://www.jcmanet.or.jp/english2017/ISO/15143/-3/20190501"><a:Equipment><a:EquipmentHeader><a:SerialNumber>S1</a:SerialNumber></a:EquipmentHeader><a:CumulativeOperatingHours datetime="2026-04-07T11:58:00Z"><a:Hour>5</a:Hour></a:CumulativeOperatingHours></a:Equipment></a:Fleet>`,
    ],
    ['dateTime', fleet(machine(meter('5').replace('datetime', 'dateTime')))],
    [
      'a child in place of the attribute',
      fleet(
        machine(
          '<CumulativeOperatingHours><DateTime>2026-04-07T11:58:00Z</DateTime><Hour>5</Hour></CumulativeOperatingHours>',
        ),
      ),
    ],
    ['header fields as attributes', fleet(`<Equipment><EquipmentHeader SerialNumber="S1"/>${meter('5')}</Equipment>`)],
    [
      'hours as text',
      fleet(machine('<CumulativeOperatingHours datetime="2026-04-07T11:58:00Z"> 5 </CumulativeOperatingHours>')),
    ],
    [
      'hours as duration',
      fleet(machine('<CumulativeOperatingHours datetime="2026-04-07T11:58:00Z">PT5H</CumulativeOperatingHours>')),
    ],
    ['another zone', fleet(machine(meter('5', '2026-04-07T06:58:00-05:00')))],
    ['CDATA and comments', fleet(machine(meter('<![CDATA[5]]><!-- five -->')))],
  ])('with %s is understood', async (_, text) => {
    const { units, fault } = await read(text, 'xml');
    expect(fault).toBeNull();
    expect(units).toMatchObject([{ serial: 'S1', hours: { at: '2026-04-07T11:58:00.000Z', hours: '5' }, fault: null }]);
  });

  it('of AEMP 1.2 names the maker Make', async () => {
    const text = `<Fleet xmlns="http://schemas.aemp.org/fleet">${machine(meter('5'), '<Make>ACME</Make><SerialNumber>S1</SerialNumber>')}</Fleet>`;
    expect((await read(text, 'xml')).units).toMatchObject([{ maker: 'ACME', hours: { hours: '5' } }]);
  });

  it.each(['1e999999', '-5', 'NaN', '99999999', '5,5', 'P1Y', 'P2M', '0x10', '1'.repeat(300)])(
    'with hours of "%s" says so and goes on',
    async (hours) => {
      const text = fleet(machine(meter(hours)) + machine(meter('7')));
      const { units, fault } = await read(text, 'xml');
      expect(fault).toBeNull();
      expect(units).toMatchObject([
        { hours: null, fault: expect.stringMatching(/cannot be hours/) },
        { hours: { hours: '7' } },
      ]);
    },
  );

  it.each([
    '',
    '0001-01-01T00:00:00Z',
    '2026-04-07',
    '2026-04-07T11:58:00',
    '2026-02-30T00:00:00Z',
    '2026-04-07T25:00:00Z',
  ])('with a reading at "%s" says so', async (at) => {
    const { units } = await read(fleet(machine(meter('5', at))), 'xml');
    expect(units).toMatchObject([{ hours: null, fault: expect.stringMatching(/not the time of a reading/) }]);
  });

  it('tells a machine without hours, and one without any name', async () => {
    const { units } = await read(fleet(machine('') + machine(meter('5'), '<Model>ZT</Model>')), 'xml');
    expect(units).toMatchObject([
      { serial: 'S1', hours: null, fault: null },
      { hours: null, fault: expect.stringMatching(/no serial number/) },
    ]);
  });
});

describe('a hostile document', () => {
  it.each([
    ['a document type', `<!DOCTYPE Fleet [<!ENTITY a "b">]>${XML}`, /document type/],
    ['an outside entity', `<!DOCTYPE Fleet SYSTEM "file:///etc/passwd">${XML}`, /document type/],
    ['an entity that nobody declared', fleet(machine(meter('&boom;'))), /entity/i],
    ['deep nesting', `<Fleet>${'<a>'.repeat(40)}`, /nested deeper/],
    ['a value without end', fleet(machine(meter('1'.repeat(100_000)))), /longer than 4096/],
    ['a machine without end', fleet(`<Equipment>${'<a>1</a>'.repeat(3000)}</Equipment>`), /more than 2000/],
    ['tags that do not match', '<Fleet><Equipment></Fleet>', /Line 1/],
    ['an end too soon', fleet(machine(meter('5'))).slice(0, -10), /Line 1/],
    ['another encoding', `<?xml version="1.0" encoding="UTF-16"?>${XML}`, /encoding UTF-16/],
    ['another document', '<Invoice><Equipment/></Invoice>', /no Fleet/],
    ['nothing at all', '', /no Fleet|Line/],
  ])('of XML with %s is refused', async (_, text, why) => {
    const { fault } = await read(text, 'xml');
    expect(fault).toMatch(why);
  });

  it.each([
    ['deep nesting', '['.repeat(100_000), /nested deeper/],
    ['a number without end', `{"Fleet":{"Equipment":[{"Hour":${'1'.repeat(5_000_000)}}]}}`, /longer than 4096/],
    ['a text without end', `{"Fleet":{"Equipment":[{"Hour":"${'a'.repeat(5_000_000)}"}]}}`, /longer than 4096/],
    ['an end too soon', '{"Fleet":{"Equipment":[', /not JSON/],
    ['something else', '{"Fleet": oops}', /not JSON/],
    ['another document', '{"Invoice":{}}', /no Fleet/],
  ])('of JSON with %s is refused', async (_, text, why) => {
    const { fault } = await read(text, 'json');
    expect(fault).toMatch(why);
  });

  it('that is no UTF-8 is refused', async () => {
    for (const format of ['xml', 'json'] as const)
      expect((await read(new Uint8Array([0x3c, 0xff, 0xfe]), format)).fault).toMatch(/UTF-8/);
  });

  it('gives what came before the fault', async () => {
    const { units, fault } = await read(`${fleet(machine(meter('5'))).replace('</Fleet>', '')}<oops`, 'xml', 50);
    expect(units).toHaveLength(1);
    expect(fault).not.toBeNull();
  });

  it('never does anything but be read or refused', async () => {
    const crumbs = fc.array(
      fc.constantFrom(
        '<Fleet>',
        '</Fleet>',
        '<Equipment>',
        '</Equipment>',
        '<Hour>',
        '&amp;',
        '&',
        '<',
        '{',
        '}',
        '"Fleet":',
        '[',
        ']',
        '1e9',
        'é',
        '\u0000',
      ),
      { maxLength: 30 },
    );
    await fc.assert(
      fc.asyncProperty(crumbs, fc.constantFrom('xml', 'json'), async (parts, format) => {
        try {
          for await (const item of readSnapshot(pieces(parts.join(''), 3), format)) expect(item.kind).toBeDefined();
        } catch (error) {
          expect((error as Error).name).toBe('InvalidSnapshot');
        }
      }),
      { seed: 20260604, numRuns: 500 },
    );
  });
});
