import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';

const SITE = fileURLToPath(new URL('../../web/dist/site/', import.meta.url));
/** What belongs to programs: an unknown address there is a problem document, never a page. */
const OF_PROGRAMS = /^\/(v1|docs|health|ready|openapi\.json)(\/|$)/;
/** Vite names these files by their content. */
const HASHED = /^assets\//;
const HAS_ENDING = /\.[a-z0-9]+$/i;

/** The screens, from the built apps/web. Every address that is no file opens the app, which knows its own pages. */
export async function serveWebApp(fastify: FastifyInstance): Promise<void> {
  if (!existsSync(`${SITE}index.html`)) {
    fastify.get('/', (_request, reply) => reply.redirect('/docs', 302));
    return;
  }
  const names = readdirSync(SITE, { recursive: true }).map((name) => String(name).replaceAll('\\', '/'));
  const files = new Set(names.filter((name) => HAS_ENDING.test(name)));
  await fastify.register(fastifyStatic, { root: SITE, serve: false, preCompressed: true, cacheControl: false });
  fastify.get('/*', (request, reply) => {
    const path = decodedPath(request.url);
    if (path === null || OF_PROGRAMS.test(path)) return reply.callNotFound();
    const name = path.slice(1);
    if (files.has(name)) {
      const kept = HASHED.test(name) ? 'public, max-age=31536000, immutable' : 'no-cache';
      return reply.header('cache-control', kept).sendFile(name);
    }
    if (HASHED.test(name) || HAS_ENDING.test(name)) return reply.callNotFound();
    return reply.header('cache-control', 'no-cache').sendFile('index.html');
  });
}

function decodedPath(url: string): string | null {
  try {
    return decodeURIComponent(url.split('?')[0]!);
  } catch {
    return null;
  }
}
