import type { JobQueue } from '@deckround/jobs';
import type { Store } from '@deckround/store';
import { Controller, Get, Inject, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { Public } from '../access/actor.js';
import { Answers } from '../http/answer.js';
import { QUEUE, STORE } from '../http/tokens.js';

const Health = z.object({ status: z.enum(['up']) }).meta({ id: 'Health' });
const Readiness = z.object({ ready: z.boolean(), database: z.boolean(), queue: z.boolean() }).meta({ id: 'Readiness' });

@ApiTags('System')
@Controller()
@Public()
export class HealthController {
  constructor(
    @Inject(STORE) private readonly store: Store,
    @Inject(QUEUE) private readonly queue: JobQueue,
  ) {}

  @Get('health')
  @Answers(200, Health, 'The process runs')
  health() {
    return { status: 'up' as const };
  }

  @Get('ready')
  @Answers(200, Readiness, 'Everything it needs answers (503 otherwise, with the same body)')
  async ready(@Res({ passthrough: true }) reply: FastifyReply) {
    const [database, queue] = await Promise.all([this.store.isReady(), this.queue.isReady()]);
    if (!database || !queue) reply.status(503);
    return { ready: database && queue, database, queue };
  }
}
