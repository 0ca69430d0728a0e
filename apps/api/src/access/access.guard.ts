import { DomainError } from '@deckround/platform';
import { type CanActivate, type ExecutionContext, Inject, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { AccessService } from './access.service.js';
import { type Actor, PERMISSION, type Permission, PUBLIC, type RequestWithActor } from './actor.js';

/** Finds out who calls, and lets through only whom the route allows. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(AccessService) private readonly access: AccessService,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<boolean>(PUBLIC, targets)) return true;
    const request = context.switchToHttp().getRequest<RequestWithActor>();
    const token = /^Bearer ([\w-]{20,200})$/.exec(request.headers.authorization ?? '')?.[1];
    if (!token) throw new DomainError('signed-out', 'Sign in, then send the token as "Authorization: Bearer …".');
    const actor = await this.access.actorOf(token);
    const permission = this.reflector.getAllAndOverride<Permission>(PERMISSION, targets);
    if (!permission || !isAllowed(actor, permission)) {
      throw new DomainError('not-allowed', 'Your role or key does not allow this.');
    }
    request.actor = actor;
    return true;
  }
}

function isAllowed(actor: Actor, { roles, scope }: Permission): boolean {
  if (actor.kind === 'integration') return scope !== null && actor.scopes.includes(scope);
  return actor.role !== null && roles.includes(actor.role);
}
