import type { Schema } from './contract.js';

/** Random numbers of a seed (Mulberry32), so that a failing request can be had again. */
export function randomOf(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (n: number) => Math.floor(next() * n);
  return {
    next,
    below,
    pick: <T>(from: readonly T[]): T => from[below(from.length)]!,
    chance: (p: number) => next() < p,
  };
}
export type Random = ReturnType<typeof randomOf>;

/** Values that exist, by format or by the name of a property: only with them does a request get past the first door. */
export type Known = (name: string, schema: Schema) => readonly unknown[] | undefined;

/** Replaces what the service knows by what exists, so that a faker's valid value also makes sense. */
export function withKnown(schema: unknown, name: string, known: Known): unknown {
  if (Array.isArray(schema)) return schema.map((each) => withKnown(each, name, known));
  if (schema === null || typeof schema !== 'object') return schema;
  const object = schema as Schema;
  const values = object.type === 'string' && object.enum === undefined ? known(name, object) : undefined;
  if (values) return { enum: values };
  return Object.fromEntries(
    Object.entries(object).map(([key, inner]) =>
      key === 'properties'
        ? [
            key,
            Object.fromEntries(Object.entries(inner as Schema).map(([of, each]) => [of, withKnown(each, of, known)])),
          ]
        : [key, key === 'enum' || key === 'required' ? inner : withKnown(inner, name, known)],
    ),
  );
}

const ODD: readonly unknown[] = [
  null,
  true,
  -1,
  0,
  1e308,
  9_007_199_254_740_992,
  '',
  'a\u0000b',
  '\ud800',
  'x'.repeat(5000),
  '2026-02-30',
  '9999-99-99T99:99:99Z',
  "'; drop table shop; --",
  [],
  {},
  [[[[]]]],
];

/** One thing wrong somewhere inside: dropped, of another type, overlong, unknown, or somebody else's. */
export function mutate(value: unknown, random: Random, foreign: readonly unknown[]): unknown {
  if (value === null || typeof value !== 'object' || random.chance(0.15))
    return random.chance(0.25) && foreign.length > 0 ? random.pick(foreign) : random.pick(ODD);
  if (Array.isArray(value)) {
    if (value.length === 0) return [random.pick(ODD)];
    const at = random.below(value.length);
    return value.with(at, mutate(value[at], random, foreign));
  }
  const entries = Object.entries(value);
  if (entries.length === 0 || random.chance(0.15)) return { ...value, surprise: random.pick(ODD) };
  const [key, inner] = random.pick(entries);
  if (random.chance(0.2)) return Object.fromEntries(entries.filter(([each]) => each !== key));
  return { ...value, [key]: mutate(inner, random, foreign) };
}
