/** Says where a stream stops being text: the first byte sequence that is not UTF-8, or a NUL. */
export class NotText extends Error {
  constructor(
    readonly line: number,
    message: string,
    readonly kind: 'nul-bytes' | 'not-utf-8' | 'broken-end',
  ) {
    super(message);
  }
}

/**
 * Passes a stream on, decoded, as long as it is UTF-8 text.
 * @throws NotText with the line of the first fault
 */
export async function* utf8Lines(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  let line = 1;
  for await (const chunk of bytes) {
    const nul = chunk.indexOf(0);
    if (nul >= 0) {
      throw new NotText(
        line + count(chunk.subarray(0, nul)),
        'is not a text file (it holds NUL bytes): save it as CSV, encoded in UTF-8',
        'nul-bytes',
      );
    }
    let text: string;
    try {
      text = decoder.decode(chunk, { stream: true });
    } catch {
      throw new NotText(
        line + count(chunk.subarray(0, firstFault(chunk))),
        'is not UTF-8: save the file again as CSV with encoding UTF-8',
        'not-utf-8',
      );
    }
    line += count(chunk);
    if (text !== '') yield text;
  }
  try {
    decoder.decode();
  } catch {
    throw new NotText(
      line,
      'ends in the middle of a character: save the file again as CSV with encoding UTF-8',
      'broken-end',
    );
  }
}

function count(bytes: Uint8Array): number {
  let lines = 0;
  for (const byte of bytes) if (byte === 10) lines += 1;
  return lines;
}

/** Offset of the first byte that cannot be decoded, found by halving. */
function firstFault(chunk: Uint8Array): number {
  // The chunk may begin with the rest of a character; when nothing after it is wrong, that rest is.
  let start = 0;
  while (start < 3 && ((chunk[start] ?? 0) & 0xc0) === 0x80) start += 1;
  if (isText(chunk.subarray(start))) return 0;
  let good = start;
  let bad = chunk.length;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (isText(chunk.subarray(start, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function isText(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}
