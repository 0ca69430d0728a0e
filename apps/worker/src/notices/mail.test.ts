import { type AddressInfo, createServer, type Socket } from 'node:net';
import { expect, test } from '@jest/globals';
import { openMailer } from './mail.js';

const to = { name: 'Sue', address: 'sue@green.example' };
const NOTICE = { fromName: 'Shop', to, subject: 's', text: 't', calendar: null };

async function sentTo(url: string) {
  const mailer = openMailer(url, 'shop@deckround.example');
  try {
    return await mailer.send('1', NOTICE);
  } finally {
    mailer.close();
  }
}

/** What becomes of a message to a server that does this with every connection. */
async function sentToServerThat(act: (socket: Socket) => void) {
  const server = createServer(act);
  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  try {
    return await sentTo(`smtp://127.0.0.1:${(server.address() as AddressInfo).port}`);
  } finally {
    server.close();
  }
}

test('says in words why a message was not taken, and in the server’s own where it spoke', async () => {
  const failed = (error: string) => ({ kind: 'failed', error });
  expect(await sentTo('smtp://127.0.0.1:1')).toEqual(failed('Nothing answers at this address.'));
  expect(await sentTo('smtp://nowhere.invalid:25')).toEqual(failed('The name in this address is not known.'));
  expect(await sentToServerThat((socket) => socket.destroy())).toEqual(failed('The connection broke off.'));
  const refused = await sentToServerThat((socket) => socket.end('554 go away\r\n'));
  expect(refused).toMatchObject({ kind: 'refused', error: expect.stringContaining('554 go away') });
});
