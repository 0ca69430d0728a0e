import { inflateSync } from 'node:zlib';

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface PdfObject {
  readonly head: string;
  /** Of a stream, unpacked; empty for everything else. */
  readonly content: string;
}

/** The rectangles that are drawn on each page of a PDF of ours, in points from the top left corner. */
export function rectanglesOf(pdf: Buffer): Rectangle[][] {
  return pagesOf(objectsOf(pdf)).map(({ content }) =>
    [...content.matchAll(/^(-?[\d.]+) (-?[\d.]+) (-?[\d.]+) (-?[\d.]+) re$/gm)].map(([, x, y, width, height]) => ({
      x: Number(x),
      y: Number(y),
      width: Number(width),
      height: Number(height),
    })),
  );
}

/** The lines of text on each page, as a reader copies them out: through the embedded fonts' own tables. */
export function linesOf(pdf: Buffer): string[][] {
  const objects = objectsOf(pdf);
  const fonts = new Map<string, string[]>();
  for (const { head } of objects.values())
    for (const [, name, id] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) fonts.set(name!, lettersOf(objects, id!));
  return pagesOf(objects).map(({ content }) => {
    const lines: string[] = [];
    let letters: string[] = [];
    for (const [, font, text] of content.matchAll(/\/(F\d+) [\d.]+ Tf|^\[(.*)\] TJ$/gm)) {
      if (font !== undefined) letters = fonts.get(font) ?? [];
      else {
        const glyphs = [...text!.matchAll(/<([0-9a-f]+)>/g)].flatMap(([, hex]) => hex!.match(/.{4}/g) ?? []);
        lines.push(glyphs.map((glyph) => letters[Number.parseInt(glyph, 16)] ?? '�').join(''));
      }
    }
    return lines;
  });
}

/** Letters by number of glyph, from a font's ToUnicode table. */
function lettersOf(objects: ReadonlyMap<string, PdfObject>, fontId: string): string[] {
  const table = /\/ToUnicode (\d+) 0 R/.exec(objects.get(fontId)?.head ?? '')?.[1];
  const letters: string[] = [];
  for (const [, from, list] of (objects.get(table ?? '')?.content ?? '').matchAll(/<(\w+)> <\w+> \[([^\]]*)\]/g)) {
    const codes = [...list!.matchAll(/<([0-9a-f ]+)>/g)].map(([, hex]) => hex!.replaceAll(' ', ''));
    for (const [index, code] of codes.entries())
      letters[Number.parseInt(from!, 16) + index] = Buffer.from(code, 'hex').swap16().toString('utf16le');
  }
  return letters;
}

function pagesOf(objects: ReadonlyMap<string, PdfObject>): PdfObject[] {
  return [...objects.values()]
    .filter(({ head }) => /\/Type \/Page\b/.test(head))
    .map(({ head }) => objects.get(/\/Contents (\d+) 0 R/.exec(head)![1]!)!);
}

function objectsOf(pdf: Buffer): Map<string, PdfObject> {
  const objects = new Map<string, PdfObject>();
  const text = pdf.toString('latin1');
  const starts = [...text.matchAll(/^(\d+) 0 obj$/gm)];
  for (const [index, start] of starts.entries()) {
    const from = start.index;
    const body = text.slice(from, starts[index + 1]?.index);
    const stream = body.indexOf('stream\n');
    const begin = from + stream + 'stream\n'.length;
    const isPacked = stream >= 0 && body.slice(0, stream).includes('/FlateDecode');
    objects.set(start[1]!, {
      head: stream < 0 ? body : body.slice(0, stream),
      content: isPacked
        ? inflateSync(pdf.subarray(begin, from + body.lastIndexOf('\nendstream'))).toString('latin1')
        : '',
    });
  }
  return objects;
}

/** Black rectangles on white paper as pixels, four bytes each. */
export function rasterise(rectangles: readonly Rectangle[], window: Rectangle, pixelsPerPoint: number) {
  const [width, height] = [Math.round(window.width * pixelsPerPoint), Math.round(window.height * pixelsPerPoint)];
  const pixels = new Uint8ClampedArray(width * height * 4).fill(255);
  for (const each of rectangles) {
    const [left, top] = [(each.x - window.x) * pixelsPerPoint, (each.y - window.y) * pixelsPerPoint];
    const [right, bottom] = [left + each.width * pixelsPerPoint, top + each.height * pixelsPerPoint];
    for (let row = Math.max(0, Math.round(top)); row < Math.min(height, Math.round(bottom)); row += 1)
      for (let column = Math.max(0, Math.round(left)); column < Math.min(width, Math.round(right)); column += 1)
        pixels.fill(0, (row * width + column) * 4, (row * width + column) * 4 + 3);
  }
  return { pixels, width, height };
}
