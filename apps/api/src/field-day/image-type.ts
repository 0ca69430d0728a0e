/** The kind of picture by its first bytes (ITU-T T.81 SOI marker; PNG 1.2, 3.1; RIFF container of WebP); null = none. */
export function imageTypeOf(bytes: Uint8Array): 'image/jpeg' | 'image/png' | 'image/webp' | null {
  const starts = (hex: string, at = 0) => Buffer.from(bytes.subarray(at, at + hex.length / 2)).toString('hex') === hex;
  if (starts('ffd8ff')) return 'image/jpeg';
  if (starts('89504e470d0a1a0a')) return 'image/png';
  return starts('52494646') && starts('57454250', 8) ? 'image/webp' : null;
}
