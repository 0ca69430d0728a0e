import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { piecesOf } from '../test-support/a-register-folder.js';
import { NotText, utf8Lines } from './utf8-lines.js';

async function readAll(content: string | Uint8Array, pieceBytes: number): Promise<string> {
  let text = '';
  for await (const piece of utf8Lines(piecesOf(content, pieceBytes))) text += piece;
  return text;
}

async function faultOf(content: Uint8Array, pieceBytes: number): Promise<NotText> {
  try {
    await readAll(content, pieceBytes);
  } catch (error) {
    if (error instanceof NotText) return error;
    throw error;
  }
  throw new Error('was taken for text');
}

const bytes = (...parts: (string | number[])[]) =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? [...new TextEncoder().encode(part)] : part)));

describe('utf8Lines', () => {
  it('passes any text on unchanged, wherever it is cut into pieces', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.string({ unit: 'binary', maxLength: 40 }).filter((text) => !text.includes('\0')),
        fc.integer({ min: 1, max: 9 }),
        async (text, pieceBytes) => {
          expect(await readAll(text, pieceBytes)).toBe(text);
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });

  it.each([1, 2, 3, 4, 5, 7, 64])('names the line of a Latin-1 byte, in pieces of %i', async (pieceBytes) => {
    const fault = await faultOf(bytes('a,b\nGrün,1\nGr', [0xfc], 'n,2\nlast\n'), pieceBytes);
    expect(fault.line).toBe(3);
    expect(fault.message).toContain('is not UTF-8: save the file again');
  });

  it.each([2, 3, 5, 64])(
    'names the line of a fault after a character cut in two, in pieces of %i',
    async (pieceBytes) => {
      // The piece that begins with the second half of ü holds the fault, some lines on.
      const fault = await faultOf(bytes('ü\nü\nü\n1\n2\n3', [0xff], '\n\n\n\n'), pieceBytes);
      expect(fault.line).toBe(6);
    },
  );

  it('finds a fault in a piece that begins with the second half of a good character', async () => {
    async function* pieces() {
      yield bytes('1', [0xc3]);
      yield bytes([0xbc], '\n2\n3', [0xe9], '\n4\n');
    }
    const read = async () => {
      for await (const _ of utf8Lines(pieces()));
    };
    await expect(read()).rejects.toMatchObject({ line: 3 });
  });

  it('names the line of a NUL', async () => {
    const fault = await faultOf(bytes('a\nb\n', [0x89, 0x50, 0, 0]), 64);
    expect(fault.line).toBe(3);
    expect(fault.message).toContain('NUL bytes');
  });

  it('refuses a file that ends in the middle of a character', async () => {
    const fault = await faultOf(bytes('a\nb', [0xe2, 0x82]), 64);
    expect(fault.line).toBe(2);
    expect(fault.message).toContain('ends in the middle of a character');
  });
});
