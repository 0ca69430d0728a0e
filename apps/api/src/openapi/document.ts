import { Problem } from '@deckround/contracts';
import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import { z } from 'zod';
import { stateBounds } from './bounds.js';

/** draft-ietf-httpapi-ratelimit-headers-10, and RFC 9110, 10.2.3. */
const HEADERS = {
  RateLimitPolicy: {
    description: 'How many requests a minute this caller may send, as `"per-minute";q=600;w=60`',
    schema: { type: 'string', maxLength: 200 },
  },
  RateLimit: {
    description:
      'How many it may still send at once, and seconds until all may be sent again, as `"per-minute";r=598;t=1`',
    schema: { type: 'string', maxLength: 200 },
  },
  RetryAfter: {
    description: 'Seconds to wait before asking again',
    schema: { type: 'integer', format: 'int32', minimum: 0, maximum: 86_400 },
  },
} as const;
const header = (name: keyof typeof HEADERS) => ({ $ref: `#/components/headers/${name}` });
const LIMITS = { 'RateLimit-Policy': header('RateLimitPolicy'), RateLimit: header('RateLimit') };
/** Where the document was read from; it is meant for everybody who connects to the shop. */
const SERVER = { url: '/', description: 'This service, in production', 'x-internal': false };
const PROBLEM_REFERENCE = { $ref: '#/components/schemas/Problem' };

/** The OpenAPI 3.1 document of the running service. */
export function openApiDocument(app: INestApplication): OpenAPIObject {
  const settings = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Deckround')
    .setDescription(
      'Upkeep of other people’s mowers where they stand: register, readings, due forecasts, week plans, visits. ' +
        'Sign in at `POST /v1/session`, or use an integration key; send it as `Authorization: Bearer …`. Errors are RFC 9457 problem documents.',
    )
    .setVersion('1')
    .addBearerAuth({
      type: 'http',
      scheme: 'bearer',
      bearerFormat: 'opaque',
      description: 'A sign-in or an integration key',
    })
    .build();
  const document = SwaggerModule.createDocument(app, settings, {
    operationIdFactory: (controller, method) => `${controller.replace(/Controller$/, '')}_${method}`,
    standardSchemaConverter: (schema, { schemaType }) => convert(schema as z.ZodType, schemaType),
  });
  const schemas = document.components?.schemas ?? {};
  document.components = {
    ...document.components,
    schemas: { ...schemas, ...(componentsOf(Problem, 'output') as typeof schemas) },
    headers: HEADERS,
  };
  for (const [path, operations] of Object.entries(document.paths)) {
    for (const [method, operation] of Object.entries(operations as Record<string, Operation>))
      addProblems(path, method, operation);
  }
  document.servers = [SERVER];
  stateBounds(document);
  return document;
}

interface Operation {
  responses: Record<string, { headers?: object } & object>;
  security?: unknown[];
  requestBody?: unknown;
  parameters?: { name: string; in: string }[];
}

/** Every operation can fail in the ways its kind can; each is a problem document. */
function addProblems(path: string, method: string, operation: Operation): void {
  const problem = (description: string, headers: object = {}) => ({
    description,
    headers,
    content: { 'application/problem+json': { schema: PROBLEM_REFERENCE } },
  });
  const has = (name: string) =>
    operation.parameters?.some((parameter) => parameter.name.toLowerCase() === name) ?? false;
  const add = (status: number, description: string) => {
    operation.responses[String(status)] ??= problem(description);
  };
  if (operation.security?.length || path === '/v1/session') add(401, 'Not signed in');
  if (operation.security?.length) add(403, 'Not allowed for this role or key');
  if (path.includes('{')) add(404, 'There is no such thing, or it is not yours to see');
  if (path.startsWith('/v1/labels/')) add(410, 'The label was revoked');
  if (has('idempotency-key')) add(400, 'Idempotency-Key is missing, or the request cannot be read');
  else if (operation.requestBody) add(400, 'The request cannot be read');
  if (operation.requestBody || operation.parameters?.length) add(422, 'The input cannot be used');
  if (method !== 'get') add(409, 'It conflicts with what is there');
  if (has('if-match')) {
    add(412, 'It was changed meanwhile');
    add(428, 'If-Match is missing');
  }
  if (operation.requestBody) add(413, 'The body is too large');
  operation.responses['429'] ??= problem('Too many requests', { 'Retry-After': header('RetryAfter') });
  for (const [status, response] of Object.entries(operation.responses))
    if (status < '500') response.headers = { ...LIMITS, ...response.headers };
  add(500, 'Something went wrong here');
}

function convert(schema: z.ZodType, io: 'input' | 'output') {
  const {
    $defs,
    $schema: _,
    ...converted
  } = z.toJSONSchema(schema, { target: 'draft-2020-12', io, unrepresentable: 'any' }) as Record<string, unknown>;
  const components = Object.fromEntries(
    Object.entries(($defs ?? {}) as Record<string, unknown>).map(([name, each]) => [name, relocate(each)]),
  );
  const id = schema.meta()?.id;
  if (typeof id === 'string')
    return {
      schema: { $ref: `#/components/schemas/${id}` },
      // A shape named within itself stands among its $defs already.
      components: { [id]: relocate(withoutId(converted)), ...components },
    };
  return { schema: relocate(converted), components };
}

function componentsOf(schema: z.ZodType, io: 'input' | 'output'): Record<string, unknown> {
  return convert(schema, io).components;
}

function withoutId({ id: _, ...rest }: Record<string, unknown>): Record<string, unknown> {
  return rest;
}

/** `#/$defs/X` of one schema becomes `#/components/schemas/X` of the document. */
function relocate(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(relocate);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) => {
      if (key === '$ref' && typeof inner === 'string')
        return [[key, inner.replace('#/$defs/', '#/components/schemas/')]];
      if (key === 'id' && typeof inner === 'string') return [];
      return [[key, relocate(inner)]];
    }),
  );
}
