import sax from 'sax';
import { InvalidSnapshot } from './heard-unit.js';
import type { NodeBuilder } from './node-builder.js';

/** A reader to be fed with text: `write` what comes, `close` after the last. */
export interface Feed {
  write(text: string): void;
  close(): void;
}

/**
 * XML, well-formed and plain: no document type, hence no entities but the five of XML itself, and no encoding but UTF-8.
 *
 * @throws InvalidSnapshot from `write` and `close`
 */
export function readXml(builder: NodeBuilder): Feed {
  const parser = sax.parser(true, { strictEntities: true, position: true } as sax.SAXOptions);
  const refuse = (why: string): never => {
    throw new InvalidSnapshot(`Line ${parser.line + 1}: ${why}`);
  };
  parser.onerror = (error) => refuse(error.message.split('\n')[0]!);
  parser.ondoctype = () => refuse('a document type (<!DOCTYPE …>) is refused.');
  parser.onprocessinginstruction = ({ name, body }) => {
    const encoding = /\bencoding\s*=\s*["']([^"']*)["']/i.exec(body)?.[1];
    if (name === 'xml' && encoding !== undefined && !/^(utf-?8|us-ascii)$/i.test(encoding))
      refuse(`the encoding ${encoding.slice(0, 20)} is not read: send UTF-8.`);
  };
  parser.onopentag = ({ name, attributes }) => {
    builder.start(name);
    for (const [attribute, value] of Object.entries(attributes)) {
      if (/^xmlns(:|$)/.test(attribute)) continue;
      builder.start(attribute);
      builder.text(String(value));
      builder.end();
    }
  };
  parser.ontext = (text) => builder.text(text);
  parser.oncdata = (text) => builder.text(text);
  parser.onclosetag = () => builder.end();
  return {
    write: (text) => {
      parser.write(text);
    },
    close: () => {
      parser.close();
      builder.finish();
    },
  };
}
