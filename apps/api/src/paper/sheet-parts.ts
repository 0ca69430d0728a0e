import { MARGIN, type Pdf } from '../pdf/print.js';
import { drawQr } from '../pdf/qr-code.js';
import { printable } from '../pdf/typeface.js';

const QR_SIDE = 84;
const FOOT = 60;
/** A box that a greasy thumb and a marker can tick. */
const BOX = 15;

const right = (pdf: Pdf) => pdf.page.width - MARGIN;

/** Begins another page when so many points are not left on this one. */
export function needs(pdf: Pdf, height: number): void {
  if (pdf.y + height > pdf.page.height - FOOT) {
    pdf.addPage();
    pdf.x = MARGIN;
    pdf.y = MARGIN;
  }
}

/** Who, what, when; the code that leads back to the record stands at the right. */
export function heading(
  pdf: Pdf,
  {
    shop,
    title,
    lines,
    address,
    scan,
  }: {
    readonly shop: string;
    readonly title: string;
    readonly lines: readonly string[];
    readonly address: string;
    readonly scan: string;
  },
): void {
  const top = pdf.y;
  const width = right(pdf) - MARGIN - QR_SIDE - 16;
  drawQr(pdf, address, right(pdf) - QR_SIDE, top - 8, QR_SIDE);
  pdf.font('regular').fontSize(8);
  pdf.text(printable(scan), right(pdf) - QR_SIDE, top + QR_SIDE - 10, { width: QR_SIDE, align: 'center' });
  const below = pdf.y;
  pdf.font('bold').fontSize(11).text(printable(shop), MARGIN, top, { width });
  pdf.fontSize(22).text(printable(title), { width });
  pdf.font('regular').fontSize(12);
  for (const line of lines) pdf.text(printable(line), { width });
  pdf.y = Math.max(below, pdf.y) + 8;
  heavyRule(pdf);
}

export function heavyRule(pdf: Pdf): void {
  pdf.moveTo(MARGIN, pdf.y).lineTo(right(pdf), pdf.y).lineWidth(1.5).strokeColor('#000000').stroke();
  pdf.y += 8;
}

export function subheading(pdf: Pdf, text: string, size = 13): void {
  needs(pdf, size * 3);
  pdf
    .font('bold')
    .fontSize(size)
    .text(printable(text), MARGIN, pdf.y + 4, { width: right(pdf) - MARGIN });
  pdf.y += 3;
}

export function line(pdf: Pdf, text: string, { size = 11, indent = 0, bold = false } = {}): void {
  const width = right(pdf) - MARGIN - indent;
  pdf.font(bold ? 'bold' : 'regular').fontSize(size);
  needs(pdf, pdf.heightOfString(printable(text), { width }));
  pdf.text(printable(text), MARGIN + indent, pdf.y, { width });
  pdf.y += 2;
}

/** A box to tick, and what it is for; `lead` stands before it in bold. */
export function tickLine(pdf: Pdf, lead: string, text: string, { size = 13, indent = 0, mark = '' } = {}): void {
  const left = MARGIN + indent + BOX + 10;
  const width = right(pdf) - left - (mark ? 110 : 0);
  pdf.font('bold').fontSize(size);
  const whole = printable([lead, text].filter(Boolean).join('  '));
  const height = Math.max(BOX, pdf.heightOfString(whole, { width })) + 7;
  needs(pdf, height);
  const { y } = pdf;
  pdf
    .rect(MARGIN + indent, y + 1, BOX, BOX)
    .lineWidth(1.2)
    .strokeColor('#000000')
    .stroke();
  if (lead) {
    pdf.font('bold').text(printable(`${lead}  `), left, y, { width, continued: true });
    pdf.font('regular').text(printable(text), { width });
  } else pdf.font('regular').text(printable(text), left, y, { width });
  if (mark) pdf.font('bold').text(printable(mark), right(pdf) - 105, y, { width: 105, align: 'right' });
  pdf.y = y + height;
}

/** What must be read: framed, so that it is seen without any colour. */
export function framed(pdf: Pdf, text: string, size = 11): void {
  const width = right(pdf) - MARGIN - 20;
  pdf.font('bold').fontSize(size);
  const height = pdf.heightOfString(printable(text), { width });
  needs(pdf, height + 16);
  const { y } = pdf;
  pdf
    .rect(MARGIN, y, right(pdf) - MARGIN, height + 10)
    .lineWidth(1.5)
    .strokeColor('#000000')
    .stroke();
  pdf.text(printable(text), MARGIN + 10, y + 4, { width });
  pdf.y = y + height + 16;
}

/** Places to write into, side by side on one line. */
export function blanks(pdf: Pdf, names: readonly string[], height = 34): void {
  needs(pdf, height + 4);
  const { y } = pdf;
  const width = (right(pdf) - MARGIN - 12 * (names.length - 1)) / names.length;
  for (const [index, name] of names.entries()) {
    const x = MARGIN + index * (width + 12);
    pdf.font('regular').fontSize(9).text(printable(name), x, y, { width, lineBreak: false });
    pdf
      .moveTo(x, y + height - 6)
      .lineTo(x + width, y + height - 6)
      .lineWidth(0.7)
      .strokeColor('#000000')
      .stroke();
  }
  pdf.x = MARGIN;
  pdf.y = y + height;
}
