import { DomainError } from '@deckround/platform';
import { type CanActivate, type ExecutionContext, Inject, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { AccessService } from './access.service.js';
import { PUBLIC, type RequestWithActor } from './actor.js';

/** Finds out who calls. It refuses nobody: guesses at tokens are to be counted first, like any other request. */
@Injectable()
export class IdentifyGuard implements CanActivate {
  constructor(
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(AccessService) private readonly access: AccessService,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    if (this.reflector.getAllAndOverride<boolean>(PUBLIC, [context.getHandler(), context.getClass()])) return true;
    const request = context.switchToHttp().getRequest<RequestWithActor>();
    const token = /^Bearer ([\w-]{20,200})$/.exec(request.headers.authorization ?? '')?.[1];
    try {
      if (!token) throw new DomainError('signed-out', 'Sign in, then send the token as "Authorization: Bearer …".');
      request.actor = await this.access.actorOf(token);
    } catch (error) {
      request.unknownBecause = error;
    }
    return true;
  }
}
