import { InvalidSnapshot } from './heard-unit.js';

/** The same pieces, up to a limit. @throws InvalidSnapshot beyond it */
export async function* atMost(chunks: AsyncIterable<Uint8Array>, bytes: number): AsyncGenerator<Uint8Array> {
  let read = 0;
  for await (const chunk of chunks) {
    read += chunk.length;
    if (read > bytes) throw new InvalidSnapshot(`It is larger than ${Math.floor(bytes / 2 ** 20)} MiB.`);
    yield chunk;
  }
}
