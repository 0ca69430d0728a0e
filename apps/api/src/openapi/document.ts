import { Problem } from '@deckround/contracts';
import type { INestApplication } from '@nestjs/common';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import { z } from 'zod';
import { stateBounds } from './bounds.js';
import { EXAMPLES } from './examples.js';

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
    responses: problemResponses(),
  };
  for (const [path, operations] of Object.entries(document.paths)) {
    for (const [method, operation] of Object.entries(operations as Record<string, Operation>)) {
      addProblems(path, method, operation);
      describeBody(operation);
    }
  }
  document.servers = [SERVER];
  stateBounds(document);
  return document;
}

interface Operation {
  responses: Record<string, { headers?: object; $ref?: string }>;
  security?: unknown[];
  operationId: string;
  requestBody?: { content?: Record<string, { schema?: Record<string, unknown>; example?: unknown }> };
  parameters?: { name: string; in: string }[];
}

/** How operations fail; each answer is a problem document. */
const PROBLEMS = {
  SignedOut: [401, 'Not signed in'],
  NotAllowed: [403, 'Not allowed for this role or key'],
  NotFound: [404, 'There is no such thing, or it is not yours to see'],
  Revoked: [410, 'The label was revoked'],
  Unreadable: [400, 'The request cannot be read'],
  KeyMissing: [400, 'Idempotency-Key is missing, or the request cannot be read'],
  Unusable: [422, 'The input cannot be used'],
  Conflict: [409, 'It conflicts with what is there'],
  Stale: [412, 'It was changed meanwhile'],
  VersionMissing: [428, 'If-Match is missing'],
  TooLarge: [413, 'The body is too large'],
  TooMany: [429, 'Too many requests'],
  Failed: [500, 'Something went wrong here'],
} as const satisfies Record<string, readonly [number, string]>;

function problemResponses(): NonNullable<NonNullable<OpenAPIObject['components']>['responses']> {
  return Object.fromEntries(
    Object.entries(PROBLEMS).map(([name, [status, description]]) => [
      name,
      {
        description,
        headers: {
          ...(status < 500 && LIMITS),
          ...(status === 429 && { 'Retry-After': header('RetryAfter') }),
        },
        content: { 'application/problem+json': { schema: PROBLEM_REFERENCE } },
      },
    ]),
  );
}

/** Every operation can fail in the ways its kind can. */
function addProblems(path: string, method: string, operation: Operation): void {
  const has = (name: string) =>
    operation.parameters?.some((parameter) => parameter.name.toLowerCase() === name) ?? false;
  const add = (name: keyof typeof PROBLEMS) => {
    operation.responses[String(PROBLEMS[name][0])] ??= { $ref: `#/components/responses/${name}` };
  };
  for (const [status, response] of Object.entries(operation.responses))
    if (status < '500') response.headers = { ...LIMITS, ...response.headers };
  if (operation.security?.length || path === '/v1/session') add('SignedOut');
  if (operation.security?.length) add('NotAllowed');
  if (path.includes('{')) add('NotFound');
  if (path.startsWith('/v1/labels/')) add('Revoked');
  if (has('idempotency-key')) add('KeyMissing');
  else if (operation.requestBody) add('Unreadable');
  if (operation.requestBody || operation.parameters?.length) add('Unusable');
  if (method !== 'get') add('Conflict');
  if (has('if-match')) {
    add('Stale');
    add('VersionMissing');
  }
  if (operation.requestBody) add('TooLarge');
  add('TooMany');
  add('Failed');
}

function describeBody({ operationId, requestBody }: Operation): void {
  const json = requestBody?.content?.['application/json'];
  if (!json) return;
  // Nest knows one shape for all types of a body: what is read as a stream is still an object where it is JSON.
  if (json.schema?.format === 'binary') json.schema = { type: 'object', additionalProperties: true };
  if (operationId in EXAMPLES) json.example = EXAMPLES[operationId];
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
