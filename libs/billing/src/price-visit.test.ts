import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { checkDocument } from './check-document.js';
import { creditOf } from './documents.js';
import { imbalance, journalEntry } from './journal.js';
import { overtimeMinutes } from './labour.js';
import { priceVisit } from './price-visit.js';
import { aVisit, charges, enCharges, issued, MACHINE, someWork } from './test-support/a-visit.js';
import { anyCharges, anyVisit } from './test-support/any-visit.js';

describe('the worked example of EN 16931', () => {
  // 1.75 h × 95.00, 2.5 × 8.3450, 12.99, visit fee 45.00 at 8.25 %: checked by hand and with the published rules.
  it('comes to 265.32 with one tax', () => {
    const { lines, taxes, totals } = priceVisit(aVisit(), enCharges());
    expect(lines.map((line) => [line.quantity, line.unitCode, line.unitPrice, line.net])).toEqual([
      ['1.75', 'HUR', '95.00', '166.25'],
      ['1', 'C62', '12.99', '12.99'],
      ['2.5', 'LTR', '8.3450', '20.86'],
    ]);
    expect(taxes.map((tax) => [tax.base, tax.tax])).toEqual([['245.10', '20.22']]);
    expect(totals).toEqual({
      lines: '200.10',
      charges: '45.00',
      beforeTax: '245.10',
      tax: '20.22',
      withTax: '265.32',
      payable: '265.32',
    });
  });

  it('comes to the same with the tax split by jurisdiction, each rounded apart', () => {
    const { taxes, totals } = priceVisit(aVisit(), charges());
    expect(taxes.map((tax) => [tax.rate?.jurisdiction, tax.tax])).toEqual([
      ['State', '15.32'],
      ['County', '4.90'],
    ]);
    expect(totals.payable).toBe('265.32');
  });
});

describe('labour', () => {
  const work = [20, 25, 10].map((actualMinutes, index) => someWork({ id: `w${index}`, actualMinutes }));

  it('is rounded over the visit, or line by line', () => {
    const minutes = (roundEach: 'line' | 'visit') =>
      priceVisit(
        aVisit({ work, parts: [], consumables: [] }),
        charges({ labour: { ...charges().labour, roundEach } }),
      ).lines.map((line) => (line.unitCode === 'HUR' ? Number(line.quantity) * 60 : Number(line.quantity)));
    expect(minutes('visit')).toEqual([22, 27, 11]); // 55 min up to 60, shared 20 : 25 : 10
    expect(minutes('line')).toEqual([30, 30, 15]);
  });

  it('is charged flat, by skill, with a supplement for overtime', () => {
    const rule = { ...charges().labour, basis: 'flat' as const, ratesBySkill: { hydraulic: '120.00' } };
    const record = aVisit({ work: [someWork({ skill: 'hydraulic', actualMinutes: 5 })], overtimeMinutes: 30 });
    const { lines } = priceVisit({ ...record, parts: [], consumables: [] }, charges({ labour: rule }));
    expect(lines.map((line) => [line.quantity, line.unitPrice, line.net])).toEqual([
      ['1.75', '120.00', '210.00'],
      ['0.5', '47.5', '23.75'],
    ]);
  });

  it.each([
    ['2026-06-08T16:30', '2026-06-08T18:00', 60], // Monday
    ['2026-06-08T06:00', '2026-06-08T08:00', 60],
    ['2026-06-13T10:00', '2026-06-13T11:30', 90], // Saturday
    ['2026-06-12T16:00', '2026-06-13T01:00', 480], // into Saturday
    ['2026-06-08T08:00', '2026-06-08T12:00', 0],
  ])('counts overtime from %s to %s', (from, to, minutes) => {
    expect(overtimeMinutes(from, to, charges().labour)).toBe(minutes);
  });
});

describe('what costs nothing', () => {
  it('keeps its place on the document with the reason, parts along with their work', () => {
    const coverage = { kind: 'warranty', reason: 'seal leaked again' } as const;
    const { lines, charges: others, totals } = priceVisit(aVisit({ work: [someWork({ coverage })] }), charges());
    expect(lines.map((line) => [line.net, line.coverage?.kind])).toEqual([
      ['0.00', 'warranty'],
      ['0.00', 'warranty'],
      ['0.00', 'warranty'],
    ]);
    expect(others).toEqual([]);
    expect(totals.payable).toBe('0.00');
  });

  it('is what an agreement includes, as often as its yearly allowance lasts', () => {
    const work = ['w1', 'w2', 'w3'].map((id) => someWork({ id, code: 'sharpen-blades' }));
    const agreed = [{ agreement: 'Season care', itemCode: 'sharpen-blades', yearlyAllowance: 4, usedThisYear: 2 }];
    const { lines } = priceVisit(aVisit({ work, agreed, parts: [], consumables: [] }), charges());
    expect(lines.map((line) => line.coverage?.reason ?? line.net)).toEqual([
      'included in the agreement "Season care": 3 of 4 this year',
      'included in the agreement "Season care": 4 of 4 this year',
      '166.25',
    ]);
  });
});

describe('the rest of a document', () => {
  it('is filled up to the minimum charge', () => {
    const { totals, charges: others } = priceVisit(
      aVisit({ work: [someWork({ actualMinutes: 15 })], parts: [], consumables: [] }),
      charges({ minimumCharge: '120.00', travel: { rule: 'none' } }),
    );
    expect(others).toMatchObject([{ kind: 'minimum', amount: '96.25' }]);
    expect(totals.beforeTax).toBe('120.00');
  });

  it('marks parts up by steps of their cost', () => {
    const part = aVisit().parts[0]!;
    const parts = ['6.10', '42.35', '250.00'].map((unitCost) => ({ ...part, unitCost }));
    const { lines } = priceVisit(aVisit({ parts }), charges({ parts: { ...charges().parts, basis: 'cost' } }));
    expect(lines.filter((line) => line.kind === 'parts').map((line) => line.unitPrice)).toEqual([
      '12.20', // + 100 %
      '63.53', // + 50 %
      '325.00', // + 30 %
    ]);
  });

  it.each([
    [
      {
        rule: 'zone',
        zones: [
          { name: 'far', upToKm: 90, fee: '80.00' },
          { name: 'near', upToKm: 20, fee: '20.00' },
        ],
      },
      '20.00',
    ],
    [{ rule: 'visit-fee', fee: '45.00' }, '35.00'], // the site has a fee of its own
    [{ rule: 'shared-drive', ratePerHour: '80.00' }, '18.34'],
  ] as const)('charges the way by %j', (travel, wanted) => {
    const record = aVisit({ travel: { kilometres: 12, siteFee: '35.00', driveShare: '18.34' } });
    expect(priceVisit(record, charges({ travel })).charges).toMatchObject([{ kind: 'travel', amount: wanted }]);
  });

  it('taxes each kind of line where its tax applies, and no exempt customer', () => {
    const [state, county] = charges().taxes;
    const taxes = [
      { ...state!, on: ['parts' as const] },
      { ...county!, siteCodes: ['S2'] },
    ];
    expect(priceVisit(aVisit(), charges({ taxes })).taxes).toMatchObject([
      { category: 'Z', base: '232.11', tax: '0.00' },
      { category: 'S', base: '12.99', tax: '0.81' },
    ]);
    expect(priceVisit(aVisit({ exemption: 'Exempt: certificate 77-1' }), charges()).taxes).toMatchObject([
      { category: 'E', reason: 'Exempt: certificate 77-1', base: '245.10', tax: '0.00' },
    ]);
  });

  it('carries serial number and meter hours on each line', () => {
    for (const line of priceVisit(aVisit(), charges()).lines) expect(line.machine).toEqual(MACHINE);
  });
});

describe('generated documents', () => {
  it.each(['us-sales-tax', 'en16931'] as const)(
    'add up to the cent in the form %s',
    (form) => {
      fc.assert(
        fc.property(anyVisit, anyCharges(form), (record, settings) => {
          const document = issued(record, settings);
          expect(checkDocument(document)).toEqual([]);
          const credit = creditOf(document, { number: '1002', issuedOn: '2026-04-08', note: '' });
          for (const each of [document, credit]) {
            expect(imbalance(journalEntry('e', each, settings.accounts), 'USD')).toBe('0.00');
          }
        }),
        { seed: 20260407, numRuns: Number(process.env.DECKROUND_DOCUMENTS ?? 1500) },
      );
    },
    3_600_000,
  );

  it('that were tampered with are found out, cent by cent', () => {
    const document = issued(aVisit(), enCharges());
    const { totals, taxes, lines } = document;
    const dearer = { ...totals, tax: '21.12', withTax: '266.22', payable: '266.22' };
    const broken = [
      // What the published rules let pass: tax and totals raised by 0.90 alike (BR-CO-17).
      { ...document, taxes: [{ ...taxes[0]!, tax: '21.12' }], totals: dearer },
      { ...document, totals: { ...totals, payable: '1.00' } },
      { ...document, lines: lines.map((line, index) => (index === 2 ? { ...line, net: '20.87' } : line)) },
      { ...document, taxes: [...taxes, ...taxes] },
      { ...document, taxes: [] },
      { ...document, totals: { ...totals, payable: '265.320' } },
      { ...document, totals: { ...totals, payable: 'much' } },
    ];
    expect(checkDocument(document)).toEqual([]);
    for (const each of broken) expect(checkDocument(each).length).toBeGreaterThan(0);
  });
});
