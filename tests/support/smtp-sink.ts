import type { AddressInfo } from 'node:net';
import { createServer, type Socket } from 'node:net';

export interface Mail {
  readonly recipients: readonly string[];
  readonly headers: Readonly<Record<string, string>>;
  /** Plain text first, then the attachments, decoded. */
  readonly parts: readonly { readonly type: string; readonly text: string }[];
}

/** A mail server that keeps what it takes (RFC 5321, what a client needs of it). `answer` decides about each message. */
export async function smtpSink(answer: (mail: Mail) => string) {
  const mails: Mail[] = [];
  const server = createServer((socket) => talk(socket, answer, mails));
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    url: `smtp://127.0.0.1:${(server.address() as AddressInfo).port}`,
    mails,
    close: () => new Promise((done) => server.close(done)),
  };
}

function talk(socket: Socket, answer: (mail: Mail) => string, mails: Mail[]): void {
  let recipients: string[] = [];
  let data: string | null = null;
  let rest = '';
  const say = (line: string) => socket.write(`${line}\r\n`);
  say('220 sink.example');
  socket.on('error', () => {});
  socket.on('data', (chunk) => {
    rest += chunk.toString('utf8');
    for (let end = rest.indexOf('\r\n'); end >= 0; end = rest.indexOf('\r\n')) {
      const line = rest.slice(0, end);
      rest = rest.slice(end + 2);
      if (data !== null) {
        if (line !== '.') data += `${line.replace(/^\./, '')}\r\n`;
        else {
          const mail = parse(recipients, data);
          data = null;
          recipients = [];
          const reply = answer(mail);
          if (reply.startsWith('250')) mails.push(mail);
          say(reply);
        }
      } else if (/^EHLO/i.test(line)) say('250 sink.example');
      else if (/^RCPT TO:/i.test(line)) {
        recipients.push(/<(.*?)>/.exec(line)![1]!);
        say('250 ok');
      } else if (/^DATA/i.test(line)) {
        data = '';
        say('354 go on');
      } else if (/^QUIT/i.test(line)) {
        say('221 bye');
        socket.end();
      } else say('250 ok');
    }
  });
}

function parse(recipients: readonly string[], source: string): Mail {
  const { headers, body } = split(source);
  const boundary = /boundary="([^"]+)"/.exec(headers['content-type'] ?? '')?.[1];
  const sources = boundary === undefined ? [source] : body.split(`--${boundary}`).slice(1, -1);
  const parts = sources.map((each) => {
    const part = split(each.replace(/^\r\n/, ''));
    const type = part.headers['content-type'] ?? '';
    return { type, text: decode(part.headers['content-transfer-encoding'] ?? '', part.body) };
  });
  return { recipients, headers, parts };
}

function split(source: string): { headers: Record<string, string>; body: string } {
  const end = source.indexOf('\r\n\r\n');
  const lines = source
    .slice(0, end)
    .replace(/\r\n[ \t]/g, ' ')
    .split('\r\n');
  const headers = Object.fromEntries(
    lines.map((line) => {
      const colon = line.indexOf(':');
      return [line.slice(0, colon).toLowerCase(), words(line.slice(colon + 1).trim())];
    }),
  );
  return { headers, body: source.slice(end + 4) };
}

/** Encoded words of a header, RFC 2047. */
function words(text: string): string {
  return text
    .replace(/\?=\s+=\?/g, '?==?')
    .replace(/=\?utf-8\?([QB])\?(.*?)\?=/gi, (_, how: string, coded: string) =>
      how.toUpperCase() === 'B'
        ? Buffer.from(coded, 'base64').toString('utf8')
        : decode('quoted-printable', coded.replaceAll('_', ' ')),
    );
}

function decode(encoding: string, body: string): string {
  if (/base64/i.test(encoding)) return Buffer.from(body, 'base64').toString('utf8');
  if (!/quoted-printable/i.test(encoding)) return body;
  const bytes = body
    .replace(/=\r\n/g, '')
    .replace(/=([0-9A-F]{2})/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
  return Buffer.from(bytes, 'latin1').toString('utf8');
}
