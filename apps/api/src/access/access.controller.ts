import { Myself, SignedIn, SignIn } from '@deckround/contracts';
import { Body, Controller, Delete, Get, HttpCode, Inject, Post } from '@nestjs/common';
import { ApiBearerAuth, ApiNoContentResponse, ApiTags } from '@nestjs/swagger';
import type { z } from 'zod';
import { Answers } from '../http/answer.js';
import { AccessService } from './access.service.js';
import { type Actor, Allow, Caller, Public } from './actor.js';

const EVERYONE = ['manager', 'technician', 'supervisor'] as const;

@ApiTags('Sign-in')
@Controller('v1/session')
export class AccessController {
  constructor(@Inject(AccessService) private readonly access: AccessService) {}

  @Post()
  @Public()
  @Answers(201, SignedIn, 'Signed in')
  signIn(@Body({ schema: SignIn }) body: z.infer<typeof SignIn>) {
    return this.access.signIn(body.email, body.password);
  }

  @Get()
  @ApiBearerAuth()
  @Allow(EVERYONE, 'read')
  @Answers(200, Myself, 'Who this token belongs to')
  myself(@Caller() actor: Actor) {
    return {
      kind: actor.kind,
      name: actor.name,
      role: actor.role,
      scopes: [...actor.scopes],
      siteIds: actor.siteIds && [...actor.siteIds],
    };
  }

  @Delete()
  @ApiBearerAuth()
  @Allow(EVERYONE)
  @HttpCode(204)
  @ApiNoContentResponse({ description: 'Signed out; the token is of no more use' })
  async signOut(@Caller() actor: Actor): Promise<void> {
    await this.access.signOut(actor);
  }
}
