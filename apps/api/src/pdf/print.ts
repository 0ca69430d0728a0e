import PDFDocument from 'pdfkit';
import { BOLD, printable, REGULAR } from './typeface.js';

export type Pdf = InstanceType<typeof PDFDocument>;

/** Points from the edge of a page. */
export const MARGIN = 50;

export interface Paper {
  readonly title: string;
  readonly author: string;
  /** Stands for the moment of making, so that the same content gives the same bytes. */
  readonly day: Date;
  readonly language?: 'en' | 'es';
  /** Width and height in points; US Letter unless told otherwise. */
  readonly size?: readonly [number, number];
  readonly margin?: number;
}

/** Draws a document of one or more pages. Fonts are called `regular` and `bold`. @returns its bytes */
export async function print(paper: Paper, draw: (pdf: Pdf) => void): Promise<Buffer> {
  const { title, author, day, language = 'en', size = [612, 792], margin = MARGIN } = paper;
  const pdf = new PDFDocument({
    size: [...size],
    margin,
    bufferPages: true,
    lang: language === 'es' ? 'es-US' : 'en-US',
    displayTitle: true,
    info: { Title: title, Author: author, CreationDate: day, ModDate: day },
  });
  pdf.registerFont('regular', REGULAR).registerFont('bold', BOLD).font('regular');
  const chunks: Buffer[] = [];
  pdf.on('data', (chunk: Buffer) => chunks.push(chunk));
  const ended = new Promise<void>((done, fail) => {
    pdf.on('end', () => done());
    pdf.on('error', fail);
  });
  draw(pdf);
  pdf.end();
  await ended;
  return Buffer.concat(chunks);
}

/** A thin line across the page, below what was written last. */
export function rule(pdf: Pdf): void {
  pdf
    .moveTo(MARGIN, pdf.y + 2)
    .lineTo(pdf.page.width - MARGIN, pdf.y + 2)
    .lineWidth(0.5)
    .strokeColor('#888888')
    .stroke();
  pdf.y += 8;
}

/** Writes at the foot of every page: `textOf(page, pages)`. */
export function pageNumbers(pdf: Pdf, textOf: (page: number, pages: number) => string): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let page = start; page < start + count; page += 1) {
    pdf.switchToPage(page);
    pdf.page.margins.bottom = 0; // else the line below starts another page
    pdf.font('regular').fontSize(8).fillColor('#555555');
    pdf.text(printable(textOf(page + 1, count)), MARGIN, pdf.page.height - 35, {
      width: pdf.page.width - 2 * MARGIN,
      align: 'center',
    });
  }
}
