import { getManyValues, isMany, none } from 'stream-chain/defs.js';
import { jsonParser, type Token } from 'stream-json/core/parser.js';
import { InvalidSnapshot } from './heard-unit.js';
import type { NodeBuilder } from './node-builder.js';
import type { Feed } from './read-xml.js';

/**
 * JSON with the elements of the XML form as properties. Each value of a list is taken as an element of the list's name, and
 * numbers stay the text that they were.
 *
 * @throws InvalidSnapshot from `write` and `close`
 */
export function readJson(builder: NodeBuilder): Feed {
  const parse = jsonParser({ packValues: false });
  /** For every open object or list, the name that its values go by, and whether it is an element itself. */
  const open: { readonly isList: boolean; readonly isElement: boolean; name: string }[] = [];
  let key: string | null = null;

  const startValue = () => builder.start(open.at(-1)?.name ?? '');
  const take = (token: Token) => {
    switch (token.name) {
      case 'startObject':
        startValue();
        open.push({ isList: false, isElement: true, name: '' });
        return;
      case 'startArray': {
        // A list within a list, or at the top, is an element too, so that its depth counts.
        const around = open.at(-1);
        const isElement = around === undefined || around.isList;
        if (isElement) startValue();
        open.push({ isList: true, isElement, name: around?.name ?? '' });
        return;
      }
      case 'endObject':
      case 'endArray':
        if (open.pop()!.isElement) builder.end();
        return;
      case 'startKey':
        key = '';
        return;
      case 'endKey':
        open.at(-1)!.name = key!;
        key = null;
        return;
      case 'startString':
      case 'startNumber':
        startValue();
        return;
      case 'stringChunk':
      case 'numberChunk':
        if (key === null) builder.text(token.value);
        else if (key.length < MAX_KEY) key += token.value;
        return;
      case 'endString':
      case 'endNumber':
        builder.end();
        return;
      case 'trueValue':
      case 'falseValue':
        startValue();
        builder.text(String(token.value));
        builder.end();
        return;
      default: // null is nothing told
    }
  };
  const feed = (text: string | typeof none) => {
    let tokens: unknown;
    try {
      tokens = parse(text as string);
    } catch (error) {
      throw new InvalidSnapshot(`It is not JSON: ${(error as Error).message}`);
    }
    if (isMany(tokens)) for (const token of getManyValues(tokens) as Token[]) take(token);
  };
  return {
    write: feed,
    close: () => {
      feed(none);
      builder.finish();
    },
  };
}

/** A longer name is none of ours. */
const MAX_KEY = 100;
