import 'reflect-metadata';
import { DomainError } from '@deckround/platform';
import compress from '@fastify/compress';
import helmet from '@fastify/helmet';
import { StandardSchemaSerializerInterceptor, StandardSchemaValidationPipe } from '@nestjs/common';
import { NestFactory, Reflector } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { z } from 'zod';
import { type ApiContext, AppModule } from './app.module.js';
import { openApiDocument } from './openapi/document.js';
import { READABLE_PAGE_STYLE, readablePage } from './openapi/readable-page.js';
import { faultClause } from './problems/fault-clause.js';
import { ProblemFilter } from './problems/problem.filter.js';
import { streamSnapshots } from './telematics/streamed-snapshots.js';
import { serveWebApp } from './web-app.js';

const MAX_BODY = 4 * 1024 * 1024;

/** The API as an application that does not listen yet. */
export async function createApi(context: ApiContext): Promise<NestFastifyApplication> {
  const problems = new ProblemFilter(context.logger);
  const adapter = new FastifyAdapter({
    frameworkErrors: (error: Error, request: FastifyRequest, reply: FastifyReply) =>
      problems.answer(error, request, reply),
    bodyLimit: MAX_BODY,
    forceCloseConnections: true,
    trustProxy: context.config.TRUSTED_PROXIES ?? false,
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.for(context), adapter, {
    logger: false,
    abortOnError: false,
  });
  // A week is some hundred kilobytes, a tenth of it compressed: what a phone in the field waits for. Requests are read as before.
  await app.register(compress, { globalDecompression: false, encodings: ['br', 'gzip'] });
  const tilesFrom = context.config.MAP_TILES === undefined ? [] : [new URL(context.config.MAP_TILES).origin];
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'", READABLE_PAGE_STYLE],
        fontSrc: ["'self'"],
        imgSrc: ["'self'", 'data:', 'blob:', ...tilesFrom],
        connectSrc: ["'self'", ...tilesFrom],
        workerSrc: ["'self'"],
        manifestSrc: ["'self'"],
        formAction: ["'self'"],
        baseUri: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
  });
  app.useGlobalPipes(
    new StandardSchemaValidationPipe({
      exceptionFactory: (issues) =>
        new DomainError(
          'invalid-input',
          'Some fields cannot be used. Nothing was changed.',
          issues.map((issue) => {
            const clause = faultClause(issue as z.core.$ZodIssue);
            return {
              pointer: pointerOf(issue.path),
              detail: issue.message,
              ...(clause === undefined ? {} : { clause }),
            };
          }),
        ),
    }),
  );
  app.useGlobalInterceptors(new StandardSchemaSerializerInterceptor(app.get(Reflector)));
  app.useGlobalFilters(problems);

  const fastify = app.getHttpAdapter().getInstance();
  fastify.addContentTypeParser(/^image\/(jpeg|png|webp)$/, { parseAs: 'buffer' }, (_request, body, done) =>
    done(null, body),
  );
  streamSnapshots(fastify);
  // Made when first asked for: a service that starts anew should soon answer.
  const document = once(() => openApiDocument(app));
  const page = once(() => readablePage(document()));
  fastify.get('/openapi.json', (_request, reply) => reply.send(document()));
  fastify.get('/docs', (_request, reply) => reply.type('text/html; charset=utf-8').send(page()));
  await serveWebApp(fastify);
  await app.init();
  await fastify.ready();
  return app;
}

/** JSON pointer (RFC 6901) of a faulty field. */
function pointerOf(path: readonly (PropertyKey | { readonly key: PropertyKey })[] | undefined): string {
  return (path ?? [])
    .map(
      (step) =>
        `/${String(typeof step === 'object' ? step.key : step)
          .replace(/~/g, '~0')
          .replace(/\//g, '~1')}`,
    )
    .join('');
}

/** Makes it at the first call, and answers with the same from then on. */
function once<T extends object | string>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
