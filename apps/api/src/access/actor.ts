import { DomainError } from '@deckround/platform';
import { createParamDecorator, type ExecutionContext, SetMetadata } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';

export type PersonRole = 'manager' | 'technician' | 'supervisor';
export type KeyScope = 'read' | 'readings' | 'register' | 'accounting' | 'telematics';

/** Who is calling, and what they may see. */
export interface Actor {
  readonly id: string;
  readonly shopId: string;
  readonly kind: 'person' | 'integration';
  readonly name: string;
  readonly role: PersonRole | null;
  readonly scopes: readonly KeyScope[];
  /** An integration key's own quota; null = the service's. */
  readonly requestsPerMinute: number | null;
  /** A grounds supervisor's own sites; null = every site of the shop. */
  readonly siteIds: readonly string[] | null;
  /** The sign-in behind it; null for an integration key. */
  readonly sessionId: string | null;
}

export interface Permission {
  readonly roles: readonly PersonRole[];
  readonly scope: KeyScope | null;
}

export const PERMISSION = Symbol('permission');
export const PUBLIC = Symbol('public');

/** Who may call a route: persons by role, integration keys by scope. A route without it is closed to all. */
export const Allow = (roles: readonly PersonRole[], scope: KeyScope | null = null) =>
  SetMetadata(PERMISSION, { roles, scope } satisfies Permission);
/** A route that needs no sign-in. */
export const Public = () => SetMetadata(PUBLIC, true);

export type RequestWithActor = FastifyRequest & {
  actor?: Actor;
  /** Why the caller is not known: told once the request has been counted. */
  unknownBecause?: unknown;
};

/** The caller, as a route's parameter. */
export const Caller = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<RequestWithActor>();
  if (!actor) throw new DomainError('signed-out', 'Sign in first.');
  return actor;
});

/** Condition that keeps a supervisor to the machines of the own sites. */
export function machineScope(actor: Actor): object {
  return actor.siteIds === null ? {} : { machine: { siteId: { in: [...actor.siteIds] } } };
}

/** Condition that keeps a supervisor to the own sites, on rows that carry a site. */
export function siteScope(actor: Actor, column = 'siteId'): object {
  return actor.siteIds === null ? {} : { [column]: { in: [...actor.siteIds] } };
}
