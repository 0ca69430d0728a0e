import { XMLBuilder } from 'fast-xml-parser';
import type { ChargeDocument, ChargeLine, Party, TaxMark, TaxRate, TaxSubtotal } from '../charge-document.js';
import { plainText } from './plain-text.js';

const NAMESPACE = 'urn:oasis:names:specification:ubl:schema:xsd:';
const EN_16931 = 'urn:cen.eu:en16931:2017';
/** Our own: plain UBL 2.1 with sales taxes, which EN 16931 does not know. */
const US_SALES_TAX = 'urn:deckround:charge-document:us-sales-tax:1';

type Element = Record<string, unknown>;

/**
 * The document as UBL 2.1 XML. Keys stand in the order that the schemas want. In the EN form every tax has the scheme
 * VAT; else state taxes are STT and local ones LOC (UN/EDIFACT 5153).
 */
export function writeUbl(document: ChargeDocument): string {
  const isCredit = document.kind === 'credit';
  const root = isCredit ? 'CreditNote' : 'Invoice';
  const money = (value: string) => ({ '#text': value, '@currencyID': document.currency });
  const scheme = (rate: TaxRate | null) => ({
    'cac:TaxScheme': {
      'cbc:ID': document.form === 'en16931' ? 'VAT' : rate?.level === 'local' ? 'LOC' : 'STT',
    },
  });
  const categories = (mark: TaxMark, where: 'item' | 'charge') =>
    (mark.category === 'S' ? mark.rates : [null]).map((rate) => ({
      'cbc:ID': mark.category,
      ...percentOf(mark.category, rate),
      ...(where === 'item' || document.form === 'en16931' ? {} : reasonOf(mark.reason)),
      ...scheme(rate),
    }));
  const line = (each: ChargeLine): Element => ({
    'cbc:ID': each.id,
    [isCredit ? 'cbc:CreditedQuantity' : 'cbc:InvoicedQuantity']: {
      '#text': each.quantity,
      '@unitCode': each.unitCode,
    },
    'cbc:LineExtensionAmount': money(each.net),
    'cac:Item': {
      ...(each.coverage ? { 'cbc:Description': text(each.coverage.reason) } : {}),
      'cbc:Name': text(each.name),
      ...(each.itemCode === '' ? {} : { 'cac:SellersItemIdentification': { 'cbc:ID': text(each.itemCode) } }),
      'cac:ClassifiedTaxCategory': categories(each.tax, 'item'),
      'cac:AdditionalItemProperty': properties(each),
    },
    'cac:Price': {
      'cbc:PriceAmount': money(each.unitPrice),
      ...(each.priceBase === '1'
        ? {}
        : { 'cbc:BaseQuantity': { '#text': each.priceBase, '@unitCode': each.unitCode } }),
    },
  });
  const body: Element = {
    '@xmlns': `${NAMESPACE}${root}-2`,
    '@xmlns:cac': `${NAMESPACE}CommonAggregateComponents-2`,
    '@xmlns:cbc': `${NAMESPACE}CommonBasicComponents-2`,
    'cbc:CustomizationID': document.form === 'en16931' ? EN_16931 : US_SALES_TAX,
    'cbc:ID': text(document.number ?? 'DRAFT'),
    'cbc:IssueDate': document.issuedOn ?? document.servicedOn,
    ...(isCredit || document.dueOn === null ? {} : { 'cbc:DueDate': document.dueOn }),
    [isCredit ? 'cbc:CreditNoteTypeCode' : 'cbc:InvoiceTypeCode']: isCredit ? '381' : '380',
    ...optional('cbc:Note', document.note),
    'cbc:DocumentCurrencyCode': document.currency,
    ...optional('cbc:BuyerReference', document.purchaseOrder),
    ...(document.purchaseOrder === '' ? {} : { 'cac:OrderReference': { 'cbc:ID': text(document.purchaseOrder) } }),
    ...(document.refersTo === null
      ? {}
      : {
          'cac:BillingReference': {
            'cac:InvoiceDocumentReference': {
              'cbc:ID': text(document.refersTo.number),
              'cbc:IssueDate': document.refersTo.issuedOn,
            },
          },
        }),
    'cac:AccountingSupplierParty': { 'cac:Party': party(document.seller, document) },
    'cac:AccountingCustomerParty': { 'cac:Party': party(document.buyer, document) },
    'cac:Delivery': { 'cbc:ActualDeliveryDate': document.servicedOn },
    'cac:PaymentMeans': { 'cbc:PaymentMeansCode': '1' }, // UNCL 4461: not defined
    'cac:AllowanceCharge': document.charges.map((charge) => ({
      'cbc:ChargeIndicator': 'true',
      'cbc:AllowanceChargeReason': text(charge.reason),
      'cbc:Amount': money(charge.amount),
      'cac:TaxCategory': categories(charge.tax, 'charge'),
    })),
    'cac:TaxTotal': {
      'cbc:TaxAmount': money(document.totals.tax),
      'cac:TaxSubtotal': document.taxes.map((subtotal: TaxSubtotal) => ({
        'cbc:TaxableAmount': money(subtotal.base),
        'cbc:TaxAmount': money(subtotal.tax),
        'cac:TaxCategory': {
          'cbc:ID': subtotal.category,
          ...percentOf(subtotal.category, subtotal.rate),
          ...reasonOf(subtotal.reason),
          ...scheme(subtotal.rate),
        },
      })),
    },
    'cac:LegalMonetaryTotal': {
      'cbc:LineExtensionAmount': money(document.totals.lines),
      'cbc:TaxExclusiveAmount': money(document.totals.beforeTax),
      'cbc:TaxInclusiveAmount': money(document.totals.withTax),
      ...(document.charges.length === 0 ? {} : { 'cbc:ChargeTotalAmount': money(document.totals.charges) }),
      'cbc:PayableAmount': money(document.totals.payable),
    },
    [isCredit ? 'cac:CreditNoteLine' : 'cac:InvoiceLine']: document.lines.map(line),
  };
  const builder = new XMLBuilder({ ignoreAttributes: false, attributeNamePrefix: '@', format: true });
  return builder.build({ '?xml': { '@version': '1.0', '@encoding': 'UTF-8' }, [root]: body });
}

function text(value: string): string {
  return plainText(value);
}

function optional(name: string, value: string): Element {
  return plainText(value).trim() === '' ? {} : { [name]: text(value) };
}

function reasonOf(reason: string | null): Element {
  return reason === null ? {} : { 'cbc:TaxExemptionReason': text(reason) };
}

/** The EN rules want a rate of 0 with E and Z, and none with O (BR-E-05, BR-Z-05, BR-O-05). */
function percentOf(category: string, rate: TaxRate | null): Element {
  return category === 'O' ? {} : { 'cbc:Percent': rate?.percent ?? '0' };
}

function party({ code, legalName, taxNumber, address }: Party, document: ChargeDocument): Element {
  const isUntaxed = document.taxes.every((tax) => tax.category === 'O');
  // BR-O-02: a document outside the scope carries no VAT number.
  const showsTaxNumber = taxNumber !== '' && !(document.form === 'en16931' && isUntaxed);
  return {
    ...(code === '' ? {} : { 'cac:PartyIdentification': { 'cbc:ID': text(code) } }),
    'cac:PostalAddress': {
      ...optional('cbc:StreetName', address.street),
      ...optional('cbc:CityName', address.city),
      ...optional('cbc:PostalZone', address.postalCode),
      ...optional('cbc:CountrySubentity', address.subdivision),
      'cac:Country': { 'cbc:IdentificationCode': text(address.country) },
    },
    ...(showsTaxNumber
      ? {
          'cac:PartyTaxScheme': {
            'cbc:CompanyID': text(taxNumber),
            'cac:TaxScheme': { 'cbc:ID': document.form === 'en16931' ? 'VAT' : 'STT' },
          },
        }
      : {}),
    'cac:PartyLegalEntity': { 'cbc:RegistrationName': text(legalName) },
  };
}

function properties({ machine }: ChargeLine): Element[] {
  if (machine === null) return [];
  const pairs = [
    ['Machine', machine.code],
    ['Serial number', machine.serial],
    ['Meter hours', machine.hours],
  ];
  return pairs
    .filter(([, value]) => plainText(value!).trim() !== '')
    .map(([name, value]) => ({ 'cbc:Name': name, 'cbc:Value': text(value!) }));
}
