import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';

export type Schema = Readonly<Record<string, unknown>>;
export interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header';
  readonly required?: boolean;
  readonly schema: Schema;
}
export interface Operation {
  readonly id: string;
  readonly method: string;
  readonly path: string;
  readonly parameters: readonly Parameter[];
  /** JSON body; null = none, or not JSON. */
  readonly body: Schema | null;
  /** By status: the shape of a JSON answer; null = declared without one. */
  readonly answers: ReadonlyMap<string, Schema | null>;
}

interface Media {
  readonly content?: Readonly<Record<string, { readonly schema?: Schema }>>;
}
interface RawOperation {
  readonly operationId: string;
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: Media;
  readonly responses: Readonly<Record<string, Media | { readonly $ref: string }>>;
}
export interface OpenApi {
  readonly paths: Readonly<Record<string, Readonly<Record<string, RawOperation>>>>;
  readonly components: {
    readonly schemas: Readonly<Record<string, Schema>>;
    readonly responses: Readonly<Record<string, Media>>;
  };
}

const jsonOf = (media: Media | undefined): Schema | null => {
  const entry = Object.entries(media?.content ?? {}).find(([type]) => /json/.test(type));
  return entry?.[1].schema ?? null;
};

/** The operations of an OpenAPI document, and a judge of values by its shapes. */
export function contractOf(document: OpenApi) {
  const ajv = new Ajv2020({ strict: false, allErrors: false });
  addFormats.default(ajv);
  const root = { $id: 'https://contract.example/', components: document.components };
  ajv.addSchema(root);
  const judges = new Map<Schema, ValidateFunction>();
  const absolute = (schema: Schema): Schema =>
    JSON.parse(JSON.stringify(schema).replaceAll('"#/components/', '"https://contract.example/#/components/'));
  /** @returns what is wrong with the value; null = nothing */
  const faultOf = (schema: Schema, value: unknown): string | null => {
    let judge = judges.get(schema);
    if (!judge) {
      judge = ajv.compile(absolute(schema));
      judges.set(schema, judge);
    }
    return judge(value) ? null : ajv.errorsText(judge.errors);
  };
  const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(
      ([method, raw]): Operation => ({
        id: raw.operationId,
        method: method.toUpperCase(),
        path,
        parameters: raw.parameters ?? [],
        body: jsonOf(raw.requestBody),
        answers: new Map(
          Object.entries(raw.responses).map(([status, answer]) => [
            status,
            jsonOf('$ref' in answer ? document.components.responses[answer.$ref.split('/').at(-1)!] : answer),
          ]),
        ),
      }),
    ),
  );
  return { operations, faultOf };
}
