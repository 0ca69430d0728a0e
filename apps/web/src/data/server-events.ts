import { send } from './api.js';

export interface ServerEvent {
  readonly event: string;
  readonly data: string;
}

/** Events of a `text/event-stream` (WHATWG HTML, 9.2). EventSource cannot send a bearer token, so the stream is read here. */
export async function* serverEvents(path: string, signal: AbortSignal): AsyncGenerator<ServerEvent> {
  const response = await send('GET', path, { signal });
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  let rest = '';
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    const blocks = (rest + value).split('\n\n');
    rest = blocks.pop()!;
    for (const block of blocks) {
      const parsed = parseEvent(block);
      if (parsed !== null) yield parsed;
    }
  }
}

/** One block of a stream; null for a comment. */
export function parseEvent(block: string): ServerEvent | null {
  let event = 'message';
  const data: string[] = [];
  for (const line of block.split('\n')) {
    if (line.startsWith('event:')) event = line.slice(6).trim();
    else if (line.startsWith('data:')) data.push(line.slice(5).replace(/^ /, ''));
  }
  return data.length === 0 ? null : { event, data: data.join('\n') };
}
