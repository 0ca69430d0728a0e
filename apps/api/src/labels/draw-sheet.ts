import { type Pdf, print } from '../pdf/print.js';
import { drawQr } from '../pdf/qr-code.js';
import { printable } from '../pdf/typeface.js';
import { cornerOf, type LabelFormat, MM, SHEETS, type SheetGeometry } from './sheet-formats.js';

export interface PrintedLabel {
  /** What the code says. */
  readonly address: string;
  readonly machineCode: string;
  readonly machineName: string;
  readonly serial: string | null;
}

export interface SheetOptions {
  readonly format: LabelFormat;
  /** First free place, counted from 1. */
  readonly start: number;
  /** Millimetres to the right and down. */
  readonly offsetX: number;
  readonly offsetY: number;
}

/** Points kept free inside a label's edge: printers and cutters miss by about a millimetre. */
const EDGE = 4;
/** Largest code, points: 30 mm is read from an arm's length. */
const LARGEST = 30 * MM;
/** The rest of the width is for words. */
const LARGEST_SHARE = 0.38;
const SCAN = 'Scan to enter hours · Escanear para anotar horas';

/** Labels of machines on sheets of label paper. To be printed at 100 %, not fitted to the page. */
export function drawLabelSheet(
  labels: readonly PrintedLabel[],
  shop: { readonly name: string; readonly day: Date },
  { format, start, offsetX, offsetY }: SheetOptions,
): Promise<Buffer> {
  const sheet = SHEETS[format];
  const perPage = sheet.columns * sheet.rows;
  const paper = { title: 'Machine labels', author: shop.name, day: shop.day, size: sheet.page, margin: 0 };
  return print(paper, (pdf) => {
    for (const [index, label] of labels.entries()) {
      const place = start - 1 + index;
      if (index > 0 && place % perPage === 0) pdf.addPage();
      const { x, y } = cornerOf(sheet, place % perPage);
      drawLabel(pdf, sheet, label, shop.name, x + offsetX * MM, y + offsetY * MM);
    }
  });
}

function drawLabel(pdf: Pdf, sheet: SheetGeometry, label: PrintedLabel, shopName: string, x: number, y: number): void {
  const side = Math.min(sheet.height - 2 * EDGE, sheet.width * LARGEST_SHARE, LARGEST);
  drawQr(pdf, label.address, x + EDGE, y + (sheet.height - side) / 2, side);
  const left = x + EDGE + side + 2;
  const width = x + sheet.width - EDGE - left;
  // Sized for a label of one inch, and no larger than its words have room for.
  const scale = Math.min(1.5, sheet.height / 72, width / 113);
  const lines: [text: string, size: number, font: 'regular' | 'bold'][] = [
    [shopName, 7, 'bold'],
    [label.machineCode, 14, 'bold'],
    [label.machineName, 7.5, 'regular'],
    [label.serial ? `Serial ${label.serial}` : '', 7.5, 'regular'],
    [SCAN, 5, 'regular'],
  ];
  pdf.fillColor('#000000');
  let top = y + (sheet.height - lines.reduce((sum, [, size]) => sum + size * scale * 1.25, 0)) / 2;
  for (const [text, size, font] of lines) {
    pdf.font(font).fontSize(size * scale);
    pdf.text(printable(text), left, top, { width, height: size * scale * 1.3, ellipsis: true, lineBreak: false });
    top += size * scale * 1.25;
  }
}
