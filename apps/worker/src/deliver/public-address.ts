import { lookup } from 'node:dns/promises';
import { type ClientRequest, request as httpRequest, type RequestOptions } from 'node:http';
import { request as httpsRequest } from 'node:https';
import ipaddr from 'ipaddr.js';

export interface Resolved {
  readonly address: string;
  readonly family: number;
}

export class ForbiddenAddress extends Error {
  override readonly name = 'ForbiddenAddress';
}

/**
 * The addresses of a host, all of which must be public: an endpoint must not reach into the network that this service
 * stands in. The caller connects to these very addresses, so that a second look-up cannot answer otherwise.
 * @throws ForbiddenAddress
 */
export async function resolvePublic(hostname: string, mayBePrivate: boolean): Promise<Resolved[]> {
  const host = hostname.replace(/^\[(.*)\]$/, '$1');
  const found = await lookup(host, { all: true, verbatim: true });
  if (found.length === 0) throw new ForbiddenAddress(`${hostname} has no address.`);
  const wrong = mayBePrivate ? undefined : found.find(({ address }) => !isPublic(address));
  if (wrong) throw new ForbiddenAddress(`${hostname} leads to ${wrong.address}, which is not a public address.`);
  return found;
}

/**
 * A request to a public https address, not sent yet. It connects to the addresses that were judged. Redirects are not
 * followed: Node's own client does not.
 *
 * @throws ForbiddenAddress, or what the look-up throws
 */
export async function requestPublic(
  address: string,
  options: RequestOptions,
  mayBePrivate: boolean,
): Promise<ClientRequest> {
  const url = new URL(address);
  if (url.protocol !== 'https:' && !(mayBePrivate && url.protocol === 'http:'))
    throw new ForbiddenAddress('Only https addresses are called.');
  const resolved = await resolvePublic(url.hostname, mayBePrivate);
  const [first] = resolved;
  const send = url.protocol === 'https:' ? httpsRequest : httpRequest;
  return send(url, {
    ...options,
    lookup: (_host, asked, answer) =>
      asked.all ? answer(null, resolved) : answer(null, first!.address, first!.family),
  });
}

/** Unicast and nothing special: no loopback, private, link-local (cloud metadata), carrier, multicast or mapped range. */
export function isPublic(address: string): boolean {
  const parsed = ipaddr.process(address); // an IPv4 address inside IPv6 is taken as the former
  return parsed.range() === 'unicast';
}
