// Writes src/schema.ts from the service's own OpenAPI document; with --check only tells whether it is up to date.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createApi } from '@deckround/api';
import { createLogger, parseConfig } from '@deckround/platform';
import openapiTypescript, { astToString } from 'openapi-typescript';

const FILE = fileURLToPath(new URL('src/schema.ts', import.meta.url));
const HEAD = '// Made by `npm run client` from the OpenAPI document of the service. Do not edit.\n\n';

// The document needs no database, queue or clock: only the routes and their shapes.
const nothing = {};
const app = await createApi({
  ...{ config: parseConfig({}), logger: createLogger('silent', 'client') },
  ...{ store: nothing, queue: nothing, clock: nothing, limiter: nothing },
});
const { body } = await app.getHttpAdapter().getInstance().inject('/openapi.json');
const schema = HEAD + astToString(await openapiTypescript(JSON.parse(body), { defaultNonNullable: false }));
if (!process.argv.includes('--check')) writeFileSync(FILE, schema);
else if (schema !== readFileSync(FILE, 'utf8')) {
  process.stderr.write('libs/client/src/schema.ts is not what the document says: run `npm run client`.\n');
  process.exitCode = 1;
}
