import { z } from 'zod';

/** Text that PostgreSQL can hold: no NUL, and no longer than `max` characters. */
export function text(max: number, min = 0) {
  return (
    z
      .string()
      .min(min)
      .max(max)
      // biome-ignore lint/suspicious/noControlCharactersInRegex: that is what is refused
      .regex(/^[^\u0000]*$/, 'must not hold NUL characters')
  );
}

export const Id = z.uuid().meta({ description: 'Identifier of a row' });
/** The shop's own short word for a row, e.g. `M0042`; unique in the shop. */
export const Code = z.string().regex(/^[A-Za-z0-9._/-]{1,64}$/, 'letters, digits and . _ / - only, at most 64');
export const LocalDate = z.iso.date().meta({ description: 'Local date, YYYY-MM-DD' });
/** RFC 3339 in; UTC with Z out. */
export const InstantIn = z.iso.datetime({ offset: true });
export const Instant = z.iso.datetime();
export const ClockTime = z.string().regex(/^(([01]\d|2[0-3]):[0-5]\d|24:00)$/, 'write it like 07:30');
/** Hours of a meter as a decimal string, so that no client rounds them. */
export const Hours = z.string().regex(/^\d{1,6}(\.\d{1,2})?$/, 'hours as a decimal string, like "412.6"');
export const SomeHours = Hours.regex(/[1-9]/, 'more than zero hours');
export const Quantity = z.string().regex(/^\d{1,9}(\.\d{1,3})?$/, 'a quantity as a decimal string, like "2"');
export const SomeQuantity = Quantity.regex(/[1-9]/, 'more than none');
export const Cents = z
  .int()
  .min(-2_000_000_000)
  .max(2_000_000_000)
  .meta({ description: 'Integer minor units of the shop’s currency' });
export const Minutes = z.int().min(0).max(960);
export const Latitude = z.number().min(-90).max(90);
export const Longitude = z.number().min(-180).max(180);
export const TimeZone = text(64, 1).meta({ description: 'IANA time zone, e.g. America/Chicago' });
export const Skill = z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, 'a lower-case word');
export const Version = z.int().min(1).meta({ description: 'Grows with every change; the ETag carries it' });

export const Clause = z
  .object({ key: z.string(), values: z.record(z.string(), z.union([z.string(), z.number()])) })
  .meta({
    id: 'Clause',
    description:
      'A sentence as its key and what it speaks of, for wording it in another language: `…Cents` money, `…Date` a local date, `…Minutes` a span of time',
  });

export const WeeklyWindow = z
  .object({ weekday: z.int().min(1).max(7), from: ClockTime, to: ClockTime })
  .meta({ id: 'WeeklyWindow', description: 'A span of a weekday, 1 = Monday … 7 = Sunday (ISO 8601)' });

/** Opaque cursor paging: `next` of one answer is the `cursor` of the next call. */
export const PageQuery = z.object({
  cursor: z.string().max(400).optional(),
  limit: z.coerce.number().int().min(1).max(500).default(100),
});

export function pageOf<T extends z.ZodType>(item: T, name: string) {
  return z
    .object({ items: z.array(item), next: z.string().nullable() })
    .meta({ id: `${name}Page`, description: 'One page; `next` is null on the last' });
}

export const Problem = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    instance: z.string(),
    correlationId: z.string(),
    errors: z.array(z.object({ pointer: z.string(), detail: z.string(), clause: Clause.optional() })).optional(),
  })
  .meta({ id: 'Problem', description: 'RFC 9457 problem document' });
export type Problem = z.infer<typeof Problem>;
