import { inflateSync } from 'node:zlib';

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The rectangles that are drawn on each page of a PDF of ours, in points from the top left corner. */
export function rectanglesOf(pdf: Buffer): Rectangle[][] {
  return contentsOf(pdf).map((content) =>
    [...content.matchAll(/^(-?[\d.]+) (-?[\d.]+) (-?[\d.]+) (-?[\d.]+) re$/gm)].map(([, x, y, width, height]) => ({
      x: Number(x),
      y: Number(y),
      width: Number(width),
      height: Number(height),
    })),
  );
}

/** Drawing instructions of each page: the streams that begin by turning the page's axis downwards. */
function contentsOf(pdf: Buffer): string[] {
  const contents: string[] = [];
  for (let from = pdf.indexOf('stream\n'); from >= 0; from = pdf.indexOf('stream\n', from + 1)) {
    const begin = from + 'stream\n'.length;
    const end = pdf.indexOf('\nendstream', begin);
    if (end < 0) break;
    const content = inflated(pdf.subarray(begin, end));
    if (/^(q\s+)?1 0 0 -1 0 [\d.]+ cm/.test(content)) contents.push(content);
    from = end + '\nendstream'.length;
  }
  return contents;
}

function inflated(bytes: Buffer): string {
  try {
    return inflateSync(bytes).toString('latin1');
  } catch {
    return '';
  }
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
