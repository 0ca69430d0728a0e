import { randomUUID } from 'node:crypto';
import type { Problem } from '@deckround/contracts';
import { DomainError, type Logger } from '@deckround/platform';
import { Prisma } from '@deckround/store';
import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { describeDatabase } from './describe-database.js';
import { type Found, PROBLEMS, problemType } from './problem-map.js';

/** Turns every exception into an RFC 9457 document, in this one place. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  constructor(private readonly logger: Logger) {}

  catch(exception: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    this.answer(exception, http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>());
  }

  /** Also for what fails before any route is found, like an address that cannot be read. */
  answer(exception: unknown, request: FastifyRequest, reply: FastifyReply): void {
    const found = describe(exception, request.body);
    const correlationId = randomUUID();
    if (found.status >= 500)
      this.logger.error(
        'request.failed',
        { correlationId, method: request.method, path: loggedPath(request.url) },
        exception,
      );
    const problem: Problem = { ...found, instance: request.url.split('?')[0]!, correlationId };
    if (found.status === 401) reply.header('www-authenticate', 'Bearer');
    if (found.status === 429) reply.header('retry-after', String(retryAfterOf(exception)));
    reply
      .status(found.status)
      .header('content-type', 'application/problem+json; charset=utf-8')
      .send(JSON.stringify(problem));
  }
}

/** A path without what is asked and without the secret of a calendar, which is part of its path. */
function loggedPath(url: string): string {
  return url.split('?')[0]!.replace(/^(\/v1\/calendars\/).+/, '$1…');
}

const DEFAULT_RETRY_SECONDS = 900;

function retryAfterOf(exception: unknown): number {
  return (exception instanceof DomainError ? exception.retryAfterSeconds : null) ?? DEFAULT_RETRY_SECONDS;
}

function describe(exception: unknown, body: unknown): Found {
  if (exception instanceof DomainError) {
    const { status, title } = PROBLEMS[exception.code];
    const errors = exception.errors.length > 0 ? { errors: exception.errors.map((each) => ({ ...each })) } : {};
    return { type: problemType(exception.code), title, status, detail: exception.detail, ...errors };
  }
  if (exception instanceof Prisma.PrismaClientKnownRequestError) return describeDatabase(exception, body);
  if (exception instanceof HttpException) {
    const status = exception.getStatus();
    return { type: problemType(`http-${status}`), title: exception.message, status, detail: exception.message };
  }
  const status = (exception as { statusCode?: number } | null)?.statusCode;
  if (status !== undefined && status >= 400 && status < 500) {
    const message = (exception as Error).message;
    return { type: problemType(`http-${status}`), title: 'The request cannot be read', status, detail: message };
  }
  return {
    type: problemType('internal'),
    title: 'Something went wrong here',
    status: 500,
    detail: 'Nothing was changed. Try again; if it stays, tell whoever runs the server the correlation id.',
  };
}
