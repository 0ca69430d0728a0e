import { applyDecorators, HttpCode, SerializeOptions } from '@nestjs/common';
import { ApiHeader, ApiResponse } from '@nestjs/swagger';
import type { z } from 'zod';

/** Declares the answer of a route, checks it and strips what is not declared. */
export function Answers(status: number, schema: z.ZodType, description: string) {
  return applyDecorators(
    HttpCode(status),
    ApiResponse({ status, standardSchema: schema, description }),
    // biome-ignore lint/suspicious/noExplicitAny: zod's Standard Schema is typed for its own output
    SerializeOptions({ schema: schema as any }),
  );
}

/** A creating call: the same Idempotency-Key again gives the same answer and no second row. */
export function Creates(schema: z.ZodType, description: string) {
  return applyDecorators(
    Answers(201, schema, description),
    ApiHeader({
      name: 'Idempotency-Key',
      required: true,
      description:
        'A key of the caller’s own choosing, kept for 7 days: repeating the request with it repeats the answer, not the effect.',
      schema: { type: 'string', minLength: 1, maxLength: 200 },
    }),
  );
}

/** A changing call: If-Match carries the ETag last read. */
export function Changes(schema: z.ZodType, description: string) {
  return applyDecorators(
    Answers(200, schema, description),
    ApiHeader({
      name: 'If-Match',
      required: true,
      description: 'ETag of the version that was read',
      schema: { type: 'string', maxLength: 200 },
    }),
  );
}
