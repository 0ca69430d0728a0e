import { InvalidSnapshot, type SnapshotItem } from './heard-unit.js';
import { NodeBuilder } from './node-builder.js';
import { readJson } from './read-json.js';
import { readXml } from './read-xml.js';

export type SnapshotFormat = 'xml' | 'json';

/**
 * Reads a snapshot while it comes in: machines and links are handed out one by one, and what has been handed out is
 * forgotten, so that memory does not grow with the document.
 *
 * @param chunks pieces of UTF-8
 * @throws InvalidSnapshot at the first fault; what came before it has been handed out
 */
export async function* readSnapshot(
  chunks: AsyncIterable<Uint8Array>,
  format: SnapshotFormat,
): AsyncGenerator<SnapshotItem> {
  let items: SnapshotItem[] = [];
  const builder = new NodeBuilder((item) => items.push(item));
  const feed = format === 'xml' ? readXml(builder) : readJson(builder);
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const decode = (chunk?: Uint8Array): string => {
    try {
      return decoder.decode(chunk, { stream: chunk !== undefined });
    } catch {
      throw new InvalidSnapshot('It is not UTF-8.');
    }
  };
  for await (const chunk of chunks) {
    let fault: unknown = null;
    try {
      feed.write(decode(chunk));
    } catch (error) {
      fault = error;
    }
    yield* items;
    if (fault) throw fault;
    items = [];
  }
  feed.write(decode());
  feed.close();
  yield* items;
}
