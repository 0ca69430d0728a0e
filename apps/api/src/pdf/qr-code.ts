import qrcode from 'qrcode';
import type { Pdf } from './print.js';

/** Modules of blank paper that a reader wants around a code: ISO/IEC 18004, from memory. */
const QUIET = 4;

/**
 * Draws a QR code, quiet zone included, as one shape of vector rectangles: it is sharp at any size. Error correction Q
 * restores a quarter of it, for labels on machines that work outdoors.
 *
 * @param side length of an edge, points
 * @source ISO/IEC 18004 by way of the library `qrcode`
 */
export function drawQr(pdf: Pdf, text: string, x: number, y: number, side: number): void {
  const { modules } = qrcode.create(text, { errorCorrectionLevel: 'Q' });
  const unit = side / (modules.size + 2 * QUIET);
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      const from = column;
      while (column < modules.size && modules.get(row, column)) column += 1;
      // One rectangle for a run of dark modules: neighbours drawn apart show hairlines between them.
      if (column > from) pdf.rect(x + (QUIET + from) * unit, y + (QUIET + row) * unit, (column - from) * unit, unit);
    }
  }
  pdf.fill('#000000');
}
