import { isIP } from 'node:net';
import { type Config, DomainError } from '@deckround/platform';
import { isPublic } from '@deckround/worker';

/**
 * What can be told from an address alone; where its name leads is checked whenever it is called.
 * @throws DomainError invalid-input
 */
export function requirePublicAddress(config: Config, address: string, refusal: string): void {
  if (config.WEBHOOK_PRIVATE === 'yes') return;
  const { protocol, hostname } = new URL(address);
  const host = hostname.replace(/^\[(.*)\]$/, '$1');
  const isPrivate = host === 'localhost' || (isIP(host) !== 0 && !isPublic(host));
  if (protocol !== 'https:' || isPrivate) {
    throw new DomainError('invalid-input', refusal, [
      { pointer: '/url', detail: 'use an https address on the public network' },
    ]);
  }
}
