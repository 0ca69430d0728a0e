import type { Config } from '@deckround/platform';
import type { FastifyRequest } from 'fastify';

/** Where people reach the service, without a slash at the end: for codes and links that leave it. */
export function publicAddress(config: Config, request: FastifyRequest): string {
  return new URL(config.PUBLIC_URL ?? `${request.protocol}://${request.host}`).origin;
}
