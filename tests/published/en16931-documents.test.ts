import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type ChargeDocument, checkDocument, creditOf, writeUbl } from '@deckround/billing';
import { beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { XmlDocument, XsdValidator } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';
import { Schema } from 'node-schematron';
import { aVisit, enCharges, issued, someWork } from '../../libs/billing/src/test-support/a-visit.js';
import { anyCharges, anyVisit } from '../../libs/billing/src/test-support/any-visit.js';

// The validation artefacts of EN 16931 (ConnectingEurope/eInvoicing-EN16931, 1.3.16) and UBL 2.1 (OASIS) are not part of
// this project; without them these tests are left out.
const SHARED = resolve(process.env.DECKROUND_SHARED ?? '../shared');
const ARTEFACTS = join(SHARED, 'standards/artefacts');
const withArtefacts = existsSync(ARTEFACTS) ? describe : describe.skip;
if (!existsSync(ARTEFACTS)) console.info(`UBL and EN 16931 rules left out: no artefacts in ${ARTEFACTS}`);

withArtefacts('documents as UBL 2.1', () => {
  xmlRegisterFsInputProviders();
  let schemas: Record<ChargeDocument['kind'], XsdValidator>;
  let rules: Schema;
  // Not in the body of the group: that runs also when the group is left out.
  beforeAll(() => {
    const xsd = (name: string) => {
      const path = join(ARTEFACTS, `ubl-2.1/xsd/maindoc/UBL-${name}-2.1.xsd`);
      return XsdValidator.fromDoc(XmlDocument.fromBuffer(readFileSync(path), { url: path }));
    };
    schemas = { invoice: xsd('Invoice'), credit: xsd('CreditNote') };
    const sch = join(ARTEFACTS, 'en16931/EN16931-UBL-validation-preprocessed.sch');
    rules = Schema.fromString(soughtOnce(readFileSync(sch, 'utf8')));
  });
  // The library puts `//` before what a rule is for. Where the rule has its own, the whole document would be searched from
  // each of its nodes: the same nodes are found, in eight times the time.
  const soughtOnce = (sch: string) =>
    sch.replace(/<rule context="[^"]*"/g, (rule) => rule.replace(/(["|]\s*)\/\//g, '$1'));
  const checkXsd = (document: ChargeDocument) => {
    const xml = XmlDocument.fromString(writeUbl(document));
    try {
      schemas[document.kind].validate(xml);
    } finally {
      xml.dispose();
    }
  };
  const brokenRules = (xml: string) => rules.validateString(xml).map((each) => each.assertId ?? each.message);
  // The library adds xs:decimal as binary floating point (245.09999999999997 is not 245.10), so that BR-E-08, BR-O-08 and
  // BR-Z-08, which compare without rounding, may fail wrongly. Those sums are the exact check's to judge.
  const faultsOf = (document: ChargeDocument) => [
    ...brokenRules(writeUbl(document)).filter((id) => !/^BR-[EOZ]-08$/.test(id ?? '')),
    ...checkDocument(document),
  ];
  const credit = (document: ChargeDocument) =>
    creditOf(document, { number: '1002', issuedOn: '2026-04-08', note: 'billed twice' });

  it('of any visit pass the schemas, in both forms', () => {
    for (const form of ['us-sales-tax', 'en16931'] as const) {
      fc.assert(
        fc.property(anyVisit, anyCharges(form), (record, settings) => {
          const document = issued(record, settings);
          checkXsd(document);
          checkXsd(credit(document));
        }),
        { seed: 1, numRuns: 60, endOnFailure: true },
      );
    }
  });

  const warranty = { kind: 'warranty', reason: 'seal leaked again' } as const;
  const mixed = aVisit({
    work: [someWork({ coverage: warranty }), someWork({ id: 'w2', actualMinutes: 20 })],
    parts: ['set', 'oz'].map((unit) => ({ ...aVisit().parts[0]!, workId: null, unit })),
    consumables: [],
  });
  const minutes = { ...enCharges().labour, roundToMinutes: 1, roundEach: 'line' as const };
  const partsOnly = [{ ...enCharges().taxes[0]!, on: ['parts' as const] }];
  it.each<[string, ChargeDocument]>([
    ['taxed', issued(aVisit(), enCharges())],
    ['outside the scope', issued(aVisit(), enCharges({ taxes: [] }))],
    ['exempt', issued(aVisit({ exemption: 'Exempt: certificate 77-1' }), enCharges())],
    ['taxed in part, under warranty, by minutes', issued(mixed, enCharges({ labour: minutes, taxes: partsOnly }))],
    ['a credit', credit(issued(aVisit(), enCharges()))],
  ])('%s: pass every rule of EN 16931', (_, document) => {
    expect(faultsOf(document)).toEqual([]);
  });

  // The rules take a quarter of a second a document: thousands are for `npm run bench:billing`.
  it('of any visit pass every rule of EN 16931', () => {
    fc.assert(
      fc.property(anyVisit, anyCharges('en16931'), (record, settings) => {
        expect(faultsOf(issued(record, settings))).toEqual([]);
      }),
      { seed: 2, numRuns: Number(process.env.DECKROUND_EN_DOCUMENTS ?? 8), endOnFailure: true },
    );
  }, 3_600_000);

  it('give the worked example’s amounts', () => {
    const example = readFileSync(join(SHARED, 'standards/invoice-en16931-taxed.xml'), 'utf8');
    const amounts = (xml: string) =>
      [...xml.matchAll(/<cbc:(\w*Amount) currencyID="USD">([\d.]+)</g)]
        .map(([, name, value]) => `${name} ${value}`)
        .sort();
    expect(amounts(writeUbl(issued(aVisit(), enCharges())))).toEqual(amounts(example));
  });

  it('that are broken are refused by the rule they break', () => {
    const xml = writeUbl(issued(aVisit(), enCharges()));
    const broken = xml.replace(/(<cbc:PayableAmount[^>]*>)[\d.]+/, '$11.00');
    expect(brokenRules(broken)).toEqual(['BR-CO-16']);
    const dated = XmlDocument.fromString(xml.replace(/(<cbc:IssueDate>)[^<]+/, '$130/08/2018'));
    expect(() => schemas.invoice.validate(dated)).toThrow();
    dated.dispose();
  });
});
