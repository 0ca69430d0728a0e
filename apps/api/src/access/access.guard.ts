import { DomainError } from '@deckround/platform';
import { type CanActivate, type ExecutionContext, Inject, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { type Actor, PERMISSION, type Permission, PUBLIC, type RequestWithActor } from './actor.js';

/** Lets through only whom the route allows. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(@Inject(Reflector) private readonly reflector: Reflector) {}

  canActivate(context: ExecutionContext): boolean {
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<boolean>(PUBLIC, targets)) return true;
    const { actor, unknownBecause } = context.switchToHttp().getRequest<RequestWithActor>();
    if (!actor) throw unknownBecause;
    const permission = this.reflector.getAllAndOverride<Permission>(PERMISSION, targets);
    if (!permission || !isAllowed(actor, permission))
      throw new DomainError('not-allowed', 'Your role or key does not allow this.');
    return true;
  }
}

function isAllowed(actor: Actor, { roles, scope }: Permission): boolean {
  if (actor.kind === 'integration') return scope !== null && actor.scopes.includes(scope);
  return actor.role !== null && roles.includes(actor.role);
}
