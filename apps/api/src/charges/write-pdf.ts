import { type ChargeDocument, type ChargeLine, isByTheHour, minutesOf, type Party } from '@deckround/billing';
import { MARGIN, type Pdf, pageNumbers, print, rule } from '../pdf/print.js';
import { printable } from '../pdf/typeface.js';

/** Left edges and widths of the table's columns on US Letter, 612 points wide. */
const COLUMNS = {
  name: { x: MARGIN, width: 270 },
  quantity: { x: 325, width: 75 },
  price: { x: 405, width: 70 },
  net: { x: 480, width: 82 },
} as const;
const RIGHT = 562;
const UNITS: Readonly<Record<string, string>> = { HUR: 'h', MIN: 'min', C62: '', H87: '', LS: '', LTR: 'l', GRM: 'g' };

/** The document for people. The same document gives the same bytes: its dates are the document's own. */
export async function writePdf(document: ChargeDocument): Promise<Buffer> {
  const day = new Date(`${document.issuedOn ?? document.servicedOn}T00:00:00Z`);
  const title = titleOf(document);
  return print({ title, author: document.seller.legalName, day }, (pdf) => {
    head(pdf, document, title);
    table(pdf, document);
    totals(pdf, document);
    pageNumbers(pdf, (page, pages) => `${title}, page ${page} of ${pages}`);
  });
}

function titleOf({ kind, number }: ChargeDocument): string {
  if (number === null) return 'Draft, not yet issued';
  return kind === 'credit' ? `Credit ${number}` : `Invoice ${number}`;
}

function head(pdf: Pdf, document: ChargeDocument, title: string): void {
  pdf.font('bold').fontSize(18).text(title, MARGIN, MARGIN);
  pdf.fontSize(9).moveDown(0.6);
  const top = pdf.y;
  party(pdf, 'From', document.seller, MARGIN, top);
  const left = pdf.y;
  party(pdf, 'To', document.buyer, 240, top);
  const middle = pdf.y;
  const facts: [string, string | null][] = [
    ['Issued', document.issuedOn],
    ['Due', document.dueOn],
    ['Serviced', document.servicedOn],
    ['Site', document.site.name],
    ['Purchase order', document.purchaseOrder || null],
    [document.kind === 'credit' ? 'Takes back' : 'Replaces', document.refersTo?.number ?? null],
  ];
  let y = top;
  for (const [name, value] of facts) {
    if (value === null) continue;
    pdf.font('bold').text(name, 420, y, { width: 65 });
    pdf.font('regular').text(printable(value), 490, y, { width: RIGHT - 490 });
    y = pdf.y + 2;
  }
  pdf.y = Math.max(left, middle, y) + 14;
  if (document.note !== '') pdf.text(printable(document.note), MARGIN, pdf.y, { width: RIGHT - MARGIN }).moveDown();
}

function party(pdf: Pdf, name: string, { legalName, taxNumber, address }: Party, x: number, y: number): void {
  const city = [address.city, address.subdivision, address.postalCode].filter(Boolean).join(' ');
  const lines = [legalName, address.street, city, address.country, taxNumber && `Tax number ${taxNumber}`];
  pdf.font('bold').text(name, x, y, { width: 170 });
  pdf.font('regular').text(printable(lines.filter(Boolean).join('\n')), { width: 170 });
}

function table(pdf: Pdf, document: ChargeDocument): void {
  heading(pdf);
  for (const line of document.lines) {
    const net = line.coverage ? `${line.net} (${line.coverage.kind})` : line.net;
    row(pdf, line.name, detailOf(line), quantityOf(line), priceOf(line), net);
  }
  for (const charge of document.charges) row(pdf, charge.reason, '', '', '', charge.amount);
}

function detailOf({ machine, coverage, itemCode }: ChargeLine): string {
  const marks = machine
    ? [machine.code, machine.serial && `serial ${machine.serial}`, machine.hours && `${machine.hours} h on the meter`]
    : [];
  return [itemCode, ...marks, coverage?.reason].filter(Boolean).join(' · ');
}

/** Time is written in hours and minutes, and priced by the hour, whichever of the two the line counts in. */
function quantityOf(line: ChargeLine): string {
  const minutes = minutesOf(line);
  if (minutes === null) return `${line.quantity} ${UNITS[line.unitCode] ?? line.unitCode}`;
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return [hours > 0 && `${hours} h`, (rest > 0 || hours === 0) && `${rest} min`].filter(Boolean).join(' ');
}

function priceOf(line: ChargeLine): string {
  const { unitPrice, priceBase, unitCode } = line;
  if (isByTheHour(line)) return `${unitPrice} an hour`;
  return priceBase === '1' ? unitPrice : `${unitPrice} per ${priceBase} ${UNITS[unitCode] ?? unitCode}`;
}

function heading(pdf: Pdf): void {
  const { y } = pdf;
  pdf.font('bold').fontSize(9);
  pdf.text('What', COLUMNS.name.x, y, { width: COLUMNS.name.width });
  for (const [column, text] of [
    ['quantity', 'Quantity'],
    ['price', 'Price'],
    ['net', 'Amount'],
  ] as const)
    pdf.text(text, COLUMNS[column].x, y, { width: COLUMNS[column].width, align: 'right' });
  rule(pdf);
}

function row(pdf: Pdf, name: string, detail: string, quantity: string, price: string, net: string): void {
  const { width } = COLUMNS.name;
  pdf.font('regular').fontSize(9);
  const height =
    pdf.heightOfString(printable(name), { width }) + (detail ? pdf.heightOfString(printable(detail), { width }) : 0);
  if (pdf.y + height > pdf.page.height - MARGIN - 30) {
    pdf.addPage();
    heading(pdf);
    pdf.font('regular').fontSize(9);
  }
  const { y } = pdf;
  pdf.fillColor('#000000').text(printable(name), COLUMNS.name.x, y, { width });
  if (detail !== '')
    pdf.fillColor('#555555').fontSize(8).text(printable(detail), { width }).fontSize(9).fillColor('#000000');
  const below = pdf.y;
  const cells = { quantity, price, net };
  for (const column of ['quantity', 'price', 'net'] as const)
    pdf.text(cells[column], COLUMNS[column].x, y, { width: COLUMNS[column].width, align: 'right' });
  pdf.y = Math.max(below, pdf.y) + 5;
}

function totals(pdf: Pdf, { totals: sums, taxes, currency, kind }: ChargeDocument): void {
  if (pdf.y + 40 + taxes.length * 14 > pdf.page.height - MARGIN - 30) pdf.addPage();
  rule(pdf);
  line(pdf, 'Before tax', sums.beforeTax);
  for (const { category, rate, reason, base, tax } of taxes) {
    const name = rate ? `${rate.jurisdiction} ${rate.percent} % of ${base}` : (reason ?? `Untaxed, ${base}`);
    line(pdf, category === 'S' ? name : `${name}`, tax);
  }
  line(pdf, kind === 'credit' ? `To your credit, ${currency}` : `To pay, ${currency}`, sums.payable, true);
}

function line(pdf: Pdf, name: string, value: string, isBold = false): void {
  const { y } = pdf;
  pdf.font(isBold ? 'bold' : 'regular').fontSize(isBold ? 11 : 9);
  pdf.text(printable(name), 250, y, { width: 225, align: 'right' });
  const below = pdf.y;
  pdf.text(value, COLUMNS.net.x, y, { width: COLUMNS.net.width, align: 'right' });
  pdf.y = Math.max(below, pdf.y) + 3;
}
