import pg from 'pg';
import { startEmbeddedPostgres } from './embedded-postgres.js';
import { migrate } from './migrator.js';

export interface Database {
  readonly url: string;
  readonly kind: 'server' | 'embedded';
  /** Stops what was started for it; a server of one's own is left running. */
  stop(): Promise<void>;
}

const NAME = 'deckround';

/** The database of this installation, at the newest schema: the server named by `url`, or an embedded one in `folder`. */
export async function openDatabase(options: { url?: string | undefined; folder: string }): Promise<Database> {
  if (options.url) {
    await migrate(options.url);
    return { url: options.url, kind: 'server', stop: async () => {} };
  }
  const server = await startEmbeddedPostgres(options.folder);
  try {
    await createDatabase(server.urlOf('postgres'), NAME);
    await migrate(server.urlOf(NAME));
  } catch (error) {
    await server.stop();
    throw error;
  }
  return { url: server.urlOf(NAME), kind: 'embedded', stop: () => server.stop() };
}

/** Makes a database unless there is one of that name; `template` is copied. */
export async function createDatabase(adminUrl: string, name: string, template?: string): Promise<void> {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  try {
    const { rowCount } = await client.query('select 1 from pg_database where datname = $1', [name]);
    if (rowCount === 0) {
      const from = template ? ` template ${client.escapeIdentifier(template)}` : '';
      await client.query(`create database ${client.escapeIdentifier(name)}${from}`);
    }
  } finally {
    await client.end();
  }
}

export async function dropDatabase(adminUrl: string, name: string): Promise<void> {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  try {
    await client.query(`drop database if exists ${client.escapeIdentifier(name)} with (force)`);
  } finally {
    await client.end();
  }
}
